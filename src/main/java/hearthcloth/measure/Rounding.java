package hearthcloth.measure;


/** In which direction a length leaves the exact world: cuts go up, yields go down, comparisons to the nearest. */
public enum Rounding {
    UP,
    DOWN,
    NEAREST;

    /** {@code value / step} as a whole number rounded this way; halves of NEAREST go up. */
    public long quotient(long value, long step) {
        return switch (this) {
            case UP -> -Math.floorDiv(-value, step);
            case DOWN -> Math.floorDiv(value, step);
            case NEAREST -> Math.floorDiv(Math.addExact(2 * value, step), 2 * step);
        };
    }

    /** A real number of nanometres as a whole one, rounded this way. */
    public long whole(double value) {
        return switch (this) {
            case UP -> (long) Math.ceil(value);
            case DOWN -> (long) Math.floor(value);
            case NEAREST -> Math.round(value);
        };
    }
}
