package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanProgress;
import java.util.Optional;
import java.util.function.Consumer;

/** How hard to search, when to stop, and who receives the progress. */
record PatchworkEffort(int effort, Budget budget, Consumer<PlanProgress> seen) {

    /** Steps of one search, for each unit of effort. */
    private static final long STEPS = 30_000;
    /** Steps after which nobody waits for a first cloth any more: of sixty scraps that hardly suffice some take 55 000. */
    private static final long PATIENT = 200_000;

    /** Steps of a search that only asks whether a size can be made. */
    private static final long QUICK = 30_000;

    /** Steps of the search for how much more fabric is enough. */
    private static final long FABRIC = 300_000;
    /** Trials at all blocks of a cloth, for each unit of effort. */
    private static final long TRIALS = 300;

    /** Steps for one of several searches, which end with the budget once something was found. */
    Budget share(boolean found) {
        Budget steps = Budget.steps(STEPS * Math.max(1, effort));
        return found ? Budget.either(steps, budget) : steps;
    }

    /** For the first of several searches, where it found nothing soon: want of time alone is no answer. */
    Budget patient() {
        return Budget.steps(PATIENT);
    }

    Budget quick(boolean found) {
        Budget steps = Budget.steps(QUICK);
        return found ? Budget.either(steps, budget) : steps;
    }

    /** The search for how much fabric would be enough. */
    Budget fabric() {
        return Budget.steps(FABRIC);
    }

    /** Trials at blocks. */
    Budget trials(boolean found) {
        Budget steps = Budget.steps(TRIALS * Math.max(1, effort));
        return found ? Budget.either(steps, budget) : steps;
    }

    void tell(int tried, int of, int found, Optional<Plan> best) {
        seen.accept(new PlanProgress(tried, of, found, best));
    }
}
