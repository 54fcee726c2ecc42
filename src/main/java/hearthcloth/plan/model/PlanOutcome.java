package hearthcloth.plan.model;

import hearthcloth.words.sentence.Sentence;
import java.util.List;

/** The result of planning. */
public sealed interface PlanOutcome {

    /** Plans that can be cut and sewn, best first, each different in kind. Never empty. */
    record Proposals(List<Plan> plans) implements PlanOutcome {
        public Proposals {
            plans = List.copyOf(plans);
            if (plans.isEmpty()) {
                throw new IllegalArgumentException("no proposals are not proposals");
            }
        }
    }

    /**
     * Nothing can be made, or nothing was found.
     *
     * @param proven true where a bound proves it, false where the search ended first
     * @param why what is short and by how much, in sentences for the maker
     * @param nearest the nearest cloths that this stash makes, best first; may be empty
     */
    record CannotMake(boolean proven, List<Sentence> why, List<Plan> nearest) implements PlanOutcome {
        public CannotMake {
            why = List.copyOf(why);
            nearest = List.copyOf(nearest);
        }
    }
}
