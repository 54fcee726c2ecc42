package hearthcloth.cutstock.join;

/**
 * Finds, out of up to {@value #MOST} signed numbers, subsets whose sum is at least a limit and exceeds it by little.
 * The subset sums of both halves are listed in order and met in the middle (docs/sources.md#subset-sums). O(2^(n/2))
 * time and space.
 */
final class SubsetSums {

    static final int MOST = 20;
    private static final int HALF = 1 << (MOST / 2);
    /** Subsets that are kept, the best first. */
    private static final int KEPT = 4;

    private final Side left = new Side();
    private final Side right = new Side();
    private final int[] mask = new int[KEPT];
    private final long[] sum = new long[KEPT];
    private int kept;

    /** All subset sums of up to half the numbers, ascending. */
    private static final class Side {
        long[] sums = new long[HALF];
        int[] masks = new int[HALF];
        private long[] otherSums = new long[HALF];
        private int[] otherMasks = new int[HALF];
        int count;

        void list(long[] numbers, int from, int to) {
            sums[0] = 0;
            masks[0] = 0;
            count = 1;
            for (int i = from; i < to; i++) {
                merge(numbers[i], 1 << i);
            }
        }

        private void merge(long number, int bit) {
            int without = 0;
            int with = 0;
            for (int at = 0; at < 2 * count; at++) {
                if (with == count || (without < count && sums[without] <= sums[with] + number)) {
                    otherSums[at] = sums[without];
                    otherMasks[at] = masks[without++];
                } else {
                    otherSums[at] = sums[with] + number;
                    otherMasks[at] = masks[with++] | bit;
                }
            }
            long[] swapSums = sums;
            int[] swapMasks = masks;
            sums = otherSums;
            masks = otherMasks;
            otherSums = swapSums;
            otherMasks = swapMasks;
            count *= 2;
        }
    }

    /**
     * Finds the subsets of the first {@code count} numbers with the least sums of at least {@code limit}, as bit masks,
     * the best first. The empty set and the whole are left out.
     *
     * @return how many were found
     */
    int find(long[] numbers, int count, long limit) {
        left.list(numbers, 0, count / 2);
        right.list(numbers, count / 2, count);
        kept = 0;
        int whole = (1 << count) - 1;
        int high = right.count;
        for (int low = 0; low < left.count; low++) {
            while (high > 0 && left.sums[low] + right.sums[high - 1] >= limit) {
                high--;
            }
            for (int at = high; at < Math.min(high + 2, right.count); at++) {
                int subset = left.masks[low] | right.masks[at];
                if (subset != 0 && subset != whole) {
                    keep(subset, left.sums[low] + right.sums[at]);
                }
            }
        }
        return kept;
    }

    private void keep(int subset, long total) {
        if (kept == KEPT && total >= sum[KEPT - 1]) {
            return;
        }
        int at = kept < KEPT ? kept++ : KEPT - 1;
        for (; at > 0 && sum[at - 1] > total; at--) {
            sum[at] = sum[at - 1];
            mask[at] = mask[at - 1];
        }
        sum[at] = total;
        mask[at] = subset;
    }

    /** The i-th best subset found. */
    int mask(int i) {
        return mask[i];
    }

    /** Its sum. */
    long sum(int i) {
        return sum[i];
    }
}
