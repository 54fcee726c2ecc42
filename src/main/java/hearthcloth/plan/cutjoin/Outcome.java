package hearthcloth.plan.cutjoin;

import java.util.List;

/** How a search for a plan ended. */
public sealed interface Outcome {

    /** A plan, and what no plan can beat. */
    record Found(CutPlan plan, Bounds bounds) implements Outcome {}

    /** Proven: no plan exists, and this is why. */
    record Impossible(List<Shortage> shortages) implements Outcome {
        public Impossible {
            shortages = List.copyOf(shortages);
        }
    }

    /** No plan was found within the budget, and nothing proves that there is none; what the best attempt left out. */
    record NotFound(List<Shortage> leftOut) implements Outcome {
        public NotFound {
            leftOut = List.copyOf(leftOut);
        }
    }
}
