package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.List;

/**
 * Stock with the blocks already placed on it: for each piece a cutting whose offcuts are the plots that are still free
 * for lanes.
 */
record FreePlots(List<StockPiece> pieces, List<Cutting> cuttings) {

    /** A free rectangle of a piece. */
    record Plot(StockPiece piece, Cutting.Offcut rectangle) {}

    /** Stock on which nothing is placed. */
    static FreePlots bare(List<StockPiece> pieces) {
        return new FreePlots(
                List.copyOf(pieces),
                pieces.stream()
                        .<Cutting>map(piece -> new Cutting.Offcut(0, 0, piece.width(), piece.length()))
                        .toList());
    }

    List<Plot> plots() {
        List<Plot> plots = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            StockPiece piece = pieces.get(i);
            cuttings.get(i).leaves().forEach(leaf -> {
                if (leaf instanceof Cutting.Offcut free) {
                    plots.add(new Plot(piece, free));
                }
            });
        }
        return plots;
    }

    /** Puts a block into the corner of a free rectangle of the i-th piece. */
    FreePlots with(int i, Cutting.Offcut free, Cutting block) {
        List<Cutting> changed = new ArrayList<>(cuttings);
        changed.set(i, replace(cuttings.get(i), free, block));
        return new FreePlots(pieces, changed);
    }

    private static Cutting replace(Cutting cutting, Cutting.Offcut free, Cutting block) {
        if (cutting.equals(free)) {
            return block;
        }
        return cutting instanceof Cutting.Cut cut
                ? new Cutting.Cut(
                        cut.x(),
                        cut.y(),
                        cut.width(),
                        cut.height(),
                        cut.lengthwise(),
                        cut.at(),
                        replace(cut.first(), free, block),
                        replace(cut.second(), free, block))
                : cutting;
    }
}
