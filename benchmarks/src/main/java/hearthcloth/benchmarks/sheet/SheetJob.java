package hearthcloth.benchmarks.sheet;

import java.math.BigInteger;
import java.util.List;

/**
 * One sheet and what could be cut from it.
 *
 * @param width of the sheet, at least 1
 * @param height of the sheet, at least 1
 * @param wanted the kinds of rectangle, at least one
 * @param turning whether a rectangle may be turned by a quarter
 */
public record SheetJob(long width, long height, List<Wanted> wanted, boolean turning) {

    /** The most that all copies together may be worth, so that no sum in the search overflows. */
    public static final long MOST_WORTH = 1L << 50;

    public SheetJob {
        wanted = List.copyOf(wanted);
        if (width < 1 || height < 1 || width > Long.MAX_VALUE / 4 || height > Long.MAX_VALUE / 4 || wanted.isEmpty()) {
            throw new IllegalArgumentException("a job needs a sheet and something wanted");
        }
        BigInteger most = BigInteger.ZERO;
        for (Wanted piece : wanted) {
            most = most.add(BigInteger.valueOf(piece.worth()).multiply(fitting(piece, width, height)));
        }
        if (most.compareTo(BigInteger.valueOf(MOST_WORTH)) > 0) {
            throw new IllegalArgumentException("worth too large, use a coarser unit");
        }
    }

    /** How many copies of one kind can matter: its limit, or what the area holds if that is less. */
    public long copies(int kind) {
        return fitting(wanted.get(kind), width, height).longValueExact();
    }

    private static BigInteger fitting(Wanted piece, long width, long height) {
        BigInteger sheet = BigInteger.valueOf(width).multiply(BigInteger.valueOf(height));
        BigInteger area = BigInteger.valueOf(piece.width()).multiply(BigInteger.valueOf(piece.height()));
        return sheet.divide(area).min(BigInteger.valueOf(piece.copies()));
    }
}
