package hearthcloth.cutstock.bound;

import java.util.Arrays;

/**
 * The least area of pieces that a plan can cut into: the smallest sum of piece areas that covers what is used.
 *
 * <p>Areas are counted in units of a 2^16th of the whole, rounded up, so a sum of k pieces is overstated by less than k
 * units, which are subtracted again; k is at most the number of pieces that such a sum can have. O(m 2^16 / 64) for m
 * pieces; beyond {@value #MOST_PIECES} pieces the used area itself is the bound.
 */
final class TouchedArea {

    private static final int MOST_PIECES = 400;
    /** Units in which areas are counted. */
    private static final int GRAINS = 1 << 16;

    private TouchedArea() {}

    /** The least sum of some of these areas that is not below {@code used}, or a little less. */
    static double least(double[] pieces, double used) {
        double[] areas = Arrays.stream(pieces).sorted().toArray();
        double whole = 0;
        for (double area : areas) {
            whole += area;
        }
        if (areas.length > MOST_PIECES || used >= whole || used <= 0) {
            return used;
        }
        double grain = whole / GRAINS;
        long[] sums = new long[(GRAINS + areas.length) / Long.SIZE + 2];
        sums[0] = 1;
        for (double area : areas) {
            addShifted(sums, (int) Math.ceil(area / grain));
        }
        int reached = next(sums, (int) Math.floor(used / grain));
        int most = mostThatFit(areas, reached * grain);
        return Math.max(used, (reached - most) * grain);
    }

    /** The most pieces that such a sum can have: as many as the smallest ones that fit into it. */
    private static int mostThatFit(double[] ascending, double sum) {
        double together = 0;
        int count = 0;
        while (count < ascending.length && together <= sum) {
            together += ascending[count++];
        }
        return count;
    }

    /** Marks every sum, a bit each, also with {@code by} more; from the top, so that each is read before it is written. */
    private static void addShifted(long[] sums, int by) {
        int words = by / Long.SIZE;
        int bits = by % Long.SIZE;
        for (int i = sums.length - 1; i >= words; i--) {
            long moved = sums[i - words] << bits;
            if (bits > 0 && i > words) {
                moved |= sums[i - words - 1] >>> (Long.SIZE - bits);
            }
            sums[i] |= moved;
        }
    }

    /** The first marked sum from {@code at} on; the whole is one, so there is one. */
    private static int next(long[] sums, int at) {
        int word = at / Long.SIZE;
        long marked = sums[word] & -1L << at % Long.SIZE;
        while (marked == 0) {
            marked = sums[++word];
        }
        return word * Long.SIZE + Long.numberOfTrailingZeros(marked);
    }
}
