package hearthcloth.plan;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Order;
import hearthcloth.plan.cutjoin.Figures;
import java.util.Comparator;

/**
 * A draft that the stash makes, and how.
 *
 * @param answer what the search found for it
 * @param bound what nothing can beat for this draft
 */
record Trial(Draft draft, CutAnswer answer, Bound bound) {

    /** The order of goods: fewer joins, the hearth in the middle, fewer cuts, less lost, larger leftovers. */
    static final Comparator<Trial> BEST = Comparator.comparingInt(
                    (Trial trial) -> trial.figures().joins())
            .thenComparing(Trial::isOffCentre)
            .thenComparingInt(trial -> trial.figures().cuts())
            .thenComparingDouble(trial -> trial.figures().sliverArea())
            .thenComparingDouble(trial -> trial.figures().touchedArea());

    /** The cloth as it would be sewn. */
    Cloth cloth() {
        return answer.cloth();
    }

    Figures figures() {
        return answer.found().figures();
    }

    /** The hearth lies in a corner. */
    boolean isOffCentre() {
        return draft.shape().order() == Order.TWO_SIDES;
    }

    /** With the same parts cut so that less is left in bits. */
    Trial recut() {
        return new Trial(draft, answer.recut(), bound);
    }
}
