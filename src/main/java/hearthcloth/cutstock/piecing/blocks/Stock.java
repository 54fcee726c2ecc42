package hearthcloth.cutstock.piecing.blocks;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.number.Elementary;

/** The scraps of a search by their net sizes, with what a cut of them costs. */
public final class Stock {

    /** As many scraps as one search of blocks can take: a set of 64 bits holds them. */
    public static final int MOST = 64;

    private final int[] widths;
    private final int[] heights;
    private final boolean[] turnable;
    private final Rules rules;

    private Stock(int[] widths, int[] heights, boolean[] turnable, Rules rules) {
        this.widths = widths;
        this.heights = heights;
        this.turnable = turnable;
        this.rules = rules;
    }

    /** Scraps of these net widths and heights; which may be turned by a quarter. */
    public static Stock of(int[] widths, int[] heights, boolean[] turnable, Rules rules) {
        return new Stock(widths.clone(), heights.clone(), turnable.clone(), rules);
    }

    /** Some of the scraps, in this order. */
    public Stock pick(int[] scraps) {
        Stock some = new Stock(new int[scraps.length], new int[scraps.length], new boolean[scraps.length], rules);
        for (int i = 0; i < scraps.length; i++) {
            some.widths[i] = widths[scraps[i]];
            some.heights[i] = heights[scraps[i]];
            some.turnable[i] = turnable[scraps[i]];
        }
        return some;
    }

    /** How many scraps there are. */
    public int size() {
        return widths.length;
    }

    /** A scrap's net width. */
    public int width(int scrap) {
        return widths[scrap];
    }

    /** A scrap's net height. */
    public int height(int scrap) {
        return heights[scrap];
    }

    /** The net length of a side. */
    int side(int scrap, int side) {
        return side == Blocks.WIDTH ? widths[scrap] : heights[scrap];
    }

    /** Whether a scrap may be turned by a quarter. */
    public boolean turnable(int scrap) {
        return turnable[scrap];
    }

    /** What a cut loses. */
    public Rules rules() {
        return rules;
    }

    /** The area that is lost where a tree's patches are cut. */
    public long lost(Pieced tree) {
        if (tree instanceof Joint joint) {
            return lost(joint.first()) + lost(joint.second());
        }
        ScrapPatch patch = (ScrapPatch) tree;
        int width = width(patch.scrap());
        int height = height(patch.scrap());
        long across = patch.turned() ? patch.height() : patch.width();
        long down = patch.turned() ? patch.width() : patch.height();
        return rules.lost(width, height, (int) across, (int) down);
    }

    /**
     * How easily a scrap finds a partner: the logarithms of how many sides of others are as long as its own, in sum. Where
     * nothing else tells blocks apart, those of scraps that are hard to place go first.
     */
    float ease(int scrap) {
        double ease = 0;
        for (int length : new int[] {widths[scrap], heights[scrap]}) {
            int partners = 0;
            for (int other = 0; other < size(); other++) {
                if (other != scrap) {
                    partners += (widths[other] == length ? 1 : 0) + (heights[other] == length ? 1 : 0);
                }
            }
            ease += Elementary.log(1.0 + partners);
        }
        return (float) ease;
    }

    /**
     * What cutting costs and what is left of it.
     *
     * @param seam what a seam takes of the two sides together: a cut side is longer than its net by this
     * @param least the least net side of a patch
     * @param keepShort the least short side of an offcut that goes back, 0 where none does
     * @param keepLong the least long side of an offcut that goes back
     */
    public record Rules(int seam, int least, int keepShort, int keepLong) {

        /** The area lost when a patch is cut from a scrap, both net: what is neither patch nor an offcut that goes back. */
        public long lost(int width, int height, int cutWidth, int cutHeight) {
            long dx = width - (long) cutWidth;
            long dy = height - (long) cutHeight;
            long wide = width + (long) seam;
            long high = height + (long) seam;
            long trimmed = wide * high - (wide - dx) * (high - dy);
            return trimmed - Math.max(kept(dx, high) + kept(wide - dx, dy), kept(dx, high - dy) + kept(wide, dy));
        }

        private long kept(long a, long b) {
            return keepShort > 0 && Math.min(a, b) >= keepShort && Math.max(a, b) >= keepLong ? a * b : 0;
        }
    }
}
