package hearthcloth.plan.propose;

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
