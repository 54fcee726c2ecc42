package hearthcloth.wrap;

import hearthcloth.measure.Length;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sizes wrapping cloths are sold in and what for (docs/sources.md#trade-sizes). Traditional cloths are cut two or
 * three per cent longer than wide (docs/sources.md#longer-than-wide); the smaller side is given here.
 */
public enum TradeSize {
    CHUHABA("chuhaba", 45, "small gifts, lunch box, envelope"),
    SHAKUSAN("shakusan-haba", 50, "lunch box, tissue box, half-litre bottle"),
    SHAKUYON("shakuyon-haba", 53, "lunch box"),
    FUTAHABA("futahaba", 68, "cake box, one wine bottle, clothes, round things"),
    NISHAKU("nishaku-haba", 75, "larger cake box"),
    NISHI("nishi-haba", 90, "one 1.8 litre bottle, two wine bottles, bag"),
    MIHABA("mihaba", 100, "1.8 litre bottle, box of two bottles, shopping bag"),
    LARGE("", 118, "large bag"),
    YOHABA("yohaba", 128, "two to four floor cushions, table cloth"),
    ITSUHABA("itsuhaba", 175, "five or six floor cushions"),
    MUHABA("muhaba", 195, "one set of bedding"),
    NANAHABA("nanahaba", 230, "two sets of bedding");

    private final String trade;
    private final long leastCm;
    private final String uses;

    TradeSize(String trade, long leastCm, String uses) {
        this.trade = trade;
        this.leastCm = leastCm;
        this.uses = uses;
    }

    /** Its trade name; empty where it has none. */
    public String trade() {
        return trade;
    }

    /** The side of the smallest cloth sold under this name. */
    public Length least() {
        return Length.cm(leastCm);
    }

    /** What it is sold for. */
    public String uses() {
        return uses;
    }

    /** The smallest that is surely enough for a square of this side; empty when none is. */
    public static Optional<TradeSize> enoughFor(Length side) {
        return Stream.of(values())
                .filter(size -> !side.isMoreThan(size.least()))
                .findFirst();
    }
}
