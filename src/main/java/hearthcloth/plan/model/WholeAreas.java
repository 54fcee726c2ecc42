package hearthcloth.plan.model;

import hearthcloth.cloth.Rect;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What became of the fabric of a cloth, each area counted once. What was left of a piece that was cut for an earlier plan may
 * have been cut since, as a piece with a number of its own: it is known by its fabric, its later number and its size, and then
 * it is neither a further piece that was cut into nor an offcut still there. A bar that was found too short came back shorter
 * than it was planned; what it lacks counts as lost.
 */
final class WholeAreas {

    private record Left(Piece from, Rect at) {

        double areaMm2() {
            return at.size().areaMm2();
        }
    }

    private final Plan plan;
    /** What is left and was not cut since; of past pieces first what they gave. */
    private final List<Left> left = new ArrayList<>();

    private final Set<Piece> past;
    private double touched;
    private double used;
    private double lost;

    WholeAreas(Plan plan) {
        this.plan = plan;
        this.past =
                plan.cuts().stream().filter(PieceCut::past).map(PieceCut::piece).collect(Collectors.toSet());
        plan.cuts().forEach(cut -> cut.tree().left().forEach(at -> left.add(new Left(cut.piece(), at))));
        for (PieceCut cut : plan.cuts()) {
            Optional<Left> whole = offcutOf(cut.piece());
            if (whole.isPresent()) {
                left.remove(whole.get());
                lost += whole.get().areaMm2() - cut.piece().areaMm2();
            } else {
                touched += cut.piece().areaMm2();
            }
            used += cut.tree().kept().stream()
                    .mapToDouble(kept -> kept.at().size().areaMm2())
                    .reduce(0, Double::sum);
        }
    }

    private Optional<Left> offcutOf(Piece piece) {
        return left.stream()
                .filter(one -> past.contains(one.from())
                        && piece.row() > one.from().row()
                        && piece.fabric().equals(one.from().fabric())
                        && isOf(piece.size(), one.at().size()))
                .min(Comparator.comparingDouble(Left::areaMm2));
    }

    /** The same, or the same but for what one end lacks. */
    private static boolean isOf(Size piece, Size left) {
        return left.holds(piece)
                && (left.width().equals(piece.width()) || left.height().equals(piece.height()));
    }

    PlanFigures.Areas areas() {
        double offcuts = 0;
        double scraps = lost;
        for (Left one : left) {
            if (CutTree.isReusable(one.at().size(), plan.rules().leastPiece())) {
                offcuts += one.areaMm2();
            } else {
                scraps += one.areaMm2();
            }
        }
        return new PlanFigures.Areas(touched, used, scraps, offcuts);
    }
}
