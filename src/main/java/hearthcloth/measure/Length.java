package hearthcloth.measure;

/**
 * An exact length: a whole number of nanometres, so that 1/64 in and 1/10 mm are both whole.
 *
 * <p>Sums, differences and whole multiples are exact and throw {@link ArithmeticException} on overflow (beyond nine
 * million kilometres). Division and printing name their {@link Rounding}. A length may be negative. Immutable.
 *
 * @param nm nanometres
 */
public record Length(long nm) implements Comparable<Length> {

    public static final Length ZERO = new Length(0);

    /** A whole number of one unit: {@code of(3, Unit.INCH)} is three inches. */
    public static Length of(long count, Unit unit) {
        return new Length(Math.multiplyExact(count, unit.nanometres()));
    }

    /** {@code numerator/denominator} inches; the denominator must divide the inch evenly (2, 4, 8, 16, 32, 64, 5, 10 …). */
    public static Length inches(long numerator, long denominator) {
        long total = Math.multiplyExact(numerator, Unit.INCH.nanometres());
        if (total % denominator != 0) {
            throw new IllegalArgumentException(
                    numerator + "/" + denominator + " in is not a whole number of nanometres");
        }
        return new Length(total / denominator);
    }

    public static Length inches(long whole) {
        return of(whole, Unit.INCH);
    }

    public static Length mm(long whole) {
        return of(whole, Unit.MILLIMETRE);
    }

    public static Length cm(long whole) {
        return of(whole, Unit.CENTIMETRE);
    }

    /**
     * Reads a length as a maker writes it; see {@link Measures#length}.
     *
     * @throws MeasureException with a sentence for the maker
     */
    public static Length parse(String text) {
        return Measures.length(text, null);
    }

    public Length plus(Length other) {
        return new Length(Math.addExact(nm, other.nm));
    }

    public Length minus(Length other) {
        return new Length(Math.subtractExact(nm, other.nm));
    }

    public Length times(long factor) {
        return new Length(Math.multiplyExact(nm, factor));
    }

    /** This length divided into {@code parts} equal lengths, each rounded to a whole nanometre. */
    public Length dividedBy(long parts, Rounding rounding) {
        return new Length(rounding.quotient(nm, parts));
    }

    /** The multiple of {@code step} that {@code rounding} gives. */
    public Length roundedTo(Length step, Rounding rounding) {
        return step.times(rounding.quotient(nm, step.nm));
    }

    public Length max(Length other) {
        return nm >= other.nm ? this : other;
    }

    public Length min(Length other) {
        return nm <= other.nm ? this : other;
    }

    public boolean isPositive() {
        return nm > 0;
    }

    public boolean isNegative() {
        return nm < 0;
    }

    public boolean isMoreThan(Length other) {
        return nm > other.nm;
    }

    public boolean isLessThan(Length other) {
        return nm < other.nm;
    }

    /**
     * This length as a real number of {@code unit}. It is meant for drawing and geometry only, never for sums, since a
     * double rounds.
     */
    public double in(Unit unit) {
        return (double) nm / unit.nanometres();
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nm, other.nm);
    }

    /**
     * Exact millimetres, such as {@code 101.6 mm}, for notations and bug reports. What a maker reads comes from {@link
     * Ruler#write}.
     */
    @Override
    public String toString() {
        return java.math.BigDecimal.valueOf(nm, 6).stripTrailingZeros().toPlainString() + " mm";
    }
}
