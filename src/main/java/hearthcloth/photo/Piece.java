package hearthcloth.photo;

import java.util.List;

/**
 * One piece of cloth as read.
 *
 * @param number from 1, in reading order, as the overlay shows it
 * @param usable the largest rectangle that is surely inside: the largest in the outline less what the picture leaves open
 * @param doubts empty when the reading can be trusted
 */
public record Piece(int number, Outline outline, LargestRectangle.Box usable, Look look, List<Doubt> doubts) {

    public Piece {
        doubts = List.copyOf(doubts);
    }

    /** Doubts of this piece alone, without those that all pieces share. */
    public List<Doubt> ownDoubts() {
        return doubts.stream().filter(d -> d.kind() != Doubt.Kind.SHEET).toList();
    }
}
