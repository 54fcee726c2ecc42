package hearthcloth.photo;

import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.PieceOutline;
import java.util.List;

/**
 * One piece of cloth as read.
 *
 * @param number from 1, in reading order, as the overlay shows it
 * @param usable the largest rectangle that is surely inside: the largest within the outline, less the uncertainty
 * @param doubts what makes the reading doubtful or is to be known of the piece; see {@link #isDoubted()}
 */
public record ReadPiece(
        int number, PieceOutline outline, LargestRectangle.Box usable, PieceAppearance look, List<Doubt> doubts) {

    public ReadPiece {
        doubts = List.copyOf(doubts);
    }

    ReadPiece enlarged(double times) {
        return new ReadPiece(number, outline.enlarged(times), usable, look, doubts);
    }

    /** Whether it has to be looked at before it is taken. */
    public boolean isDoubted() {
        return doubts.stream().anyMatch(Doubt::isOpen);
    }

    /** The doubts about this piece alone, without those that all pieces share. */
    public List<Doubt> ownDoubts() {
        return doubts.stream().filter(d -> d.kind() != Doubt.Kind.SHEET).toList();
    }
}
