package hearthcloth.cutstock.bound;

import java.util.Arrays;
import java.util.BitSet;

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
        BitSet sums = new BitSet();
        sums.set(0);
        for (double area : areas) {
            sums.or(shifted(sums, (int) Math.ceil(area / grain)));
        }
        int reached = sums.nextSetBit((int) Math.floor(used / grain));
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

    private static BitSet shifted(BitSet set, int by) {
        long[] words = set.toLongArray();
        int jump = by >>> 6;
        int bits = by & 63;
        long[] moved = new long[words.length + jump + 1];
        for (int i = 0; i < words.length; i++) {
            moved[i + jump] |= words[i] << bits;
            if (bits > 0) {
                moved[i + jump + 1] |= words[i] >>> (64 - bits);
            }
        }
        return BitSet.valueOf(moved);
    }
}
