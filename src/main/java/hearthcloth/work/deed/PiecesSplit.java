package hearthcloth.work.deed;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pieces of one size are cut in two, all alike, without a plan. The first part keeps its piece's number.
 *
 * @param across true where the width is divided, false where the length along the grain is
 * @param next the first number that is free for a new piece
 */
public record PiecesSplit(List<Piece> pieces, boolean across, int next) {

    public PiecesSplit {
        pieces = List.copyOf(pieces);
    }

    /** The side that is divided. */
    public Length whole() {
        return side(pieces.get(0).size());
    }

    /** The pieces before and after a cut at this length of that side; empty where it does not lie within. */
    public Optional<Deed.Pieces> at(Length at) {
        if (!at.isPositive() || !at.isLessThan(whole())) {
            return Optional.empty();
        }
        List<Piece> come = new ArrayList<>();
        int free = next;
        for (Piece piece : pieces) {
            come.add(part(piece, piece.id(), piece.row(), at));
            come.add(part(piece, String.valueOf(free), free, side(piece.size()).minus(at)));
            free++;
        }
        return Optional.of(new Deed.Pieces(pieces, come));
    }

    private Length side(Size size) {
        return across ? size.width() : size.height();
    }

    private Piece part(Piece piece, String id, int row, Length side) {
        Size size = across
                ? new Size(side, piece.size().height())
                : new Size(piece.size().width(), side);
        return new Piece(id, piece.fabric(), size, piece.washed(), row);
    }
}
