package hearthcloth.plan.propose;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.PlanProgress;
import java.util.Optional;
import java.util.function.Consumer;

/** How hard to search, when to stop, and who receives the progress. */
record SearchWork(int effort, Budget budget, Consumer<PlanProgress> seen, SearchWork.PlannerParameters parameters) {

    SearchWork(int effort, Budget budget, Consumer<PlanProgress> seen) {
        this(effort, budget, seen, PlannerParameters.standard());
    }

    long laterSteps() {
        return parameters.laterSteps() * Math.max(1, effort);
    }

    /** The budget once a cloth is found; before that, no limit but the steps of each draft. */
    Budget once(boolean found) {
        return found ? budget : Budget.steps(Long.MAX_VALUE);
    }

    boolean isOver(boolean found) {
        return once(found).spent();
    }

    /** The same without handing out plans, since a cloth that only comes near a wish is no answer to it. */
    SearchWork withoutPlans() {
        return new SearchWork(
                effort,
                budget,
                told -> seen.accept(new PlanProgress(told.tried(), told.of(), told.found(), Optional.empty())),
                parameters);
    }

    /**
     * How many drafts the planner searches and how long. Each was set by trial; what more of
     * it earns, {@code ./check ablate search} tells for the search itself.
     *
     * @param tries drafts that are searched for a wished size; half as many for each of two sizes
     * @param quickTries drafts that are searched to learn whether a size can be made at all
     * @param hearths layouts tried for a hearth that stands out
     * @param firstSteps steps of the search for each draft
     * @param laterSteps steps of the longer search of the best, for each unit of effort
     */
    record PlannerParameters(int tries, int quickTries, int hearths, long firstSteps, long laterSteps) {

        /** The values that the planner works with. */
        static PlannerParameters standard() {
            return new PlannerParameters(96, 24, 3, 60, 150);
        }
    }
}
