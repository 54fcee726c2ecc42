package hearthcloth.plan.fit;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.job.CutFigures;
import hearthcloth.plan.model.Bound;
import java.util.Comparator;

/**
 * A draft that the stash makes, and how it is made.
 *
 * @param answer what the search found for it
 * @param bound what no plan for this draft can beat
 */
public record DraftTrial(Draft draft, CutAnswer answer, Bound bound) {

    /** The order of goods: fewer joins, the hearth in the middle, fewer cuts, less lost, less fabric cut into. */
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

    /** Whether the hearth lies in a corner. */
    public boolean isOffCentre() {
        return draft.shape().order() == Order.TWO_SIDES;
    }

    /** The same with its parts in other places of the cloth, or cut otherwise. */
    public DraftTrial answered(CutAnswer other) {
        return new DraftTrial(draft, other, bound);
    }

    /** The same with its parts cut so that fewer and larger leftovers remain. */
    public DraftTrial recut() {
        return new DraftTrial(draft, answer.recut(), bound);
    }
}
