package hearthcloth.cutstock.job;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A complete plan: every demand cut, with the cuts of each used piece. */
public record CutPlan(List<CutPiece> pieces, CutFigures figures) {

    public CutPlan {
        pieces = List.copyOf(pieces);
    }

    /** A part and the piece it is cut from. */
    public record Placed(StockPiece piece, Cutting.Part part) {}

    /** Every part with its piece. */
    public Stream<Placed> parts() {
        return pieces.stream()
                .flatMap(used -> used.cutting()
                        .leaves()
                        .filter(Cutting.Part.class::isInstance)
                        .map(leaf -> new Placed(used.piece(), (Cutting.Part) leaf)));
    }

    /** The parts of one demand in the order of joining. */
    public List<Placed> partsOf(int demand) {
        return parts().filter(placed -> placed.part().demand() == demand)
                .sorted(Comparator.comparingInt(placed -> placed.part().index()))
                .toList();
    }

    /** Counts what cut pieces cost, for a job with this many bars. */
    public static CutPlan of(List<CutPiece> pieces, int blocks, int bars, long leastOffcut) {
        int parts = 0;
        int cuts = 0;
        double used = 0;
        double offcuts = 0;
        double slivers = 0;
        for (CutPiece piece : pieces) {
            cuts += piece.cutting().cuts();
            for (Cutting leaf : piece.cutting().leaves().toList()) {
                if (leaf instanceof Cutting.Part) {
                    parts++;
                    used += leaf.area();
                } else if (Math.min(leaf.width(), leaf.height()) >= leastOffcut) {
                    offcuts += leaf.area();
                } else {
                    slivers += leaf.area();
                }
            }
        }
        return new CutPlan(pieces, new CutFigures(parts - blocks - bars, cuts, used, offcuts, slivers));
    }
}
