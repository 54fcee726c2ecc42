package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.bound.CutBounds;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.LaneKind;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Chooses the pieces of a large stock that a search considers, so that its cost does not grow with the stock: for each
 * kind of lane the longest, those that have the width already, and those whose length is nearest above a bar's; for
 * each block the closest fits. O(m log m) for m pieces, for each kind.
 */
final class PieceChoice {

    /** A stock of up to this many pieces is considered as a whole. */
    private static final int SMALL_STOCK = 250;

    private final CutJoinJob job;
    private final List<LaneKind> kinds;
    private final BitSet chosen = new BitSet();

    PieceChoice(CutJoinJob job, List<LaneKind> kinds) {
        this.job = job;
        this.kinds = kinds;
    }

    /** The pieces to consider, in stock order; {@code generosity} 1 is enough unless the stock is tight. */
    List<StockPiece> pieces(int generosity) {
        if (job.stock().size() <= SMALL_STOCK * generosity) {
            return job.stock();
        }
        int share = Math.max(16, SMALL_STOCK * generosity / (2 * Math.max(1, kinds.size())));
        for (LaneKind kind : kinds) {
            choose(kind, false, share);
            choose(kind, true, share);
        }
        for (JobBlock block : job.blocks()) {
            choose(block);
        }
        return chosen.stream().mapToObj(job.stock()::get).toList();
    }

    private void choose(LaneKind kind, boolean turned, int share) {
        List<Integer> fitting = fitting(kind, turned);
        long[] runs =
                fitting.stream().mapToLong(i -> run(job.stock().get(i), turned)).toArray();
        for (int i = Math.max(0, fitting.size() - share); i < fitting.size(); i++) {
            chosen.set(fitting.get(i));
        }
        int ready = 0;
        for (int i = fitting.size() - 1; i >= 0 && ready < share; i--) {
            if (extent(job.stock().get(fitting.get(i)), turned) == kind.width()) {
                chosen.set(fitting.get(i));
                ready++;
            }
        }
        for (JobBar bar : job.bars()) {
            if (bar.width() == kind.width()) {
                int at = Arrays.binarySearch(runs, bar.length());
                int first = at < 0 ? -at - 1 : at;
                for (int i = first; i < Math.min(first + 2, fitting.size()); i++) {
                    chosen.set(fitting.get(i));
                }
            }
        }
    }

    /** The pieces a lane of this kind can lie in, the shorter first. */
    private List<Integer> fitting(LaneKind kind, boolean turned) {
        List<Integer> fitting = new ArrayList<>();
        for (int i = 0; i < job.stock().size(); i++) {
            StockPiece piece = job.stock().get(i);
            if (kind.suits(piece, turned) && extent(piece, turned) >= kind.width()) {
                fitting.add(i);
            }
        }
        fitting.sort(Comparator.comparingLong((Integer i) -> run(job.stock().get(i), turned)));
        return fitting;
    }

    private void choose(JobBlock block) {
        List<Integer> fitting = new ArrayList<>();
        for (int i = 0; i < job.stock().size(); i++) {
            if (CutBounds.fits(block, job.stock().get(i))) {
                fitting.add(i);
            }
        }
        fitting.sort(Comparator.comparingDouble(i -> job.stock().get(i).area()));
        fitting.stream().limit(16).forEach(chosen::set);
    }

    private static long extent(StockPiece piece, boolean turned) {
        return turned ? piece.length() : piece.width();
    }

    private static long run(StockPiece piece, boolean turned) {
        return turned ? piece.width() : piece.length();
    }
}
