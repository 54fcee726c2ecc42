package hearthcloth.plan.model;

import hearthcloth.cloth.Rect;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What became of the fabric of a cloth, each area counted once. What was left of a piece that was cut for an earlier plan may
 * have been cut since, as a piece with a number of its own: it is known by its fabric, its size and its later number, and then
 * it is neither a further piece that was cut into nor an offcut still there.
 */
final class WholeAreas {

    private record Left(Piece from, Rect at) {}

    private final Plan plan;
    private final List<Left> left = new ArrayList<>();
    private double touched;
    private double used;

    WholeAreas(Plan plan) {
        this.plan = plan;
        plan.cuts().forEach(cut -> cut.tree().left().forEach(at -> left.add(new Left(cut.piece(), at))));
        for (PieceCut cut : plan.cuts()) {
            Optional<Left> again = offcutOf(cut);
            again.ifPresent(left::remove);
            touched += again.isPresent() ? 0 : cut.piece().areaMm2();
            used += cut.tree().kept().stream()
                    .mapToDouble(kept -> kept.at().size().areaMm2())
                    .sum();
        }
    }

    private Optional<Left> offcutOf(PieceCut cut) {
        Piece piece = cut.piece();
        return left.stream()
                .filter(one -> piece.row() > one.from().row()
                        && piece.fabric().equals(one.from().fabric())
                        && piece.size().equals(one.at().size())
                        && isPast(one.from()))
                .findFirst();
    }

    private boolean isPast(Piece piece) {
        return plan.cuts().stream()
                .anyMatch(cut -> cut.past() && cut.piece().equals(piece));
    }

    PlanFigures.Areas areas() {
        double lost = 0;
        double offcuts = 0;
        for (Left one : left) {
            double area = one.at().size().areaMm2();
            if (CutTree.isReusable(one.at().size(), plan.rules().leastPiece())) {
                offcuts += area;
            } else {
                lost += area;
            }
        }
        return new PlanFigures.Areas(touched, used, lost, offcuts);
    }
}
