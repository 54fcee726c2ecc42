package hearthcloth.plan.cutjoin;

import hearthcloth.plan.join.Strips;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Plots of fabric as a source of lanes, the strips that bars are joined from. A place is a plot and a direction.
 *
 * <p>A plot is a stack of levels. The first level lays lanes side by side in one direction; what it leaves may become
 * the next level, whose lanes lie the other way, and so on, so every state is a straight edge-to-edge cutting. A lane
 * given back widens the gap of its own level; an empty last level gives its room back to the one before. Opening and
 * closing cost O({@value #MOST_LEVELS}).
 */
final class Lanes implements Strips {

    static final int MOST_LEVELS = 4;
    private static final double PER_CUT = 0.02;
    private static final double PER_SLIVER = 0.01;
    private static final double PER_TOUCHED = 0.004;

    private final List<Ground.Plot> plots;
    private final LaneKind[] kinds;
    private final int[][] places;
    private final boolean[][] suits;
    private final long[] extents;
    private final long leastOffcut;
    private final double unitArea;

    private final LaneState now;
    private final LaneState saved;

    Lanes(List<Ground.Plot> plots, List<LaneKind> kinds, int slots, long leastOffcut, double unitArea) {
        this.plots = plots;
        this.kinds = kinds.toArray(LaneKind[]::new);
        this.leastOffcut = leastOffcut;
        this.unitArea = unitArea;
        this.extents = plots.stream()
                .flatMapToLong(plot ->
                        LongStream.of(plot.rectangle().width(), plot.rectangle().height()))
                .toArray();
        this.now = new LaneState(plots.size(), slots);
        this.saved = new LaneState(plots.size(), slots);
        this.suits = new boolean[kinds.size()][2 * plots.size()];
        this.places = new int[kinds.size()][];
        for (int kind = 0; kind < kinds.size(); kind++) {
            LaneKind wanted = kinds.get(kind);
            boolean[] suiting = suits[kind];
            for (int place = 0; place < suiting.length; place++) {
                suiting[place] = wanted.suits(plots.get(place / 2).piece(), place % 2 == 1);
            }
            places[kind] = IntStream.range(0, suiting.length)
                    .filter(place -> suiting[place] && room(place) >= wanted.width())
                    .boxed()
                    .sorted(Comparator.comparingLong(this::run))
                    .mapToInt(Integer::intValue)
                    .toArray();
        }
    }

    /** The extent a plot offers for lanes side by side. */
    private long room(int place) {
        return extents[place];
    }

    /** The length a plot offers for lanes: its extent the other way. */
    private long run(int place) {
        return extents[place ^ 1];
    }

    @Override
    public int slots() {
        return now.lanePlace.length;
    }

    @Override
    public int[] places(int kind) {
        return places[kind];
    }

    /** The level a lane would be opened on; the depth itself if it would be a new one, -1 if there is no room. */
    private int level(int kind, int place) {
        int plot = place / 2;
        boolean turned = place % 2 == 1;
        long width = kinds[kind].width();
        int depth = now.depth[plot];
        if (depth == 0) {
            return room(place) >= width ? 0 : -1;
        }
        int first = plot * MOST_LEVELS;
        for (int level = 0; level < depth; level++) {
            if (now.turned[first + level] == turned && now.gap[first + level] >= width) {
                return level;
            }
        }
        boolean nests = depth < MOST_LEVELS
                && now.turned[first + depth - 1] != turned
                && now.length[first + depth - 1] >= width
                && now.gap[first + depth - 1] > 0;
        return nests ? depth : -1;
    }

    @Override
    public long offered(int kind, int place) {
        if (now.depth[place >> 1] == 0) {
            return run(place);
        }
        int level = level(kind, place);
        int plot = place / 2;
        if (level < 0) {
            return 0;
        } else if (level < now.depth[plot]) {
            return now.length[plot * MOST_LEVELS + level];
        }
        return level == 0 ? run(place) : now.gap[plot * MOST_LEVELS + level - 1];
    }

    @Override
    public int copies(int kind, int place) {
        if (extents[place] < 2 * kinds[kind].width()) {
            return 1;
        }
        int level = level(kind, place);
        int plot = place / 2;
        if (level < 0) {
            return 0;
        }
        long extent = level < now.depth[plot]
                ? now.gap[plot * MOST_LEVELS + level]
                : level == 0 ? room(place) : now.length[plot * MOST_LEVELS + level - 1];
        return (int) Math.min(Integer.MAX_VALUE, extent / kinds[kind].width());
    }

    @Override
    public int open(int kind, int place) {
        int level = level(kind, place);
        int slot = freeSlot();
        if (level < 0 || slot < 0) {
            return -1;
        }
        int plot = place / 2;
        if (level == now.depth[plot]) {
            begin(place, plot * MOST_LEVELS + level, level);
            now.depth[plot]++;
        }
        int at = plot * MOST_LEVELS + level;
        now.gap[at] -= kinds[kind].width();
        now.lanes[at]++;
        now.lanePlace[slot] = place;
        now.laneLevel[slot] = level;
        now.laneWidth[slot] = kinds[kind].width();
        now.limit = Math.max(now.limit, slot + 1);
        return slot;
    }

    private void begin(int place, int at, int level) {
        now.turned[at] = place % 2 == 1;
        now.lanes[at] = 0;
        if (level == 0) {
            now.gap[at] = room(place);
            now.length[at] = run(place);
        } else {
            now.gap[at] = now.length[at - 1];
            now.length[at] = now.gap[at - 1];
            now.gap[at - 1] = 0;
        }
    }

    private int freeSlot() {
        for (int slot = 0; slot < now.limit; slot++) {
            if (now.laneWidth[slot] == 0) {
                return slot;
            }
        }
        return now.limit < slots() ? now.limit : -1;
    }

    @Override
    public void close(int slot) {
        int plot = now.lanePlace[slot] / 2;
        int at = plot * MOST_LEVELS + now.laneLevel[slot];
        now.gap[at] += now.laneWidth[slot];
        now.lanes[at]--;
        now.laneWidth[slot] = 0;
        while (now.limit > 0 && now.laneWidth[now.limit - 1] == 0) {
            now.limit--;
        }
        while (now.depth[plot] > 0 && now.lanes[plot * MOST_LEVELS + now.depth[plot] - 1] == 0) {
            int last = plot * MOST_LEVELS + --now.depth[plot];
            if (now.depth[plot] > 0) {
                now.gap[last - 1] += now.length[last];
            }
        }
    }

    @Override
    public int openLimit() {
        return now.limit;
    }

    @Override
    public boolean isOpen(int slot) {
        return now.laneWidth[slot] > 0;
    }

    @Override
    public long length(int slot) {
        return now.length[now.lanePlace[slot] / 2 * MOST_LEVELS + now.laneLevel[slot]];
    }

    @Override
    public int origin(int slot) {
        return plot(slot);
    }

    @Override
    public boolean serves(int slot, int kind) {
        return now.laneWidth[slot] == kinds[kind].width() && suits[kind][now.lanePlace[slot]];
    }

    @Override
    public double openingCost(int kind, int place) {
        int level = level(kind, place);
        int plot = place / 2;
        boolean fresh = level == now.depth[plot];
        long extent = fresh ? room(place) : now.gap[plot * MOST_LEVELS + Math.max(0, level)];
        return PER_CUT * ((fresh && level > 0 ? 1 : 0) + (extent == kinds[kind].width() ? 0 : 1));
    }

    @Override
    public double cost(long[] used) {
        int cuts = 0;
        double slivers = 0;
        double touched = 0;
        for (int slot = 0; slot < now.limit; slot++) {
            if (now.laneWidth[slot] > 0) {
                long tail = length(slot) - used[slot];
                cuts += tail > 0 ? 1 : 0;
                slivers += sliver(tail, now.laneWidth[slot]);
            }
        }
        for (int plot = 0; plot < now.depth.length; plot++) {
            int depth = now.depth[plot];
            if (depth > 0) {
                Cutting rectangle = plots.get(plot).rectangle();
                touched += rectangle.area();
                cuts += depth - 1;
                for (int at = plot * MOST_LEVELS; at < plot * MOST_LEVELS + depth; at++) {
                    cuts += now.gap[at] > 0 ? 0 : -1;
                    slivers += sliver(now.gap[at], now.length[at]);
                }
            }
        }
        return PER_CUT * cuts + (PER_SLIVER * slivers + PER_TOUCHED * touched) / unitArea;
    }

    private double sliver(long one, long other) {
        return Math.min(one, other) < leastOffcut ? (double) one * other : 0;
    }

    @Override
    public void save() {
        saved.copy(now);
    }

    @Override
    public void restore() {
        now.copy(saved);
    }

    /** The plots, in the order of their numbers. */
    List<Ground.Plot> plots() {
        return plots;
    }

    /** How many levels a plot has. */
    int depth(int plot) {
        return now.depth[plot];
    }

    /** Whether the lanes of a level lie across the piece. */
    boolean turned(int plot, int level) {
        return now.turned[plot * MOST_LEVELS + level];
    }

    /** The extent that a level's own lanes leave free. */
    long gap(int plot, int level) {
        return now.gap[plot * MOST_LEVELS + level];
    }

    /** The plot of an open lane. */
    int plot(int slot) {
        return now.lanePlace[slot] / 2;
    }

    /** The level of an open lane. */
    int level(int slot) {
        return now.laneLevel[slot];
    }

    /** The width of an open lane. */
    long width(int slot) {
        return now.laneWidth[slot];
    }
}
