package hearthcloth.plan.propose;

import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Chooses among what was found: the best first, then those that differ to the eye. */
final class ProposalSelection {

    /**
     * What is demanded of two proposals, in turn, less each time: how far their pictures lie apart ({@link LookDistance}), and
     * in how many ways they differ; in none, they are the same cloth cut in another way. The steps are ours.
     */
    private static final List<Apart> DEMANDS = List.of(
            new Apart(2 * LookDistance.SEEN, 4),
            new Apart(2 * LookDistance.SEEN, 2),
            new Apart(LookDistance.SEEN, 2),
            new Apart(LookDistance.SEEN, 1),
            new Apart(LookDistance.SEEN / 2, 1),
            new Apart(0, 1));

    private static final ProposalParameters.Apart APART =
            ProposalParameters.standard().gallery().apart();

    /** So far apart to the eye, and in so many ways. */
    private record Apart(double looks, int ways) {}

    private ProposalSelection() {}

    static List<Plan> of(List<DraftTrial> trials, Wish wish) {
        return of(List.of(), trials, wish, DraftTrial.BEST);
    }

    /** The plans with {@code first} before all others, which follow in this order. */
    static List<Plan> of(List<DraftTrial> first, List<DraftTrial> trials, Wish wish, Comparator<DraftTrial> order) {
        return told(varied(first, trials, wish.preferences().proposals(), order), Integer.MAX_VALUE);
    }

    /** The plans, each saying what it is good at, and how many joins its plan of colour takes beyond the fewest. */
    private static List<Plan> told(List<DraftTrial> chosen, int fewestJoins) {
        List<Plan> plans = chosen.stream().map(ProposalSelection::plan).toList();
        List<Plan> told = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            int more = plan.figures().joins() - fewestJoins;
            boolean isColoured = chosen.get(i).draft().scheme().kind() != Scheme.Kind.ALL;
            Plan.Story story = plan.story().goodAt(ProposalStrengths.of(i, chosen, plans));
            told.add(plan.told(
                    more > 0 && isColoured ? story.alsoGoodAt(PlanningSentences.colourPriceJoins(more)) : story));
        }
        return told;
    }

    /**
     * The first of these, then each time the one that is worth most beside those chosen: good in itself and far from all of
     * them to the eye. Those whose hearth stands out come before any others. Where more are wished than are looked at, the first
     * few are those that lie farthest apart.
     *
     * @param worth how good the heap is for a plan of colour, from 0 to 1
     * @param fewestJoins of any cloth that was found, in whatever colours
     */
    static List<Plan> byEye(
            List<DraftTrial> trials, Wish wish, ColourGoal goal, ToDoubleFunction<Scheme.Kind> worth, int fewestJoins) {
        List<DraftTrial> chosen = new ArrayList<>(trials.subList(0, 1));
        List<DraftTrial> seen = trials.stream().filter(TrialColours::isSeen).toList();
        IdentityHashMap<DraftTrial, Double> costs = new IdentityHashMap<>();
        trials.forEach(trial -> costs.put(trial, TrialColours.byEye(trial, goal, worth)));
        LookDistance looks = new LookDistance();
        for (List<DraftTrial> among : List.of(seen, trials)) {
            Optional<DraftTrial> next = Optional.of(trials.get(0));
            while (chosen.size() < wish.preferences().proposals() && next.isPresent()) {
                next = among.stream()
                        .filter(trial -> isNew(trial, chosen, new Apart(0, 1), looks) && !isSecondCorner(trial, chosen))
                        .max(Comparator.comparingDouble(
                                trial -> apart(trial, chosen, looks) - costs.getOrDefault(trial, 0.0)));
                next.ifPresent(chosen::add);
            }
        }
        return told(chosen, fewestJoins);
    }

    /**
     * How far a trial lies from the nearest of those chosen, in joins that it may take more for it: one for each step of what
     * is seen, three at most, and half a one for each way in which they differ, two at most; those that pass for one cloth
     * come last.
     */
    private static double apart(DraftTrial trial, List<DraftTrial> chosen, LookDistance looks) {
        double least = chosen.stream()
                .mapToDouble(other -> looks.between(trial, other))
                .min()
                .orElse(0);
        double ways = chosen.stream()
                .mapToInt(other -> ProposalDistance.difference(trial, other))
                .min()
                .orElse(0);
        double steps = Math.min(APART.steps(), least / LookDistance.SEEN) + Math.min(APART.ways(), ways) / 2;
        return least < LookDistance.SEEN ? steps - APART.samePicture() : steps;
    }

    /** A plan by itself, compared with no other. */
    public static Plan plan(DraftTrial trial) {
        Scheme.Kind kind = trial.draft().scheme().kind();
        Plan.Story story = new Plan.Story(
                PlanningSentences.title(
                        PlanningSentences.order(trial.draft().shape().order().name()),
                        PlanningSentences.scheme(kind.name())),
                PlanningSentences.goodAlone(Argument.capital(PlanningSentences.schemeIdea(kind.name()))),
                trial.draft().shape().chosen(),
                new Stash(trial.answer().used()).washingCaution().stream().toList());
        return trial.answer().plan(story, trial.bound());
    }

    /**
     * Up to {@code most} trials, best first: the best of all, then those whose pictures lie far from every one chosen, less far,
     * and least. Those that take only a few more joins than the best come before any others, and at most one has its hearth
     * in a corner.
     */
    static List<DraftTrial> varied(
            List<DraftTrial> first, List<DraftTrial> best, int most, Comparator<DraftTrial> order) {
        List<DraftTrial> chosen = new ArrayList<>(first);
        LookDistance looks = new LookDistance();
        int joins =
                best.stream().mapToInt(trial -> trial.figures().joins()).min().orElse(0);
        for (int limit : new int[] {joins + APART.moreJoins() + joins / 2, Integer.MAX_VALUE}) {
            for (Apart apart : DEMANDS) {
                for (DraftTrial trial : best) {
                    if (chosen.size() < most
                            && trial.figures().joins() <= limit
                            && isNew(trial, chosen, apart, looks)
                            && !(limit < Integer.MAX_VALUE && isSecondCorner(trial, chosen))) {
                        chosen.add(trial);
                    }
                }
            }
        }
        chosen.subList(Math.min(first.size(), chosen.size()), chosen.size()).sort(order);
        return chosen;
    }

    private static boolean isSecondCorner(DraftTrial trial, List<DraftTrial> chosen) {
        return trial.isOffCentre()
                && chosen.stream().anyMatch(DraftTrial::isOffCentre)
                && !chosen.stream().allMatch(DraftTrial::isOffCentre);
    }

    private static boolean isNew(DraftTrial trial, List<DraftTrial> chosen, Apart apart, LookDistance looks) {
        return chosen.stream()
                .allMatch(other -> ProposalDistance.difference(trial, other) >= apart.ways
                        && looks.between(trial, other) >= apart.looks);
    }
}
