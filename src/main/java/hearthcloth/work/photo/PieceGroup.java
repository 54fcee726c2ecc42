package hearthcloth.work.photo;

import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;

/**
 * Pieces of one fabric, and what the maker says about it.
 *
 * @param id distinguishes it from the others of one photograph
 * @param name as she calls it; a suggestion until she has named it
 */
public record PieceGroup(String id, String name, Fabric.Faces faces, Fabric.Nap nap, Piece.Washed washed) {

    static PieceGroup suggested(String id, String name) {
        return new PieceGroup(id, name, Fabric.Faces.SAME, Fabric.Nap.ANY, Piece.Washed.UNKNOWN);
    }
}
