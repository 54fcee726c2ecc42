package hearthcloth.sew;

import hearthcloth.plan.model.PieceCut;
import java.util.List;

/**
 * Everything cut from one piece.
 *
 * @param title the piece, its fabric and its size
 * @param gives the patches it gives, with their cut sizes
 * @param left what is left over
 */
public record PieceTask(PieceCut cut, String title, List<CutLine> lines, List<String> gives, List<String> left) {

    public PieceTask {
        lines = List.copyOf(lines);
        gives = List.copyOf(gives);
        left = List.copyOf(left);
    }
}
