package hearthcloth.measure;

import java.util.Optional;

/**
 * The units makers write. Each is a whole number of nanometres; the inch is 25.4 mm by definition. Source:
 * docs/sources.md#inch.
 */
public enum Unit {
    INCH("in", 25_400_000L, "in inch inches \" ″ '' ”"),
    FOOT("ft", 304_800_000L, "ft foot feet ' ′"),
    YARD("yd", 914_400_000L, "yd yds yard yards"),
    MILLIMETRE("mm", 1_000_000L, "mm millimetre millimetres millimeter millimeters"),
    CENTIMETRE("cm", 10_000_000L, "cm centimetre centimetres centimeter centimeters"),
    METRE("m", 1_000_000_000L, "m metre metres meter meters");

    private final String symbol;
    private final long nanometres;
    private final String spellings;

    Unit(String symbol, long nanometres, String spellings) {
        this.symbol = symbol;
        this.nanometres = nanometres;
        this.spellings = spellings;
    }

    /** How this program writes the unit. */
    public String symbol() {
        return symbol;
    }

    /** One of this unit, in nanometres. */
    public long nanometres() {
        return nanometres;
    }

    /** The unit spelt {@code word} in any usual way, upper or lower case, with or without a full stop. */
    public static Optional<Unit> named(String word) {
        String plain = word.strip().toLowerCase(java.util.Locale.ROOT);
        if (plain.length() > 1 && plain.endsWith(".")) {
            plain = plain.substring(0, plain.length() - 1);
        }
        for (Unit unit : values()) {
            if (!plain.isBlank() && (" " + unit.spellings + " ").contains(" " + plain + " ")) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
