package hearthcloth.gather;

import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;

/**
 * Pieces of one fabric, and what the maker says of it.
 *
 * @param id tells it from the others of one photograph
 * @param name as she calls it; a suggestion until she has
 */
public record Group(String id, String name, Fabric.Faces faces, Fabric.Nap nap, Piece.Washed washed) {

    static Group suggested(String id, String name) {
        return new Group(id, name, Fabric.Faces.SAME, Fabric.Nap.ANY, Piece.Washed.UNKNOWN);
    }
}
