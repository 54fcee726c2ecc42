package hearthcloth.plan.together;

import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import java.util.List;
import java.util.Optional;

/**
 * Cloths planned together from one heap: no piece stands in two plans, unless what one leaves of it is the other's.
 *
 * @param parts one for each cloth that was asked for, in that order
 * @param order the numbers of the planned cloths, from 0, in the order they are cut
 * @param leftovers what one cloth leaves and another takes
 * @param shopping what the cloths that lack something need to be made as they were wished, in several ways of buying
 */
public record Together(
        List<Part> parts, List<Integer> order, List<Leftover> leftovers, List<Purchase> shopping, Measure measure) {

    public Together {
        parts = List.copyOf(parts);
        order = List.copyOf(order);
        leftovers = List.copyOf(leftovers);
        shopping = List.copyOf(shopping);
    }

    /**
     * How good the division is.
     *
     * @param fairness that was reached
     * @param oneAfterAnother what planning them in turn gave, without taking anything apart again; empty where the budget
     *     ended before
     * @param bound however the heap is divided, the worst cloth has at least so many joins
     */
    public record Measure(Fairness fairness, Optional<Fairness> oneAfterAnother, int bound) {}

    /**
     * One cloth.
     *
     * @param plan empty where nothing at all is left for it; the nearest that can be made where it lacks something
     * @param shortage what it lacks; empty where it is as it was wished
     */
    public record Part(Asked asked, Optional<Plan> plan, Optional<PlanOutcome.CannotMake> shortage) {

        /** Whether it is as it was wished. */
        public boolean isAsWished() {
            return shortage.isEmpty();
        }
    }

    /** Whether every cloth is as it was wished. */
    public boolean isComplete() {
        return parts.stream().allMatch(Part::isAsWished);
    }
}
