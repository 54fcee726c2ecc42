package hearthcloth.plan.propose;

import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses among what was found: the best first, then those that differ to the eye. */
final class ProposalSelection {

    /** The number of differences demanded, in turn; with none, two proposals are the same cloth cut in another way. */
    private static final int[] DIFFERENCES = {4, 3, 2, 1};

    /** Joins that a proposal may have above the best because it is different. */
    private static final int MORE_JOINS = 3;

    private ProposalSelection() {}

    static List<Plan> of(List<DraftTrial> trials, Wish wish) {
        return of(List.of(), trials, wish, DraftTrial.BEST);
    }

    /** The plans with {@code first} before all others, which follow in this order. */
    static List<Plan> of(List<DraftTrial> first, List<DraftTrial> trials, Wish wish, Comparator<DraftTrial> order) {
        List<DraftTrial> chosen = varied(first, trials, wish.preferences().proposals(), order);
        List<Plan> plans = chosen.stream().map(ProposalSelection::plan).toList();
        List<Plan> told = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            told.add(plan.told(plan.story().goodAt(ProposalStrengths.of(i, chosen, plans))));
        }
        return told;
    }

    /** The first of these, then those whose colours lie well and whose hearth stands out, if they are enough; else any. */
    static List<Plan> byEye(List<DraftTrial> trials, Wish wish, Comparator<DraftTrial> order, ColourGoal goal) {
        List<DraftTrial> first = trials.subList(0, 1);
        List<DraftTrial> all = TrialColours.byEye(trials, goal);
        List<Plan> any = of(first, all, wish, order);
        List<Plan> seen = of(first, all.stream().filter(TrialColours::isSeen).toList(), wish, order);
        return seen.size() < any.size() ? any : seen;
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
     * Up to {@code most} trials, best first: the best of all, then those that differ from every one chosen by much, by
     * less, and by least. Those that take only a few more joins than the best come before any others, and at most one
     * has its hearth in a corner.
     */
    static List<DraftTrial> varied(
            List<DraftTrial> first, List<DraftTrial> best, int most, Comparator<DraftTrial> order) {
        List<DraftTrial> chosen = new ArrayList<>(first);
        LookDistance looks = new LookDistance();
        int joins =
                best.stream().mapToInt(trial -> trial.figures().joins()).min().orElse(0);
        for (int limit : new int[] {joins + MORE_JOINS + joins / 2, Integer.MAX_VALUE}) {
            for (int difference : DIFFERENCES) {
                for (DraftTrial trial : best) {
                    if (chosen.size() < most
                            && trial.figures().joins() <= limit
                            && isNew(trial, chosen, difference, limit < Integer.MAX_VALUE, looks)) {
                        chosen.add(trial);
                    }
                }
            }
        }
        chosen.subList(Math.min(first.size(), chosen.size()), chosen.size()).sort(order);
        return chosen;
    }

    private static boolean isNew(
            DraftTrial trial, List<DraftTrial> chosen, int difference, boolean strict, LookDistance looks) {
        boolean corner = strict
                && trial.isOffCentre()
                && chosen.stream().anyMatch(DraftTrial::isOffCentre)
                && !chosen.stream().allMatch(DraftTrial::isOffCentre);
        boolean strictEye = strict && difference > 1;
        return !corner
                && chosen.stream().allMatch(other -> ProposalDistance.difference(trial, other) >= difference)
                && (!strictEye || chosen.stream().allMatch(other -> looks.between(trial, other) >= LookDistance.SEEN));
    }
}
