package hearthcloth.work;

import hearthcloth.cloth.Rect;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What cutting a cloth left over and is worth keeping, largest first: which of it lies in the stash still. An offcut is known
 * by its fabric and its size, so that one of the same fabric and size in its place counts as it; a bar that was found too short
 * came back as long as it is.
 */
public record OffcutsLeft(List<Left> all) {

    /**
     * One of them.
     *
     * @param piece it is in the stash; empty where it was used since
     */
    public record Left(Fabric fabric, Size size, Optional<Piece> piece) {}

    public OffcutsLeft {
        all = List.copyOf(all);
    }

    /**
     * What is left of a cloth. A cut that was asked for while sewing has left nothing before it is made.
     *
     * @param stash as it lies
     */
    public static OffcutsLeft of(Project cloth, Stash stash) {
        List<Piece> there = new ArrayList<>(stash.pieces());
        List<Left> all = new ArrayList<>();
        boolean isWhole = !cloth.life().stage().isToCut();
        cloth.plan()
                .ifPresent(plan -> plan.cuts().stream()
                        .filter(cut -> (isWhole || cut.past()) && !(cut.tree() instanceof CutTree.Left))
                        .forEach(cut -> lefts(plan, cut).forEach(size -> all.add(left(cut.piece(), size, there)))));
        all.sort(Comparator.comparing((Left left) -> -left.size().areaMm2()));
        return new OffcutsLeft(all);
    }

    private static List<Size> lefts(Plan plan, PieceCut cut) {
        return cut.tree().left().stream()
                .map(Rect::size)
                .filter(size -> CutTree.isReusable(size, plan.rules().leastPiece()))
                .toList();
    }

    private static Left left(Piece from, Size size, List<Piece> there) {
        Optional<Piece> piece = found(from, there, one -> one.size().equals(size))
                .or(() -> found(from, there, one -> one.row() > from.row() && isShorter(one.size(), size)));
        piece.ifPresent(there::remove);
        return new Left(from.fabric(), piece.map(Piece::size).orElse(size), piece);
    }

    private static Optional<Piece> found(Piece from, List<Piece> there, Predicate<Piece> isIt) {
        return there.stream()
                .filter(one -> one.fabric().equals(from.fabric()))
                .filter(isIt)
                .findFirst();
    }

    private static boolean isShorter(Size piece, Size left) {
        return left.holds(piece)
                && (left.width().equals(piece.width()) || left.height().equals(piece.height()));
    }

    /** Those that are in the stash. */
    public List<Piece> here() {
        return all.stream().flatMap(left -> left.piece().stream()).toList();
    }
}
