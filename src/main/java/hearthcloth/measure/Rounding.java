package hearthcloth.measure;

/**
 * The direction in which a length is rounded when it leaves exact arithmetic: cuts go up, yields go down, comparisons
 * go to the nearest.
 */
public enum Rounding {
    UP,
    DOWN,
    NEAREST;

    /** The quotient {@code value / step} as a whole number, rounded in this direction; NEAREST rounds halves up. */
    public long quotient(long value, long step) {
        return switch (this) {
            case UP -> -Math.floorDiv(-value, step);
            case DOWN -> Math.floorDiv(value, step);
            case NEAREST -> Math.floorDiv(Math.addExact(2 * value, step), 2 * step);
        };
    }

    /** A real number of nanometres as a whole number, rounded in this direction. */
    public long whole(double value) {
        return switch (this) {
            case UP -> (long) Math.ceil(value);
            case DOWN -> (long) Math.floor(value);
            case NEAREST -> Math.round(value);
        };
    }
}
