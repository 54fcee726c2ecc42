package hearthcloth.cutstock.job;

import hearthcloth.cutstock.join.JoinBounds;
import hearthcloth.cutstock.join.LeftoverBound;
import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * Bars that may be joined from the same lanes, and the bounds that hold for them alone, given every lane there could
 * be.
 */
public final class BarClass {

    /** The most equal lanes that are counted for one piece. */
    private static final int MOST_OF_ONE_PIECE = 512;
    /** With more lanes than this the slower relaxation is not tried. */
    private static final int MOST_LANES = 4_000;

    private final LaneKind kind;
    private final List<JobBar> bars;
    private final long[] lengths;
    private final long[] lanes;
    private final long loss;
    private final JoinBounds bounds;
    private int joins;

    private BarClass(LaneKind kind, List<JobBar> bars, CutJoinJob job) {
        this.kind = kind;
        this.bars = List.copyOf(bars);
        this.lengths = bars.stream().mapToLong(JobBar::length).toArray();
        this.lanes = lanes(job, kind, shortest(bars));
        this.loss = job.joinLoss();
        this.bounds = new JoinBounds(lengths, lanes, loss);
        this.joins = bounds.joins();
    }

    /** Sorts the bars of a job into classes. */
    public static List<BarClass> of(CutJoinJob job) {
        Map<LaneKind, List<JobBar>> byKind = new LinkedHashMap<>();
        for (JobBar bar : job.bars()) {
            byKind.computeIfAbsent(new LaneKind(bar.width(), bar.turn(), bar.fabrics()), kind -> new ArrayList<>())
                    .add(bar);
        }
        List<BarClass> classes = new ArrayList<>();
        byKind.forEach((kind, bars) -> classes.add(new BarClass(kind, bars, job)));
        return classes;
    }

    /** The shortest lane that any part can be cut from. */
    private static long shortest(List<JobBar> bars) {
        return bars.stream()
                .mapToLong(bar -> Math.min(bar.leastPart(), bar.length()))
                .min()
                .orElse(0);
    }

    /**
     * The lanes along and the lanes across of every piece, as if both could be cut. No cutting gives more, since parts
     * that lie the same way fit into as many columns as the piece is wide.
     */
    private static long[] lanes(CutJoinJob job, LaneKind kind, long shortest) {
        LongStream.Builder lanes = LongStream.builder();
        for (StockPiece piece : job.stock()) {
            if (kind.suits(piece, false) && piece.length() >= shortest) {
                add(lanes, piece.width() / kind.width(), piece.length());
            }
            if (kind.suits(piece, true) && piece.width() >= shortest) {
                add(lanes, piece.length() / kind.width(), piece.width());
            }
        }
        return lanes.build().toArray();
    }

    private static void add(LongStream.Builder lanes, long count, long length) {
        for (long i = Math.min(count, MOST_OF_ONE_PIECE); i > 0; i--) {
            lanes.add(length);
        }
    }

    public LaneKind kind() {
        return kind;
    }

    public List<JobBar> bars() {
        return bars;
    }

    public JoinBounds bounds() {
        return bounds;
    }

    /** Every plan has at least this many joins in these bars. */
    public int joins() {
        return joins;
    }

    /**
     * Raises the bound by the slower relaxation, unless {@code enough} is reached or there are too many lanes for it to
     * matter.
     */
    public void raise(int enough, Budget budget) {
        if (joins < enough && lanes.length <= MOST_LANES) {
            joins = Math.max(joins, new LeftoverBound(lengths, lanes, loss, bounds).joins(enough, budget));
        }
    }

    /** The joins of every plan take at least this area from the parts of these bars, in square units. */
    public double joinedArea() {
        return (double) kind.width() * loss * joins;
    }
}
