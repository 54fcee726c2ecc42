package hearthcloth.cutstock.piecing.blocks;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.Arrays;

/**
 * All blocks of a search, by number. A block is a rectangle made of scraps; one whose scraps may all be turned is kept in
 * one position only, its longer side across. Sides that are joined may differ: the larger is trimmed.
 */
final class Blocks {

    private static final int FIRST = 4096;

    /** A block that is one scrap has no second part. */
    static final int NONE = -1;

    int count;
    long[] set = new long[FIRST];
    int[] width = new int[FIRST];
    int[] height = new int[FIRST];
    long[] lost = new long[FIRST];
    /** How easily its scraps find partners, in sum. */
    float[] ease = new float[FIRST];
    /** Net area of the scraps. */
    long[] held = new long[FIRST];
    /** How many patches each unit off the width, or height, cuts into. */
    short[] acrossWidth = new short[FIRST];

    short[] acrossHeight = new short[FIRST];
    /** How much the width, or height, can be trimmed before a patch becomes too small. */
    int[] trimWidth = new int[FIRST];

    int[] trimHeight = new int[FIRST];
    /** Scraps cut with an offcut that goes back. */
    short[] cuts = new short[FIRST];

    /** First part, or the scrap. */
    int[] first = new int[FIRST];

    int[] second = new int[FIRST];
    /** How the parts lie: see the constants. */
    byte[] way = new byte[FIRST];

    static final int HEIGHT = 0;
    static final int WIDTH = 1;

    static final int BESIDE = 1;
    static final int FIRST_TURNED = 2;
    static final int SECOND_TURNED = 4;
    /** The block as a whole was turned after it was put together. */
    static final int TURNED = 8;
    /** All its scraps may be turned. */
    static final int TURNABLE = 16;

    int add() {
        if (count == set.length) {
            grow();
        }
        return count++;
    }

    private void grow() {
        int more = 2 * count;
        set = Arrays.copyOf(set, more);
        width = Arrays.copyOf(width, more);
        height = Arrays.copyOf(height, more);
        lost = Arrays.copyOf(lost, more);
        ease = Arrays.copyOf(ease, more);
        held = Arrays.copyOf(held, more);
        acrossWidth = Arrays.copyOf(acrossWidth, more);
        acrossHeight = Arrays.copyOf(acrossHeight, more);
        trimWidth = Arrays.copyOf(trimWidth, more);
        trimHeight = Arrays.copyOf(trimHeight, more);
        cuts = Arrays.copyOf(cuts, more);
        first = Arrays.copyOf(first, more);
        second = Arrays.copyOf(second, more);
        way = Arrays.copyOf(way, more);
    }

    /** The length of a block's side. */
    int side(int block, int side) {
        return side == WIDTH ? width[block] : height[block];
    }

    int across(int block, int side) {
        return side == WIDTH ? acrossWidth[block] : acrossHeight[block];
    }

    int trim(int block, int side) {
        return side == WIDTH ? trimWidth[block] : trimHeight[block];
    }

    boolean turnable(int block) {
        return (way[block] & TURNABLE) != 0;
    }

    /** The block as a tree, its patches as large as their scraps (or as they are cut to leave an offcut). */
    Pieced tree(int block, boolean turned) {
        boolean over = turned ^ ((way[block] & TURNED) != 0);
        if (second[block] == NONE) {
            int across = turned ? height[block] : width[block];
            int down = turned ? width[block] : height[block];
            return new ScrapPatch(first[block], over, across, down);
        }
        return new Joint(
                over ^ ((way[block] & BESIDE) != 0),
                tree(first[block], over ^ ((way[block] & FIRST_TURNED) != 0)),
                tree(second[block], over ^ ((way[block] & SECOND_TURNED) != 0)));
    }
}
