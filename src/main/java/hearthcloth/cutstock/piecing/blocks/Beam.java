package hearthcloth.cutstock.piecing.blocks;

import java.util.function.IntPredicate;

/**
 * Blocks that wait to be followed, in classes by their number of scraps and by whether they reach from side to side. In
 * each class only the best so many are followed; which these are is known from a count of keys in narrow ranges, so that
 * most blocks are turned away before they are made. Classes are served in turn, so that small blocks do not keep the
 * search from large ones (cyclic best-first search: Kao, Sewell, Jacobson, "A branch, bound, and remember algorithm for
 * the 1|r_i|sum t_i scheduling problem", J. Scheduling 12 (2009), from memory).
 */
final class Beam {

    private static final int RANGES = 512;
    private static final int CLASSES = 2 * (Stock.MOST + 1);

    private final Queue[] queues = new Queue[CLASSES];
    private final int[][] ranges = new int[CLASSES][];
    private final int[] worst = new int[CLASSES];
    private final int[] total = new int[CLASSES];
    private final Effort effort;
    private final double perKey;
    private int at;

    Beam(Effort effort) {
        this.effort = effort;
        this.perKey = effort.cap() > 0 ? (RANGES - 1) / (2 * effort.cap()) : 0;
    }

    static int classOf(int scraps, boolean spanning) {
        return spanning ? scraps + Stock.MOST + 1 : scraps;
    }

    private int most(int kind) {
        return kind > Stock.MOST ? effort.spanning() : effort.beam();
    }

    private int range(double key) {
        return (int) Math.min(RANGES - 1, key * perKey);
    }

    /** Whether a block of this key would be followed as things are. */
    boolean admits(int kind, double key) {
        return total[kind] < most(kind) || range(key) < worst[kind];
    }

    void add(int kind, int block, double key) {
        if (queues[kind] == null) {
            queues[kind] = new Queue();
            ranges[kind] = new int[RANGES];
        }
        queues[kind].add(block, (float) key);
        int range = range(key);
        worst[kind] = total[kind] == 0 ? range : Math.max(worst[kind], range);
        ranges[kind][range]++;
        total[kind]++;
        narrow(kind);
    }

    /** Drops the worst range while the others alone are enough. */
    private void narrow(int kind) {
        int[] counts = ranges[kind];
        while (total[kind] - counts[worst[kind]] >= most(kind)) {
            total[kind] -= counts[worst[kind]];
            counts[worst[kind]] = 0;
            while (worst[kind] > 0 && counts[worst[kind]] == 0) {
                worst[kind]--;
            }
        }
    }

    /** The best block of the next class that has one of use; -1 if there is none left. */
    int take(IntPredicate useful) {
        for (int tried = 0; tried < CLASSES; tried++) {
            at = at + 1 == CLASSES ? 0 : at + 1;
            Queue queue = queues[at];
            while (queue != null && !queue.isEmpty()) {
                if (total[at] >= most(at) && range(queue.leastKey()) > worst[at]) {
                    queue.clear();
                } else {
                    int block = queue.take();
                    if (useful.test(block)) {
                        return block;
                    }
                }
            }
        }
        return -1;
    }
}
