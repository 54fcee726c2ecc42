package hearthcloth.plan.propose;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.parameter.ProposalParameters;
import java.util.Optional;
import java.util.function.Consumer;

/** How hard to search, when to stop, and who receives the progress. */
record SearchWork(int effort, Budget budget, Consumer<PlanProgress> seen, ProposalParameters.Effort parameters) {

    SearchWork(int effort, Budget budget, Consumer<PlanProgress> seen) {
        this(effort, budget, seen, ProposalParameters.Effort.standard());
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
}
