package hearthcloth.cutstock.piecing.blocks;

import java.util.Arrays;

/** Blocks by the set of scraps they are made of; tells whether a block is no better than one that is there. */
final class SameScraps {

    private final Blocks blocks;
    private final boolean exact;
    private final int few;
    private int[] heads = new int[1 << 12];
    private int[] next = new int[1 << 12];
    private int filed;

    /**
     * Files the blocks of a search.
     *
     * @param exact where a larger block does not stand for a smaller one, which may have lost less of a scrap's rim
     * @param few so many of the same scraps are kept unless it is exact
     */
    SameScraps(Blocks blocks, boolean exact, int few) {
        this.few = few;
        this.blocks = blocks;
        this.exact = exact;
        Arrays.fill(heads, -1);
    }

    /** Whether a block of the same scraps is at least as large each way and has lost no more. */
    boolean surpassed(BlockDraft draft) {
        long set = draft.set;
        int seen = 0;
        for (int block = heads[slot(set)]; block >= 0; block = next[block]) {
            if (blocks.set[block] == set) {
                if (blocks.lost[block] <= draft.lost && (exact ? draft.noBetterThan(block) : draft.within(block))) {
                    return true;
                }
                if (++seen > few && !exact) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Files the block that was added last. */
    void file(int block) {
        if (block >= next.length) {
            next = Arrays.copyOf(next, 2 * next.length);
        }
        if (++filed > heads.length) {
            widen(block);
        }
        int slot = slot(blocks.set[block]);
        next[block] = heads[slot];
        heads[slot] = block;
    }

    private void widen(int before) {
        heads = new int[4 * heads.length];
        Arrays.fill(heads, -1);
        for (int block = 0; block < before; block++) {
            int slot = slot(blocks.set[block]);
            next[block] = heads[slot];
            heads[slot] = block;
        }
    }

    private int slot(long set) {
        long mixed = set * 0x9E3779B97F4A7C15L;
        return (int) ((mixed ^ (mixed >>> 29)) >>> 20) & (heads.length - 1);
    }
}
