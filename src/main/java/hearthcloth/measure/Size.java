package hearthcloth.measure;

/**
 * The extent of an upright rectangle: width across and height down. Either may be any length, also zero or negative.
 * Immutable.
 */
public record Size(Length width, Length height) {

    public static Size square(Length side) {
        return new Size(side, side);
    }

    /** Reads "38 x 30 in", "12 × 9", "38 1/2 in" (a square); see {@link Measures#size}. */
    public static Size parse(String text) {
        return Measures.size(text, null);
    }

    /** The same rectangle lying on its side. */
    public Size turned() {
        return new Size(/* width= */ height, /* height= */ width);
    }

    public boolean isSquare() {
        return width.equals(height);
    }

    /** The area in square millimetres, as a real number, since areas have no exact form here. */
    public double areaMm2() {
        return width.in(Unit.MILLIMETRE) * height.in(Unit.MILLIMETRE);
    }

    /** True when a rectangle of size {@code other} lies inside this one without turning. */
    public boolean holds(Size other) {
        return !other.width.isMoreThan(width) && !other.height.isMoreThan(height);
    }

    @Override
    public String toString() {
        return width + " x " + height;
    }
}
