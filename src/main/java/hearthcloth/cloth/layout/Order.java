package hearthcloth.cloth.layout;

import hearthcloth.cloth.Side;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The usual orders in which bars are laid round a hearth. Source: docs/sources.md#log-cabin. */
public enum Order {
    /** Each bar on the next side, clockwise: the log cabin. */
    ROUND("round", "round the square"),
    /** Two opposite sides, then the other two: courthouse steps. */
    PAIRS("pairs", "opposite pairs"),
    /** Two sides only; the hearth stays in a corner: the quarter log cabin. */
    TWO_SIDES("two-sides", "two sides");

    private final String word;
    private final String phrase;

    Order(String word, String phrase) {
        this.word = word;
        this.phrase = phrase;
    }

    /** The word in the shell: {@code round}, {@code pairs}, {@code two-sides}. */
    public String word() {
        return word;
    }

    public static Optional<Order> named(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        for (Order order : values()) {
            if (order.word.equals(plain) || order.phrase.equals(plain)) {
                return Optional.of(order);
            }
        }
        return Optional.empty();
    }

    /** The sides of one round, in sewing order. */
    public List<Side> sides() {
        return switch (this) {
            case ROUND -> List.of(Side.RIGHT, Side.BOTTOM, Side.LEFT, Side.TOP);
            case PAIRS -> List.of(Side.RIGHT, Side.LEFT, Side.BOTTOM, Side.TOP);
            case TWO_SIDES -> List.of(Side.RIGHT, Side.BOTTOM);
        };
    }
}
