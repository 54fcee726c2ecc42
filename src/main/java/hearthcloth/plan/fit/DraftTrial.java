package hearthcloth.plan.fit;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.job.CutFigures;
import hearthcloth.plan.model.Bound;
import java.util.Comparator;


/**
 * A draft that the stash makes, and how.
 *
 * @param answer what the search found for it
 * @param bound what nothing can beat for this draft
 */
public record DraftTrial(Draft draft, CutAnswer answer, Bound bound) {

    /** The order of goods: fewer joins, the hearth in the middle, fewer cuts, less lost, larger leftovers. */
    public static final Comparator<DraftTrial> BEST = Comparator.comparingInt(
                    (DraftTrial trial) -> trial.figures().joins())
            .thenComparing(DraftTrial::isOffCentre)
            .thenComparingInt(trial -> trial.figures().cuts())
            .thenComparingDouble(trial -> trial.figures().sliverArea())
            .thenComparingDouble(trial -> trial.figures().touchedArea());

    /** The cloth as it would be sewn. */
    public Cloth cloth() {
        return answer.cloth();
    }

    public CutFigures figures() {
        return answer.found().figures();
    }

    /** The hearth lies in a corner. */
    public boolean isOffCentre() {
        return draft.shape().order() == Order.TWO_SIDES;
    }

    /** With the same parts cut so that less is left in bits. */
    public DraftTrial recut() {
        return new DraftTrial(draft, answer.recut(), bound);
    }
}
