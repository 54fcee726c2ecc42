package hearthcloth.cutstock.piecing.blocks;

/**
 * The scraps of one search, at most {@value #MOST}, by their net sizes, with what a cut of them costs.
 *
 * @param width net widths
 * @param height net heights
 * @param turnable which may be turned by a quarter
 * @param rules what a cut loses
 */
public record Stock(int[] width, int[] height, boolean[] turnable, Rules rules) {

    /** As many scraps as a set of 64 bits holds. */
    public static final int MOST = 64;

    /** How many scraps there are. */
    public int size() {
        return width.length;
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
            return trimmed
                    - Math.max(kept(dx, high) + kept(wide - dx, dy), kept(dx, high - dy) + kept(wide, dy));
        }

        private long kept(long a, long b) {
            return keepShort > 0 && Math.min(a, b) >= keepShort && Math.max(a, b) >= keepLong ? a * b : 0;
        }
    }
}
