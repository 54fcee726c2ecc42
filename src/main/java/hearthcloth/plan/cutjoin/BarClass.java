package hearthcloth.plan.cutjoin;

import hearthcloth.plan.join.JoinBounds;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * Bars that may be joined from the same lanes.
 *
 * @param bounds what holds for this class alone, given every lane the stock could give it
 */
record BarClass(LaneKind kind, List<Bar> bars, JoinBounds bounds) {

    private static final int MOST_OF_ONE_PIECE = 512;

    /** Sorts the bars of a job into classes. */
    static List<BarClass> of(Job job) {
        Map<LaneKind, List<Bar>> byKind = new LinkedHashMap<>();
        for (Bar bar : job.bars()) {
            byKind.computeIfAbsent(new LaneKind(bar.width(), bar.turn(), bar.fabrics()), kind -> new ArrayList<>())
                    .add(bar);
        }
        List<BarClass> classes = new ArrayList<>();
        byKind.forEach((kind, bars) -> classes.add(new BarClass(
                kind,
                List.copyOf(bars),
                new JoinBounds(
                        bars.stream().mapToLong(Bar::length).toArray(),
                        lanes(job, kind, shortest(bars)),
                        job.joinLoss()))));
        return classes;
    }

    /** The shortest lane that any part can be cut from. */
    private static long shortest(List<Bar> bars) {
        return bars.stream()
                .mapToLong(bar -> Math.min(bar.leastPart(), bar.length()))
                .min()
                .orElse(0);
    }

    /**
     * The lanes along and the lanes across of every piece, as if both could be cut: no cutting gives more, since parts
     * that lie the same way fit into as many columns as the piece is wide.
     */
    private static long[] lanes(Job job, LaneKind kind, long shortest) {
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

    /** Area of all its bars when they have this many joins. */
    double area(int joins, long loss) {
        return (double) kind.width() * (bars.stream().mapToLong(Bar::length).sum() + loss * joins);
    }
}
