package hearthcloth.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a maker's ruler is read: inches with fractions down to a quarter, an eighth or a sixteenth, or centimetres down
 * to the millimetre. Every length a person reads is written here, and the caller names its {@link Rounding}.
 */
public enum Ruler {
    QUARTERS(Unit.INCH, 4),
    EIGHTHS(Unit.INCH, 8),
    SIXTEENTHS(Unit.INCH, 16),
    MILLIMETRES(Unit.CENTIMETRE, 10);

    private static final String[] EIGHTH = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

    private final Unit unit;
    private final int parts;

    Ruler(Unit unit, int parts) {
        this.unit = unit;
        this.parts = parts;
    }

    /** The ruler a maker cuts by whose marks are so far apart; empty where no ruler has such marks. */
    public static Optional<Ruler> ofStep(Length step) {
        return Stream.of(EIGHTHS, MILLIMETRES, SIXTEENTHS, QUARTERS)
                .filter(ruler -> ruler.step().equals(step))
                .findFirst();
    }

    public Unit unit() {
        return unit;
    }

    public boolean isMetric() {
        return unit == Unit.CENTIMETRE;
    }

    /** The distance between two marks of this ruler. */
    public Length step() {
        return new Length(unit.nanometres() / parts);
    }

    /** The mark of this ruler next to {@code length} in the named direction. */
    public Length mark(Length length, Rounding rounding) {
        return length.roundedTo(step(), rounding);
    }

    /** Number and unit: {@code 38½ in}, {@code 97.8 cm}. */
    public String write(Length length, Rounding rounding) {
        return number(length, rounding) + " " + unit.symbol();
    }

    /** Width × height with the unit once: {@code 38½ × 30 in}. */
    public String write(Size size, Rounding rounding) {
        return number(size.width(), rounding) + " × " + write(size.height(), rounding);
    }

    /** The number alone: {@code 38½}, {@code 97.8}. */
    public String number(Length length, Rounding rounding) {
        long marks = rounding.quotient(length.nm(), step().nm());
        String sign = marks < 0 ? "−" : "";
        long whole = Math.abs(marks) / parts;
        long rest = Math.abs(marks) % parts;
        if (isMetric()) {
            return sign + whole + (rest == 0 ? "" : "." + rest);
        }
        if (rest == 0) {
            return sign + whole;
        }
        return sign + (whole == 0 ? "" : whole) + fraction(rest);
    }

    /** Metres or yards, for long runs such as thread, with one decimal: {@code 6.6 m}, {@code 7.3 yd}. */
    public String run(Length length, Rounding rounding) {
        Unit far = isMetric() ? Unit.METRE : Unit.YARD;
        long tenths = rounding.quotient(length.nm(), far.nanometres() / 10);
        return String.format(Locale.ROOT, "%d.%d %s", tenths / 10, tenths % 10, far.symbol());
    }

    /** An area in whole squares of the unit: 36 square inches, 481 cm². */
    public long squares(double squareMm, Rounding rounding) {
        double side = new Length(unit.nanometres()).in(Unit.MILLIMETRE);
        return rounding.whole(squareMm / (side * side));
    }

    private String fraction(long rest) {
        long sixteenths = rest * 16 / parts;
        if (sixteenths % 2 == 0) {
            return EIGHTH[(int) (sixteenths / 2)];
        }
        return shifted(sixteenths, RAISED) + "⁄" + shifted(16, LOWERED);
    }

    private static String shifted(long number, String digits) {
        StringBuilder text = new StringBuilder();
        for (char c : Long.toString(number).toCharArray()) {
            text.append(digits.charAt(c - '0'));
        }
        return text.toString();
    }
}
