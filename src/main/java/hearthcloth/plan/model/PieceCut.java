package hearthcloth.plan.model;

import hearthcloth.stash.Piece;

/** One piece of the stash and how it is cut; the tree's rectangle is the whole piece. */
public record PieceCut(Piece piece, CutTree tree) {

    public PieceCut {
        if (!tree.at().size().equals(piece.size())) {
            throw new IllegalArgumentException("piece " + piece.id() + " is " + piece.size() + ", its cuts are for "
                    + tree.at().size());
        }
    }
}
