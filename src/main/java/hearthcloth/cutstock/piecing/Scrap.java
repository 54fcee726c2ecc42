package hearthcloth.cutstock.piecing;

/**
 * A rectangle of fabric as it lies in the heap.
 *
 * @param width as it is to lie, if it may not be turned
 * @param height as it is to lie, if it may not be turned
 * @param fabric the fabric's number; equal numbers are the same fabric
 * @param turnable whether it may lie turned by a quarter; false for a fabric with a nap
 */
public record Scrap(long width, long height, int fabric, boolean turnable) {

    public Scrap {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("scrap of " + width + " x " + height);
        }
    }
}
