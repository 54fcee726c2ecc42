package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.parameter.PatchworkParameters;
import java.util.Optional;
import java.util.function.Consumer;

/** How hard to search, when to stop, and who receives the progress. */
record PatchworkEffort(int effort, Budget budget, Consumer<PlanProgress> seen, PatchworkParameters.Effort parameters) {

    PatchworkEffort(int effort, Budget budget, Consumer<PlanProgress> seen) {
        this(effort, budget, seen, PatchworkParameters.standard().effort());
    }

    /** Steps for one of several searches, which end with the budget once something was found. */
    Budget share(boolean found) {
        Budget steps = Budget.steps(parameters.steps() * Math.max(1, effort));
        return found ? Budget.either(steps, budget) : steps;
    }

    /** For the first of several searches, where it found nothing soon: want of time alone is no answer. */
    Budget patient() {
        return Budget.steps(parameters.patient());
    }

    Budget quick(boolean found) {
        Budget steps = Budget.steps(parameters.quick());
        return found ? Budget.either(steps, budget) : steps;
    }

    /** The search for how much fabric would be enough. */
    Budget fabric() {
        return Budget.steps(parameters.fabric());
    }

    /** Trials at blocks. */
    Budget trials(boolean found) {
        Budget steps = Budget.steps(parameters.trials() * Math.max(1, effort));
        return found ? Budget.either(steps, budget) : steps;
    }

    void tell(int tried, int of, int found, Optional<Plan> best) {
        seen.accept(new PlanProgress(tried, of, found, best));
    }
}
