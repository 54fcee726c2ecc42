package hearthcloth.benchmarks.sheet;

/**
 * Copies of every kind packed into a few words, each kind in a field with one spare bit, so that a sum and the check
 * of all its limits take two operations a word.
 */
final class Copies {

    private final int[] word;
    private final int[] shift;
    private final long[] slack;
    private final long[] guard;

    Copies(long[] limits) {
        word = new int[limits.length];
        shift = new int[limits.length];
        int words = 0;
        int used = 0;
        for (int kind = 0; kind < limits.length; kind++) {
            int bits = bits(limits[kind]) + 1;
            if (used + bits > Long.SIZE) {
                words++;
                used = 0;
            }
            word[kind] = words;
            shift[kind] = used;
            used += bits;
        }
        slack = new long[words + 1];
        guard = new long[words + 1];
        for (int kind = 0; kind < limits.length; kind++) {
            int bits = bits(limits[kind]);
            slack[word[kind]] |= ((1L << bits) - 1 - limits[kind]) << shift[kind];
            guard[word[kind]] |= 1L << (shift[kind] + bits);
        }
    }

    private static int bits(long limit) {
        return Long.SIZE - Long.numberOfLeadingZeros(limit);
    }

    /** One copy of a kind. */
    long[] one(int kind) {
        long[] counts = new long[slack.length];
        counts[word[kind]] = 1L << shift[kind];
        return counts;
    }

    /** Whether both together keep every limit. */
    boolean fit(long[] one, long[] other) {
        for (int w = 0; w < slack.length; w++) {
            if (((one[w] + other[w] + slack[w]) & guard[w]) != 0) {
                return false;
            }
        }
        return true;
    }

    long[] sum(long[] one, long[] other) {
        long[] counts = new long[slack.length];
        for (int w = 0; w < counts.length; w++) {
            counts[w] = one[w] + other[w];
        }
        return counts;
    }
}
