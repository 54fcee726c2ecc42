package hearthcloth.plan.model;

import hearthcloth.stash.Piece;

/**
 * One piece of the stash and how it is cut; the tree's rectangle is the whole piece.
 *
 * @param past true where it was cut for an earlier plan of the same cloth: it stays in the plan, so that the whole story is
 *     told, with its patches as they were cut then
 */
public record PieceCut(Piece piece, CutTree tree, boolean past) {

    public PieceCut {
        if (!tree.at().size().equals(piece.size())) {
            throw new IllegalArgumentException("piece " + piece.id() + " is " + piece.size() + ", its cuts are for "
                    + tree.at().size());
        }
    }

    /** A piece still to be cut. */
    public PieceCut(Piece piece, CutTree tree) {
        this(piece, tree, false);
    }

    /** The same piece, cut already, with what its patches have become since. */
    public PieceCut asCut(CutTree now) {
        return new PieceCut(piece, now, true);
    }
}
