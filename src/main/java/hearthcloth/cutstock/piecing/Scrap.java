package hearthcloth.cutstock.piecing;

/**
 * A rectangle of fabric as it lies in the heap.
 *
 * @param width as it is to lie, if it may not be turned
 * @param height as it is to lie, if it may not be turned
 * @param fabric the fabric's number; equal numbers are the same fabric
 * @param turnable whether it may lie turned by a quarter; false for a fabric with a nap
 * @param handling what else is asked of it
 */
public record Scrap(long width, long height, int fabric, boolean turnable, Handling handling) {

    public Scrap {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("scrap of " + width + " x " + height);
        }
    }

    /** A scrap of which nothing else is asked. */
    public Scrap(long width, long height, int fabric, boolean turnable) {
        this(width, height, fabric, turnable, Handling.ANY);
    }

    /** The same scrap, to be handled so. */
    public Scrap handled(Handling other) {
        return new Scrap(width, height, fabric, turnable, other);
    }

    /**
     * What is asked of one scrap.
     *
     * @param must whether the cloth has to take it; only a single cloth is searched so, several cloths take what suits
     * @param whole whether it may not be cut in two, even where an offcut would go back
     * @param offWidth how much may be trimmed off its width
     * @param offHeight how much may be trimmed off its height
     */
    public record Handling(boolean must, boolean whole, long offWidth, long offHeight) {

        /** Nothing is asked. */
        public static final Handling ANY = new Handling(false, false, PiecingJob.LONGEST, PiecingJob.LONGEST);

        public Handling {
            if (offWidth < 0 || offHeight < 0) {
                throw new IllegalArgumentException("trimmed by " + offWidth + " and " + offHeight);
            }
        }

        /** The same, in the cloth whatever it is. */
        public Handling required() {
            return new Handling(true, whole, offWidth, offHeight);
        }

        /** The same, in the cloth only where it suits. */
        public Handling optional() {
            return new Handling(false, whole, offWidth, offHeight);
        }

        /** The same, trimmed by no more than this each way. */
        public Handling trimmedBy(long most) {
            return new Handling(must, whole, Math.min(offWidth, most), Math.min(offHeight, most));
        }
    }
}
