package hearthcloth.plan.ready;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The narrow pieces of a stash by width, from which a bar of that width can be made without ripping. Fabrics are
 * ignored: it is a rough estimate that only says which widths are worth trying.
 */
final class ReadyStrips {

    /** The price of a cut, in joins. */
    static final double CUT = 0.2;

    /** The price of a bar that must be ripped off something wider, in joins; the strips left for it are not counted. */
    private static final double RIPPED = 2 * CUT;

    /** The most widths kept. */
    private static final int MOST_WIDTHS = 12;
    /** The most strips of one width, one for each bit of a long. */
    private static final int MOST_STRIPS = 64;

    private final List<Length> widths = new ArrayList<>();
    private final List<long[]> lengths = new ArrayList<>();
    private final List<Long> widerLongest = new ArrayList<>();
    private final long joinLoss;

    /** What one bar takes: its price in joins, and the strips then used, as bits. */
    record Taken(double price, long used) {}

    ReadyStrips(List<Piece> pieces, Ruler ruler, Length least, Length most, Length joinLoss) {
        this.joinLoss = joinLoss.nm();
        Map<Length, List<Long>> byWidth = new TreeMap<>();
        TreeMap<Length, Long> longest = new TreeMap<>();
        for (Piece piece : pieces) {
            Length side = ruler.mark(piece.size().width().min(piece.size().height()), Rounding.DOWN);
            long along = piece.size().width().max(piece.size().height()).nm();
            longest.merge(side, along, Math::max);
            if (!side.isLessThan(least) && !side.isMoreThan(most)) {
                byWidth.computeIfAbsent(side, width -> new ArrayList<>()).add(along);
            }
        }
        byWidth.entrySet().stream()
                .sorted(Comparator.comparingLong((Map.Entry<Length, List<Long>> entry) -> -total(entry.getValue())))
                .limit(MOST_WIDTHS)
                .forEach(entry -> {
                    widths.add(entry.getKey());
                    lengths.add(entry.getValue().stream()
                            .sorted(Comparator.reverseOrder())
                            .limit(MOST_STRIPS)
                            .sorted()
                            .mapToLong(Long::longValue)
                            .toArray());
                    widerLongest.add(longest.tailMap(entry.getKey(), false).values().stream()
                            .max(Comparator.naturalOrder())
                            .orElse(0L));
                });
    }

    private static long total(List<Long> lengths) {
        return lengths.stream().mapToLong(Long::longValue).sum();
    }

    /** The widths, the one with most length first. */
    List<Length> widths() {
        return widths;
    }

    /**
     * The cheapest way to make a bar of {@code length} from the unused strips of width {@code kind}; its price is
     * infinite where there is none.
     */
    Taken take(int kind, long used, long length) {
        long[] all = lengths.get(kind);
        for (int i = 0; i < all.length; i++) {
            if (all[i] >= length && (used & (1L << i)) == 0) {
                return new Taken(all[i] == length ? 0 : CUT, used | (1L << i));
            }
        }
        Taken two = paired(kind, used, length + joinLoss);
        return two.price() == 1 ? two : best(two, joined(kind, used, length));
    }

    private static Taken best(Taken one, Taken other) {
        return one.price() <= other.price() ? one : other;
    }

    /**
     * The two strips that together exceed {@code both} by least; the price is infinite where no two are long enough.
     */
    private Taken paired(int kind, long used, long both) {
        long[] all = lengths.get(kind);
        long least = Long.MAX_VALUE;
        long pair = 0;
        int high = all.length - 1;
        for (int low = 0; low < high; low++) {
            if ((used & (1L << low)) != 0) {
                continue;
            }
            for (int top = high; top > low && all[low] + all[top] >= both; top--) {
                if ((used & (1L << top)) == 0) {
                    high = top;
                    if (all[low] + all[top] < least) {
                        least = all[low] + all[top];
                        pair = (1L << low) | (1L << top);
                    }
                }
            }
        }
        return least == Long.MAX_VALUE
                ? new Taken(Double.POSITIVE_INFINITY, used)
                : new Taken(least == both ? 1 : 1 + CUT, used | pair);
    }

    /** A bar from the longest strips left, or from something wider, whichever takes fewer joins. */
    private Taken joined(int kind, long used, long length) {
        long[] all = lengths.get(kind);
        long missing = length;
        long taken = used;
        int parts = 0;
        for (int i = all.length - 1; i >= 0 && missing > 0; i--) {
            if ((taken & (1L << i)) == 0) {
                taken |= 1L << i;
                missing -= parts == 0 ? all[i] : Math.max(0, all[i] - joinLoss);
                parts++;
            }
        }
        double ready = missing > 0 ? Double.POSITIVE_INFINITY : parts - 1 + (missing == 0 ? 0 : CUT);
        long gain = widerLongest.get(kind) - joinLoss;
        double ripped =
                gain <= 0 ? Double.POSITIVE_INFINITY : Math.ceil((double) (length - joinLoss) / gain) - 1 + RIPPED;
        return ready <= ripped ? new Taken(ready, taken) : new Taken(ripped, used);
    }
}
