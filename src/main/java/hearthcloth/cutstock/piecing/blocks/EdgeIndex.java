package hearthcloth.cutstock.piecing.blocks;

import java.util.Arrays;

/** Blocks by the length of their edges. A drawer holds all edges of a small range of lengths, with their blocks' sets. */
final class EdgeIndex {

    private static final int DRAWERS = 4096;

    private final int shift;
    private final long[][] sets;
    private final int[][] entries;
    private final int[] counts;

    EdgeIndex(int longest) {
        int down = 0;
        while (longest >> down >= DRAWERS) {
            down++;
        }
        shift = down;
        int drawers = (longest >> down) + 1;
        sets = new long[drawers][];
        entries = new int[drawers][];
        counts = new int[drawers];
    }

    int drawer(int length) {
        return Math.min(Math.max(length, 0) >> shift, counts.length - 1);
    }

    /** Files an edge; the entry is twice the block's number, and one more for its width. */
    void file(int length, long set, int entry) {
        int drawer = drawer(length);
        int count = counts[drawer]++;
        if (count == 0 && sets[drawer] == null) {
            sets[drawer] = new long[8];
            entries[drawer] = new int[8];
        } else if (count == sets[drawer].length) {
            sets[drawer] = Arrays.copyOf(sets[drawer], 2 * count);
            entries[drawer] = Arrays.copyOf(entries[drawer], 2 * count);
        }
        sets[drawer][count] = set;
        entries[drawer][count] = entry;
    }

    int count(int drawer) {
        return counts[drawer];
    }

    long[] sets(int drawer) {
        return sets[drawer];
    }

    int[] entries(int drawer) {
        return entries[drawer];
    }
}
