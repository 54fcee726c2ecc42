package hearthcloth.wrap;

import hearthcloth.measure.Length;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sizes wrapping cloths are sold in (docs/sources.md#trade-sizes). Traditional cloths are cut two or
 * three per cent longer than wide (docs/sources.md#longer-than-wide); the smaller side is given here.
 */
public enum TradeSize {
    CHUHABA("chuhaba", 45),
    SHAKUSAN("shakusan-haba", 50),
    SHAKUYON("shakuyon-haba", 53),
    FUTAHABA("futahaba", 68),
    NISHAKU("nishaku-haba", 75),
    NISHI("nishi-haba", 90),
    MIHABA("mihaba", 100),
    LARGE("", 118),
    YOHABA("yohaba", 128),
    ITSUHABA("itsuhaba", 175),
    MUHABA("muhaba", 195),
    NANAHABA("nanahaba", 230);

    private final String trade;
    private final long leastCm;

    TradeSize(String trade, long leastCm) {
        this.trade = trade;
        this.leastCm = leastCm;
    }

    /** Its trade name; empty where it has none. */
    public String trade() {
        return trade;
    }

    /** The side of the smallest cloth sold under this name. */
    public Length least() {
        return Length.cm(leastCm);
    }

    /** The smallest that is surely enough for a square of this side; empty when none is. */
    public static Optional<TradeSize> enoughFor(Length side) {
        return Stream.of(values())
                .filter(size -> !side.isMoreThan(size.least()))
                .findFirst();
    }
}
