package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.LaneKind;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Places blocks, largest first, each into the corner of a free rectangle: the one where it spoils the least room for
 * lanes or, for variety, one of the next. O(blocks x plots) for one ground.
 */
final class StockCorners {

    private final List<JobBlock> blocks;
    private final List<LaneKind> kinds;
    /** The weight of a free rectangle's area beside the room that is spoilt. */
    private final double smallFirst;

    StockCorners(CutJoinJob job, List<LaneKind> kinds, double smallFirst) {
        this.smallFirst = smallFirst;
        this.kinds = kinds;
        this.blocks = job.blocks().stream()
                .sorted(Comparator.comparingDouble((JobBlock block) -> -(double) block.width() * block.height()))
                .toList();
    }

    private record Spot(int piece, Cutting.Offcut free, Cutting cutting, double spoilt) {}

    /** The block that fitted nowhere, or the ground with all of them placed. */
    record Placing(FreePlots ground, Optional<JobBlock> left) {}

    /**
     * Places all blocks; with {@code variety} 0 always in the best spot, with 1 in any of the best with decreasing
     * probability.
     */
    Placing place(List<StockPiece> pieces, double variety, SplittableRandom chance) {
        FreePlots ground = FreePlots.bare(pieces);
        for (JobBlock block : blocks) {
            List<Spot> spots = spots(ground, block);
            if (spots.isEmpty()) {
                return new Placing(ground, Optional.of(block));
            }
            spots.sort(Comparator.comparingDouble(Spot::spoilt));
            int pick = 0;
            while (pick + 1 < spots.size() && chance.nextDouble() < variety) {
                pick++;
            }
            Spot spot = spots.get(pick);
            ground = ground.with(spot.piece, spot.free, spot.cutting);
        }
        return new Placing(ground, Optional.empty());
    }

    private List<Spot> spots(FreePlots ground, JobBlock block) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < ground.pieces().size(); i++) {
            StockPiece piece = ground.pieces().get(i);
            if (!block.fabrics().has(piece.fabric())) {
                continue;
            }
            int index = i;
            ground.cuttings().get(i).leaves().forEach(leaf -> {
                if (leaf instanceof Cutting.Offcut free) {
                    spots.addAll(spots(index, piece, free, block));
                }
            });
        }
        return spots;
    }

    private List<Spot> spots(int index, StockPiece piece, Cutting.Offcut free, JobBlock block) {
        List<Spot> spots = new ArrayList<>();
        double before = room(piece, free);
        boolean square = block.width() == block.height();
        for (int turn = 0; turn <= (block.turnable() && !piece.lengthwiseOnly() && !square ? 1 : 0); turn++) {
            long width = turn == 0 ? block.width() : block.height();
            long height = turn == 0 ? block.height() : block.width();
            if (width > free.width() || height > free.height()) {
                continue;
            }
            Cutting.Part part = new Cutting.Part(block.id(), 0, free.x(), free.y(), width, height, turn == 1);
            for (boolean lengthwise : new boolean[] {true, false}) {
                Cutting cutting = corner(free, part, lengthwise);
                double after = cutting.leaves()
                        .filter(Cutting.Offcut.class::isInstance)
                        .mapToDouble(rest -> room(piece, rest))
                        .reduce(0, Double::sum);
                spots.add(new Spot(index, free, cutting, before - after + smallFirst * free.area()));
            }
        }
        return spots;
    }

    /** Cuts a part out of the upper left corner, the first cut lengthwise or across. */
    static Cutting corner(Cutting free, Cutting.Part part, boolean lengthwise) {
        long x = free.x();
        long y = free.y();
        long right = free.width() - part.width();
        long below = free.height() - part.height();
        if (lengthwise && right > 0) {
            Cutting column = new Cutting.Offcut(x, y, part.width(), free.height());
            Cutting rest = new Cutting.Offcut(x + part.width(), y, right, free.height());
            return new Cutting.Cut(
                    x, y, free.width(), free.height(), true, x + part.width(), corner(column, part, false), rest);
        }
        if (below > 0) {
            Cutting row = new Cutting.Offcut(x, y, free.width(), part.height());
            Cutting rest = new Cutting.Offcut(x, y + part.height(), free.width(), below);
            return new Cutting.Cut(
                    x, y, free.width(), free.height(), false, y + part.height(), corner(row, part, true), rest);
        }
        return right > 0 ? corner(free, part, true) : part;
    }

    /** The area that lanes could cover, in square units. */
    private double room(StockPiece piece, Cutting free) {
        double room = 0;
        for (LaneKind kind : kinds) {
            double along = kind.suits(piece, false) ? room(kind.width(), free.width(), free.height()) : 0;
            double across = kind.suits(piece, true) ? room(kind.width(), free.height(), free.width()) : 0;
            room += Math.max(along, across);
        }
        return room;
    }

    private static double room(long lane, long extent, long length) {
        long lanes = extent / lane;
        return (double) lanes * lane * length;
    }
}
