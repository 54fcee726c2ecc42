package hearthcloth.work.photo;

import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import java.util.Set;

/** How it stands with a piece of a photograph. */
public enum PieceState {
    /** It can come in. */
    READY,
    /** There is a doubt that she has not looked at. */
    LOOK,
    /** Nothing that her ruler can measure is left of it. */
    SMALL,
    /** Left out. */
    DROPPED,
    /** In the stash. */
    IN;

    /**
     * How it stands with this one.
     *
     * @param taken keys of the pieces that are in the stash already
     */
    public static PieceState of(SortedPiece piece, Set<String> taken, Ruler ruler) {
        if (PhotoSorting.isAmong(piece.key(), taken)) {
            return IN;
        }
        if (piece.dropped()) {
            return DROPPED;
        }
        if (!piece.isSure()) {
            return LOOK;
        }
        Size size = piece.size(ruler);
        return size.width().isPositive() && size.height().isPositive() ? READY : SMALL;
    }
}
