package hearthcloth.benchmarks.sheet;

/**
 * An answer to a {@link SheetJob}.
 *
 * @param worth of the pieces in {@code cuts}
 * @param bound no slicing of the sheet is worth more
 * @param cuts covers the whole sheet
 */
public record SheetPlan(long worth, long bound, Slicing cuts) {

    public SheetPlan {
        if (worth > bound) {
            throw new IllegalArgumentException("a bound below an answer");
        }
    }

    /** Whether nothing better exists. */
    public boolean proven() {
        return worth == bound;
    }
}
