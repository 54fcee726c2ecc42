package hearthcloth.cutstock.job;

/**
 * One physical rectangle of fabric, lying with its width across (x) and its length along (y).
 *
 * @param id the caller's number, unique in a job
 * @param lengthwiseOnly whether nap or a one-way print forbids turning what is cut from it
 */
public record StockPiece(int id, long width, long length, int fabric, boolean lengthwiseOnly) {

    public StockPiece {
        if (width <= 0 || length <= 0 || fabric < 0) {
            throw new IllegalArgumentException(
                    "stock piece " + id + " is " + width + " x " + length + " of fabric " + fabric);
        }
    }

    /** Area in square units; a double because lengths in nanometres overflow a long when multiplied. */
    public double area() {
        return (double) width * length;
    }
}
