package hearthcloth.cutstock.bound;

import hearthcloth.cutstock.job.CutDemand;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import java.util.Arrays;
import java.util.List;

/**
 * What one piece can give at most for some demands, and what it must lose by giving it.
 *
 * <p>Any line right across a piece is covered by parts whose extents are known numbers: the widths of the bars that lie
 * one way, at least the shortest part of those that lie the other, the sides of blocks. The best such sum times the
 * piece's extent bounds the covered area, from either direction. Where even the narrowest extent leaves less than the
 * least offcut beside it, whatever is not covered on a line with a part is in a sliver, so the loss is at least in the
 * proportion of the best sum to what it leaves.
 *
 * @param area of the piece, in square units
 * @param capacity no cutting covers more than this area
 * @param lossShare the least lost area for each unit of covered area
 */
record PieceYield(double area, double capacity, double lossShare) {

    /** Sums examined on one line; beyond that the whole line counts as covered, which is on the safe side. */
    private static final int MOST_SUMS = 500;

    /** What a piece gives; capacity 0 if no part of any demand fits on it. */
    static PieceYield of(StockPiece piece, List<CutDemand> demands, long leastOffcut) {
        Line across = new Line(piece.width());
        Line along = new Line(piece.length());
        for (CutDemand demand : demands) {
            if (!demand.fabrics().has(piece.fabric())) {
                continue;
            }
            if (demand instanceof JobBar bar) {
                lay(bar, false, piece, across, along);
                lay(bar, true, piece, along, across);
            } else if (demand instanceof JobBlock block) {
                lay(block.width(), block.height(), across, along);
                if (block.turnable() && !piece.lengthwiseOnly()) {
                    lay(block.height(), block.width(), across, along);
                }
            }
        }
        double capacity = Math.min((double) across.most() * piece.length(), (double) along.most() * piece.width());
        return new PieceYield(
                piece.area(), capacity, Math.max(across.lossShare(leastOffcut), along.lossShare(leastOffcut)));
    }

    private static void lay(JobBar bar, boolean turned, StockPiece piece, Line side, Line run) {
        long shortest = Math.min(bar.leastPart(), bar.length());
        if (bar.turn().allows(turned, piece.lengthwiseOnly()) && side.holds(bar.width()) && run.holds(shortest)) {
            side.exactly(bar.width());
            run.atLeast(shortest);
        }
    }

    private static void lay(long width, long height, Line across, Line along) {
        if (across.holds(width) && along.holds(height)) {
            across.exactly(width);
            along.exactly(height);
        }
    }

    /** A line right across a piece, and the extents that parts may have on it. */
    private static final class Line {
        private final long extent;
        private long[] exact = {};
        private long free = Long.MAX_VALUE;
        private int sums;

        Line(long extent) {
            this.extent = extent;
        }

        boolean holds(long part) {
            return part <= extent;
        }

        void exactly(long part) {
            for (long known : exact) {
                if (known == part) {
                    return;
                }
            }
            exact = Arrays.copyOf(exact, exact.length + 1);
            exact[exact.length - 1] = part;
        }

        void atLeast(long part) {
            free = Math.min(free, part);
        }

        /**
         * The best sum of extents; the whole line where a part may have any length, or where there are too many sums.
         */
        long most() {
            if (free <= extent) {
                return extent;
            }
            sums = 0;
            long most = most(exact.length - 1, extent);
            return sums > MOST_SUMS ? extent : most;
        }

        private long most(int last, long room) {
            if (last < 0 || sums++ > MOST_SUMS) {
                return 0;
            }
            long best = 0;
            for (long taken = 0; taken <= room && best < room; taken += exact[last]) {
                best = Math.max(best, taken + most(last - 1, room - taken));
            }
            return best;
        }

        /**
         * The least share lost. One unit is allowed for, because a piece may measure up to a unit more than its whole
         * number.
         */
        double lossShare(long leastOffcut) {
            if (free <= extent || exact.length == 0) {
                return 0;
            }
            long narrowest = Arrays.stream(exact).min().orElse(extent);
            long most = most();
            return extent - narrowest + 1 < leastOffcut ? (double) (extent - most) / most : 0;
        }
    }
}
