package hearthcloth.cutstock.piecing.exact;

/**
 * Some of at most {@value #MOST} scraps, as bits.
 *
 * @param low scraps 0 to 63
 * @param high the others
 */
record ScrapSet(long low, long high) {

    static final int MOST = 2 * Long.SIZE;

    static final ScrapSet NONE = new ScrapSet(0, 0);

    static ScrapSet of(int scrap) {
        return scrap < Long.SIZE ? new ScrapSet(1L << scrap, 0) : new ScrapSet(0, 1L << scrap);
    }

    boolean has(int scrap) {
        return ((scrap < Long.SIZE ? low : high) >>> scrap & 1) != 0;
    }

    boolean isApartFrom(ScrapSet other) {
        return (low & other.low) == 0 && (high & other.high) == 0;
    }

    ScrapSet with(ScrapSet other) {
        return new ScrapSet(low | other.low, high | other.high);
    }

    int size() {
        return Long.bitCount(low) + Long.bitCount(high);
    }

    /** Adds one for each scrap to its count. */
    void count(int[] counts) {
        for (long left = low; left != 0; left &= left - 1) {
            counts[Long.numberOfTrailingZeros(left)]++;
        }
        for (long left = high; left != 0; left &= left - 1) {
            counts[Long.SIZE + Long.numberOfTrailingZeros(left)]++;
        }
    }
}
