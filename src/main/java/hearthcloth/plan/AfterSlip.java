package hearthcloth.plan;

import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What lies on the table when a cut went wrong: of each piece that is cut already its patches, as pieces of their own, and
 * its offcuts; of the piece that went wrong what it really measures. The rest of the stash lies as it did.
 *
 * @param gone pieces that are no longer there as they were
 * @param come pieces that are there instead, with ids not yet given
 */
public record AfterSlip(List<Piece> gone, List<Piece> come) {

    public AfterSlip {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
    }

    /**
     * The table after a slip.
     *
     * @param cut ids of the pieces that are wholly cut as planned
     * @param wrong id of the piece that went wrong
     * @param real what is left of it, empty where nothing is
     * @param next the first number free for a new piece
     */
    public static AfterSlip of(Plan plan, Set<String> cut, String wrong, Optional<Size> real, int next) {
        List<Piece> gone = new ArrayList<>();
        List<Piece> come = new ArrayList<>();
        for (PieceCut each : plan.cuts()) {
            Piece piece = each.piece();
            if (piece.id().equals(wrong)) {
                gone.add(piece);
                real.ifPresent(size -> come.add(named(piece, size, next + come.size())));
            } else if (cut.contains(piece.id())) {
                gone.add(piece);
                for (CutTree.Kept kept : each.tree().kept()) {
                    come.add(named(piece, kept.at().size(), next + come.size()));
                }
                each.tree().left().stream()
                        .filter(left ->
                                CutTree.isReusable(left.size(), plan.rules().leastPiece()))
                        .forEach(left -> come.add(named(piece, left.size(), next + come.size())));
            }
        }
        return new AfterSlip(gone, come);
    }

    private static Piece named(Piece from, Size size, int number) {
        return new Piece(String.valueOf(number), from.fabric(), size, from.washed(), number);
    }
}
