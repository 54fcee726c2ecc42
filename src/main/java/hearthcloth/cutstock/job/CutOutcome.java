package hearthcloth.cutstock.job;

import java.util.List;

/** How a search for a plan ended. */
public sealed interface CutOutcome {

    /** A plan, and what no plan can beat. */
    record Found(CutPlan plan, CutJoinBounds bounds) implements CutOutcome {}

    /** Proven: no plan exists, and this is why. */
    record Impossible(List<Shortage> shortages) implements CutOutcome {
        public Impossible {
            shortages = List.copyOf(shortages);
        }
    }

    /** No plan was found within the budget, and nothing proves that there is none; what the best attempt left out. */
    record NotFound(List<Shortage> leftOut) implements CutOutcome {
        public NotFound {
            leftOut = List.copyOf(leftOut);
        }
    }
}
