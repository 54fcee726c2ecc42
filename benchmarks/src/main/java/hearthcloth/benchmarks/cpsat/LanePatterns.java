package hearthcloth.benchmarks.cpsat;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;

/**
 * Every way of cutting one piece into lanes that could matter: lanes side by side in one direction, in what they leave
 * lanes the other way, and so on, up to {@value #MOST_LEVELS} levels; with the hearth in a corner first, in both
 * orders of cutting, where it fits. These are the cuttings that Hearthcloth's search looks through. Left out are those
 * that another one beats: for each of their lanes it has one as wide, lying the same way, and as long.
 */
final class LanePatterns {

    private static final int MOST_LEVELS = 4;
    private static final Comparator<Lane> ORDER =
            Comparator.comparingLong(Lane::width).thenComparing(Lane::turned).thenComparingLong(lane -> -lane.length());

    private final CutJoinJob job;
    private final StockPiece piece;
    private final long[] along;
    private final long[] across;
    private final long shortest;
    private final Map<List<Object>, Set<List<Lane>>> seen = new HashMap<>();

    LanePatterns(CutJoinJob job, StockPiece piece) {
        this.job = job;
        this.piece = piece;
        this.along = widths(false);
        this.across = widths(true);
        this.shortest = job.bars().stream()
                .mapToLong(bar -> Math.min(bar.leastPart(), bar.length()))
                .min()
                .orElse(1);
    }

    private long[] widths(boolean turned) {
        return job.bars().stream()
                .filter(bar -> suits(bar, piece, turned))
                .mapToLong(JobBar::width)
                .distinct()
                .sorted()
                .toArray();
    }

    /** Whether a bar's parts may be cut from a lane of the piece that lies this way. */
    static boolean suits(JobBar bar, StockPiece piece, boolean turned) {
        boolean turns = bar.turn() == BarTurn.ANY
                || (turned ? bar.turn() == BarTurn.ACROSS : bar.turn() == BarTurn.ALONG)
                || (bar.turn() == BarTurn.NAP && (!turned || !piece.lengthwiseOnly()))
                || (bar.turn() == BarTurn.NAP_ACROSS && (turned || !piece.lengthwiseOnly()));
        return turns && bar.fabrics().has(piece.fabric());
    }

    /** The patterns of the whole piece. */
    List<List<Lane>> whole() {
        return undominated(plot(piece.width(), piece.length()));
    }

    /** The patterns of what a hearth leaves of the piece; empty where it does not fit. */
    List<List<Lane>> beside(JobBlock hearth) {
        Set<List<Lane>> all = new LinkedHashSet<>();
        if (hearth.fabrics().has(piece.fabric())) {
            boolean turns = hearth.turnable() && !piece.lengthwiseOnly();
            corner(hearth.width(), hearth.height(), all);
            if (turns && hearth.width() != hearth.height()) {
                corner(hearth.height(), hearth.width(), all);
            }
        }
        return undominated(all);
    }

    private void corner(long width, long height, Set<List<Lane>> all) {
        long right = piece.width() - width;
        long below = piece.length() - height;
        if (right >= 0 && below >= 0) {
            all.addAll(both(plot(right, piece.length()), plot(width, below)));
            all.addAll(both(plot(right, height), plot(piece.width(), below)));
        }
    }

    private static Set<List<Lane>> both(Set<List<Lane>> one, Set<List<Lane>> other) {
        Set<List<Lane>> all = new LinkedHashSet<>();
        for (List<Lane> first : one) {
            for (List<Lane> second : other) {
                List<Lane> together = new ArrayList<>(first);
                together.addAll(second);
                together.sort(ORDER);
                all.add(List.copyOf(together));
            }
        }
        return all;
    }

    /** A free rectangle begun in either direction. */
    private Set<List<Lane>> plot(long width, long height) {
        Set<List<Lane>> all = new LinkedHashSet<>();
        all.add(List.of());
        if (width > 0 && height > 0) {
            all.addAll(level(width, height, false, 1));
            all.addAll(level(height, width, true, 1));
        }
        return new LinkedHashSet<>(undominated(all));
    }

    /** Lanes of this length side by side within an extent, and whatever the rest becomes. */
    private Set<List<Lane>> level(long extent, long length, boolean turned, int depth) {
        List<Object> key = List.of(extent, length, turned, depth);
        Set<List<Lane>> known = seen.get(key);
        if (known == null) {
            Set<List<Lane>> all = new LinkedHashSet<>();
            all.add(List.of());
            if (length >= shortest) {
                lanes(new long[] {extent, length}, turned, depth, 0, new ArrayList<>(), all);
            }
            known = new LinkedHashSet<>(undominated(all));
            seen.put(key, known);
        }
        return known;
    }

    private void lanes(long[] left, boolean turned, int depth, int from, List<Lane> taken, Set<List<Lane>> all) {
        long[] widths = turned ? across : along;
        if (!taken.isEmpty()) {
            all.add(taken.stream().sorted(ORDER).toList());
            if (depth < MOST_LEVELS && left[0] >= shortest) {
                all.addAll(both(Set.of(List.copyOf(taken)), level(left[1], left[0], !turned, depth + 1)));
            }
        }
        for (int i = from; i < widths.length; i++) {
            if (widths[i] <= left[0]) {
                taken.add(new Lane(widths[i], left[1], turned));
                lanes(new long[] {left[0] - widths[i], left[1]}, turned, depth, i, taken, all);
                taken.remove(taken.size() - 1);
            }
        }
    }

    /** Drops every pattern that another one covers lane by lane. */
    private static List<List<Lane>> undominated(Set<List<Lane>> all) {
        List<List<Lane>> kept = new ArrayList<>();
        List<List<Lane>> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingDouble((List<Lane> lanes) -> -lanes.stream()
                .mapToDouble(lane -> (double) lane.width() * lane.length())
                .sum()));
        for (List<Lane> lanes : sorted) {
            if (kept.stream().noneMatch(other -> covers(other, lanes))) {
                kept.add(lanes);
            }
        }
        return kept;
    }

    /** Both in {@link #ORDER}: by width and direction, the longest first, so a lane is best matched in turn. */
    private static boolean covers(List<Lane> larger, List<Lane> smaller) {
        int at = 0;
        for (Lane lane : smaller) {
            while (at < larger.size()
                    && !(larger.get(at).width() == lane.width()
                            && larger.get(at).turned() == lane.turned())) {
                at++;
            }
            if (at == larger.size() || larger.get(at).length() < lane.length()) {
                return false;
            }
            at++;
        }
        return true;
    }

    /** The longest lane that any bar of this width could get of the piece, for bounds. */
    static long longest(JobBar bar, StockPiece piece) {
        return LongStream.of(
                        suits(bar, piece, false) && bar.width() <= piece.width() ? piece.length() : 0,
                        suits(bar, piece, true) && bar.width() <= piece.length() ? piece.width() : 0)
                .max()
                .orElse(0);
    }
}
