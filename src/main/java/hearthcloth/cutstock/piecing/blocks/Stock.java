package hearthcloth.cutstock.piecing.blocks;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.piecing.tree.TrimLimits;
import hearthcloth.number.Elementary;
import java.util.Arrays;

/** The scraps of a search by their net sizes, with what a cut of them costs. */
public final class Stock {

    /** As many scraps as one search of blocks can take: a set of 64 bits holds them. */
    public static final int MOST = 64;

    private final int[] widths;
    private final int[] heights;
    private final boolean[] turnable;
    private final Handled handled;
    private final Rules rules;

    private Stock(int[] widths, int[] heights, boolean[] turnable, Handled handled, Rules rules) {
        this.widths = widths;
        this.heights = heights;
        this.turnable = turnable;
        this.handled = handled;
        this.rules = rules;
    }

    /** What is asked of each scrap beside its size. */
    private static final class Handled {
        private final boolean[] must;
        private final boolean[] whole;
        private final int[] offWidth;
        private final int[] offHeight;

        Handled(int size) {
            must = new boolean[size];
            whole = new boolean[size];
            offWidth = new int[size];
            offHeight = new int[size];
            Arrays.fill(offWidth, Integer.MAX_VALUE);
            Arrays.fill(offHeight, Integer.MAX_VALUE);
        }

        void copy(Handled from, int scrap, int to) {
            must[to] = from.must[scrap];
            whole[to] = from.whole[scrap];
            offWidth[to] = from.offWidth[scrap];
            offHeight[to] = from.offHeight[scrap];
        }
    }

    /** Scraps of these net widths and heights; which may be turned by a quarter. */
    public static Stock of(int[] widths, int[] heights, boolean[] turnable, Rules rules) {
        return new Stock(widths.clone(), heights.clone(), turnable.clone(), new Handled(widths.length), rules);
    }

    /**
     * The same stock with something asked of one scrap.
     *
     * @param asked what is asked
     */
    public Stock asking(int scrap, Asked asked) {
        Handled other = new Handled(size());
        for (int i = 0; i < size(); i++) {
            other.copy(handled, i, i);
        }
        other.must[scrap] = asked.must;
        other.whole[scrap] = asked.whole;
        other.offWidth[scrap] = asked.offWidth;
        other.offHeight[scrap] = asked.offHeight;
        return new Stock(widths, heights, turnable, other, rules);
    }

    /**
     * What is asked of a scrap.
     *
     * @param must whether every cover has to take it
     * @param whole whether it may not be cut in two
     * @param offWidth how much may be trimmed off its net width as it lies in the heap
     * @param offHeight how much may be trimmed off its net height
     */
    public record Asked(boolean must, boolean whole, int offWidth, int offHeight) {}

    /** Some of the scraps, in this order. */
    public Stock pick(int[] scraps) {
        int size = scraps.length;
        Stock some = new Stock(new int[size], new int[size], new boolean[size], new Handled(size), rules);
        for (int i = 0; i < scraps.length; i++) {
            some.widths[i] = widths[scraps[i]];
            some.heights[i] = heights[scraps[i]];
            some.turnable[i] = turnable[scraps[i]];
            some.handled.copy(handled, scraps[i], i);
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

    /** Whether every cover has to take this scrap. */
    public boolean must(int scrap) {
        return handled.must[scrap];
    }

    /** The scraps that every cover has to take, of the first {@value #MOST}, as bits. */
    public long must() {
        long set = 0;
        for (int i = 0; i < Math.min(MOST, size()); i++) {
            set |= handled.must[i] ? 1L << i : 0;
        }
        return set;
    }

    /** Whether a scrap may not be cut in two. */
    boolean whole(int scrap) {
        return handled.whole[scrap];
    }

    /**
     * How much may still be trimmed off a scrap's side that is cut to this net length; negative where that is too short
     * already. What goes back as an offcut is not trimmed.
     */
    int off(int scrap, int side, int cut) {
        int gone = side(scrap, side) - cut;
        boolean offcut = rules.keepShort() > 0 && !handled.whole[scrap] && gone >= rules.keepShort();
        int most = side == Blocks.WIDTH ? handled.offWidth[scrap] : handled.offHeight[scrap];
        return Math.min(cut - rules.least(), most - (offcut ? 0 : gone));
    }

    /** How far patches of these scraps may still be trimmed. */
    public TrimLimits limits() {
        return new TrimLimits() {
            @Override
            public long offWidth(ScrapPatch patch) {
                return off(patch.scrap(), patch.turned() ? Blocks.HEIGHT : Blocks.WIDTH, (int) patch.width());
            }

            @Override
            public long offHeight(ScrapPatch patch) {
                return off(patch.scrap(), patch.turned() ? Blocks.WIDTH : Blocks.HEIGHT, (int) patch.height());
            }
        };
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
