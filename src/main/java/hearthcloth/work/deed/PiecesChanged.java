package hearthcloth.work.deed;

import hearthcloth.measure.Size;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.SpokenPieces;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.Optional;

/**
 * Pieces of one kind turn out to be of another size or fabric, or were washed meanwhile. They keep their numbers and places.
 *
 * @param stash as it lies; a fabric that is there already is taken as it is there
 */
public record PiecesChanged(List<Piece> pieces, Stash stash) {

    public PiecesChanged {
        pieces = List.copyOf(pieces);
    }

    /** The pieces before and after; none where nothing is different. */
    public Deed.Pieces to(String name, Size size, Piece.Washed washed) {
        Fabric fabric = new Arrivals(stash, 1)
                .fabric(new SpokenPieces(name, size, 1, Optional.empty(), Optional.empty(), Optional.empty(), washed));
        List<Piece> come = pieces.stream()
                .map(piece -> new Piece(piece.id(), fabric, size, washed, piece.row()))
                .toList();
        return come.equals(pieces) ? Deed.Pieces.NONE : new Deed.Pieces(pieces, come);
    }
}
