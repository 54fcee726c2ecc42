package hearthcloth.plan;

import hearthcloth.plan.cutjoin.Figures;
import java.util.Comparator;

/**
 * A draft that the stash makes, and how.
 *
 * @param answer what the search found for it
 * @param bound what nothing can beat for this draft
 */
record Trial(Draft draft, CutAnswer answer, Bound bound) {

    /** The order of goods: fewer joins, then fewer cuts, then less lost, then larger leftovers. */
    static final Comparator<Trial> BEST = Comparator.comparingInt(
                    (Trial trial) -> trial.figures().joins())
            .thenComparingInt(trial -> trial.figures().cuts())
            .thenComparingDouble(trial -> trial.figures().sliverArea())
            .thenComparingDouble(trial -> trial.figures().touchedArea());

    Figures figures() {
        return answer.found().figures();
    }

    /** With the same parts cut so that less is left in bits. */
    Trial recut() {
        return new Trial(draft, answer.recut(), bound);
    }

    boolean hasKindOf(Trial other) {
        return draft.scheme().kind() == other.draft.scheme().kind();
    }

    /** Alike to the eye: the same plan of colour in the same order. */
    boolean looksLike(Trial other) {
        return hasKindOf(other) && draft.shape().order() == other.draft.shape().order();
    }

    /** Four shades of one: alike, and with as many rounds. */
    boolean isShadeOf(Trial other) {
        return looksLike(other) && draft.shape().rounds() == other.draft.shape().rounds();
    }
}
