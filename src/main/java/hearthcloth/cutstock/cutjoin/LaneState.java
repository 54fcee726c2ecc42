package hearthcloth.cutstock.cutjoin;

/**
 * What changes while lanes are opened and closed, in flat arrays so that copying is cheap. Each entry is a rectangle: a
 * plot, or something that was cut off a larger one. A rectangle is divided by cuts side by side; its {@code gap} is
 * what is left of the extent so divided, its {@code run} the other extent.
 */
final class LaneState {
    final int plots;
    /** The rectangle that each one was cut off; itself for a plot, -1 where there is no rectangle. */
    final int[] parent;

    final int[] plot;
    /** How much of its parent's extent it takes. */
    final long[] extent;

    final long[] gap;
    final long[] run;
    /** The number of rectangles cut off it. */
    final int[] kids;
    /** Whether lanes cut off it side by side lie across the piece. */
    final boolean[] across;
    /** Whether it is a lane, so that parts of bars are cut off it too. */
    final boolean[] lane;

    int limit;

    LaneState(int plots, int slots) {
        int all = plots + slots;
        this.plots = plots;
        parent = new int[all];
        plot = new int[all];
        extent = new long[all];
        gap = new long[all];
        run = new long[all];
        kids = new int[all];
        across = new boolean[all];
        lane = new boolean[all];
        limit = plots;
        for (int i = 0; i < all; i++) {
            parent[i] = i < plots ? i : -1;
            plot[i] = i < plots ? i : 0;
        }
    }

    void copy(LaneState other) {
        int all = Math.max(limit, other.limit);
        System.arraycopy(other.parent, plots, parent, plots, all - plots);
        System.arraycopy(other.plot, plots, plot, plots, all - plots);
        System.arraycopy(other.extent, plots, extent, plots, all - plots);
        System.arraycopy(other.gap, 0, gap, 0, all);
        System.arraycopy(other.run, 0, run, 0, all);
        System.arraycopy(other.kids, 0, kids, 0, all);
        System.arraycopy(other.across, 0, across, 0, all);
        System.arraycopy(other.lane, plots, lane, plots, all - plots);
        limit = other.limit;
    }

    /** Cuts a rectangle off another, with nothing cut off it yet; -1 if there is no entry left for it. */
    int cut(int from, long size) {
        int made = plots;
        while (made < limit && parent[made] >= 0) {
            made++;
        }
        if (made == parent.length) {
            return -1;
        }
        limit = Math.max(limit, made + 1);
        parent[made] = from;
        plot[made] = plot[from];
        extent[made] = size;
        kids[made] = 0;
        gap[from] -= size;
        kids[from]++;
        return made;
    }

    /** Gives back a rectangle from which nothing is cut, and the larger ones that were cut for it alone. */
    void giveBack(int rectangle) {
        int last = rectangle;
        while (last >= plots && kids[last] == 0 && !lane[last]) {
            int from = parent[last];
            gap[from] += extent[last];
            kids[from]--;
            parent[last] = -1;
            last = from;
        }
        while (limit > plots && parent[limit - 1] < 0) {
            limit--;
        }
    }
}
