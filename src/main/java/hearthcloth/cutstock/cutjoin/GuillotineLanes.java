package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.LaneKind;
import hearthcloth.cutstock.join.StripSource;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;

/**
 * Plots of fabric as a source of lanes, the strips that bars are joined from. A place is a rectangle and a direction.
 *
 * <p>A rectangle is divided by cuts side by side; whatever is cut off is a rectangle as well and may be divided the
 * other way, to any depth, so every state is a straight edge-to-edge cutting (a guillotine cutting). The part of a
 * lane's length that is not used is divided like anything else, for lanes of other widths or in the other direction. A
 * lane given back widens the gap of the rectangle it was cut off; a rectangle from which nothing is cut any more is
 * given back itself. Opening and closing cost O(rectangles), for the search for a free number.
 */
final class GuillotineLanes implements StripSource {

    private final List<FreePlots.Plot> plots;
    private final long[] widths;
    private final int[][] places;
    private final boolean[][] suits;
    private final long[] extents;
    private final long leastOffcut;
    private final double unitArea;
    private final SearchParameters.Costs costs;

    private final LaneState now;
    private final LaneState saved;

    GuillotineLanes(
            List<FreePlots.Plot> plots,
            List<LaneKind> kinds,
            int slots,
            long leastOffcut,
            double unitArea,
            SearchParameters.Costs costs) {
        this.plots = plots;
        this.widths = kinds.stream().mapToLong(LaneKind::width).toArray();
        this.leastOffcut = leastOffcut;
        this.unitArea = unitArea;
        this.costs = costs;
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
            places[kind] = sorted(suiting, wanted.width());
        }
    }

    /** The places that suit and are wide enough, the shortest first, of equal ones that of the lower number. */
    private int[] sorted(boolean[] suiting, long width) {
        long[] keys = new long[suiting.length];
        int count = 0;
        for (int place = 0; place < suiting.length; place++) {
            if (suiting[place] && extents[place] >= width) {
                keys[count++] = extents[place ^ 1] * suiting.length + place;
            }
        }
        Arrays.sort(keys, 0, count);
        int[] sorted = new int[count];
        for (int i = 0; i < count; i++) {
            sorted[i] = (int) (keys[i] % suiting.length);
        }
        return sorted;
    }

    @Override
    public int slots() {
        return now.parent.length - now.plots;
    }

    @Override
    public int[] places(int kind) {
        return places[kind];
    }

    @Override
    public int firstPassing() {
        return 2 * now.plots;
    }

    @Override
    public int passingLimit() {
        return 2 * now.limit;
    }

    @Override
    public boolean isTail(int place) {
        return now.lane[place >> 1];
    }

    /** Whether nothing is cut off a plot, so that it may be divided either way. */
    private boolean untouched(int rectangle) {
        return rectangle < now.plots && now.kids[rectangle] == 0;
    }

    /** The extent that lanes would divide at a place. */
    private long room(int place, long[] used) {
        int from = place >> 1;
        if (untouched(from)) {
            return extents[place];
        }
        return now.across[from] == (place % 2 == 1) ? free(from, used) : now.run[from];
    }

    /** The length that lanes would have at a place. */
    private long reach(int place, long[] used) {
        int from = place >> 1;
        if (untouched(from)) {
            return extents[place ^ 1];
        }
        return now.across[from] == (place % 2 == 1) ? now.run[from] : free(from, used);
    }

    private long free(int rectangle, long[] used) {
        return now.gap[rectangle] - (now.lane[rectangle] ? used[rectangle - now.plots] : 0);
    }

    @Override
    public long offered(int kind, int place, long[] used) {
        int from = place >> 1;
        if (now.parent[from] < 0 || !suits[kind][2 * now.plot[from] + place % 2]) {
            return 0;
        }
        long width = widths[kind];
        boolean itsOwn = now.lane[from] && now.run[from] == width && now.across[from] != (place % 2 == 1);
        return itsOwn || room(place, used) < width ? 0 : reach(place, used);
    }

    @Override
    public int copies(int kind, int place, long[] used) {
        return (int) Math.min(Integer.MAX_VALUE, room(place, used) / widths[kind]);
    }

    @Override
    public int open(int kind, int place, long[] used) {
        if (offered(kind, place, used) <= 0) {
            return -1;
        }
        int from = place >> 1;
        boolean turned = place % 2 == 1;
        if (untouched(from)) {
            now.across[from] = turned;
            now.gap[from] = extents[place];
            now.run[from] = extents[place ^ 1];
        } else if (now.across[from] != turned) {
            from = level(from, turned, free(from, used));
        }
        int made = from < 0 ? -1 : now.cut(from, widths[kind]);
        if (made < 0) {
            giveBack(from);
            return -1;
        }
        now.across[made] = !turned;
        now.lane[made] = true;
        now.gap[made] = now.run[from];
        now.run[made] = widths[kind];
        return made - now.plots;
    }

    /** Cuts off everything that is free, to divide it the other way. */
    private int level(int from, boolean across, long free) {
        int made = now.cut(from, free);
        if (made >= 0) {
            now.across[made] = across;
            now.lane[made] = false;
            now.gap[made] = now.run[from];
            now.run[made] = free;
        }
        return made;
    }

    private void giveBack(int rectangle) {
        if (rectangle >= 0) {
            now.giveBack(rectangle);
        }
    }

    @Override
    public void close(int slot) {
        int rectangle = slot + now.plots;
        now.lane[rectangle] = false;
        now.giveBack(rectangle);
    }

    @Override
    public int openLimit() {
        return now.limit - now.plots;
    }

    @Override
    public boolean isOpen(int slot) {
        int rectangle = slot + now.plots;
        return now.parent[rectangle] >= 0 && now.lane[rectangle];
    }

    @Override
    public long length(int slot) {
        return now.gap[slot + now.plots];
    }

    @Override
    public long whole(int slot) {
        return now.run[now.parent[slot + now.plots]];
    }

    @Override
    public int origin(int slot) {
        return now.plot[slot + now.plots];
    }

    @Override
    public int originOf(int place) {
        return place >> 1;
    }

    @Override
    public boolean serves(int slot, int kind) {
        int rectangle = slot + now.plots;
        int lies = now.across[rectangle] ? 0 : 1;
        return now.run[rectangle] == widths[kind] && suits[kind][2 * now.plot[rectangle] + lies];
    }

    @Override
    public double openingCost(int kind, int place, long[] used) {
        int from = place >> 1;
        boolean level = !untouched(from) && now.across[from] != (place % 2 == 1);
        return costs.perCut() * ((level ? 1 : 0) + (room(place, used) == widths[kind] ? 0 : 1));
    }

    @Override
    public double cost(long[] used) {
        int cuts = 0;
        double slivers = 0;
        double touched = 0;
        for (int plot = 0; plot < now.plots; plot++) {
            touched += now.kids[plot] > 0 ? plots.get(plot).rectangle().area() : 0;
        }
        for (int i = 0; i < now.limit; i++) {
            if (now.parent[i] < 0 || (now.kids[i] == 0 && !now.lane[i])) {
                continue;
            }
            long free = free(i, used);
            if (now.lane[i]) {
                cuts += free > 0 ? 1 : 0;
            } else {
                cuts += (i < now.plots ? 0 : 1) - (free > 0 ? 0 : 1);
            }
            slivers += Math.min(free, now.run[i]) < leastOffcut ? (double) free * now.run[i] : 0;
        }
        return costs.perCut() * cuts + (costs.perSliver() * slivers + costs.perTouched() * touched) / unitArea;
    }

    @Override
    public void save() {
        saved.copy(now);
    }

    @Override
    public void restore() {
        now.copy(saved);
    }

    /** How the plots are divided; to be read only. */
    LaneState state() {
        return now;
    }
}
