package hearthcloth.work.deed;

import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.List;

/**
 * What is said of a fabric changes, for all its pieces. A name that another fabric bears makes both one fabric.
 *
 * @param was as it was said
 * @param is as it is said now
 */
public record FabricChanged(Stash stash, Fabric was, Fabric is) {

    /** The pieces that change: as they were, and as they are. */
    public Deed.Pieces pieces() {
        List<Piece> gone = stash.pieces().stream()
                .filter(piece ->
                        piece.fabric().equals(was) || piece.fabric().name().equalsIgnoreCase(is.name()))
                .filter(piece -> !piece.fabric().equals(is))
                .toList();
        return new Deed.Pieces(
                gone,
                gone.stream()
                        .map(piece -> new Piece(piece.id(), is, piece.size(), piece.washed(), piece.row()))
                        .toList());
    }
}
