package hearthcloth.benchmarks.sheet;

/**
 * A kind of rectangle worth cutting out, and how often at most.
 *
 * @param width along the width of the sheet, in the unit of the sheet
 * @param height along the height of the sheet
 * @param worth of one copy, at least 1
 * @param copies the most that count, at least 1; {@link #UNLIMITED} for no limit
 */
public record Wanted(long width, long height, long worth, long copies) {

    /** As many copies as fit. */
    public static final long UNLIMITED = Long.MAX_VALUE;

    public Wanted {
        if (width < 1 || height < 1 || worth < 1 || copies < 1) {
            throw new IllegalArgumentException("a wanted rectangle needs size, worth and copies of at least 1");
        }
    }
}
