package hearthcloth.plan;

import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiPredicate;

/** Chooses among what was found: the best first, then those that differ to the eye, each with what it is good at. */
final class Selection {

    private Selection() {}

    static List<Plan> of(List<Trial> trials, Wish wish) {
        List<Trial> chosen = varied(trials, wish.preferences().proposals());
        List<Plan> plans = new ArrayList<>();
        for (Trial trial : chosen) {
            plans.add(plan(trial, chosen));
        }
        return plans;
    }

    static Plan plan(Trial trial, List<Trial> among) {
        Scheme.Kind kind = trial.draft().scheme().kind();
        Plan.Story story = new Plan.Story(
                kind.title() + ", " + trial.draft().shape().order().phrase(),
                goodAt(trial, among),
                trial.draft().shape().chosen(),
                new Stash(trial.answer().used()).washingCaution().stream().toList());
        return trial.answer().plan(story, trial.bound());
    }

    /** Up to {@code most}, best first: one of each plan of colour, then other orders, then other numbers of rounds. */
    static List<Trial> varied(List<Trial> best, int most) {
        List<Trial> chosen = new ArrayList<>();
        List<BiPredicate<Trial, Trial>> alike = List.of(Trial::hasKindOf, Trial::looksLike, Trial::isShadeOf);
        for (BiPredicate<Trial, Trial> same : alike) {
            for (Trial trial : best) {
                if (chosen.size() < most && chosen.stream().noneMatch(other -> same.test(trial, other))) {
                    chosen.add(trial);
                }
            }
        }
        chosen.sort(Trial.BEST);
        return chosen;
    }

    private static String goodAt(Trial trial, List<Trial> among) {
        List<String> points = new ArrayList<>();
        int joins = trial.figures().joins();
        if (joins == 0) {
            points.add("no bar needs a join");
        } else if (among.stream().allMatch(other -> other.figures().joins() >= joins)) {
            points.add(joins == 1 ? "only one join" : "fewest joins, " + joins);
        }
        if (among.stream()
                .allMatch(other -> other.figures().cuts() >= trial.figures().cuts())) {
            points.add("fewest cuts, " + trial.figures().cuts());
        }
        if (among.stream()
                .allMatch(
                        other -> other.figures().sliverArea() >= trial.figures().sliverArea())) {
            points.add("least fabric lost");
        }
        if (among.stream()
                .allMatch(other ->
                        other.answer().used().size() <= trial.answer().used().size())) {
            points.add("uses up " + trial.answer().used().size() + " pieces");
        }
        String idea = trial.draft().scheme().kind().idea();
        String first = idea.substring(0, 1).toUpperCase(Locale.ROOT) + idea.substring(1);
        return points.isEmpty() ? first + "." : first + "; " + String.join(", ", points) + ".";
    }
}
