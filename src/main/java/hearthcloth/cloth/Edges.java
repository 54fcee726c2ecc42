package hearthcloth.cloth;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;

/** A length for each side of a rectangle: the allowances of a patch, or of the work so far. Immutable. */
public record Edges(Length left, Length top, Length right, Length bottom) {

    public static final Edges NONE = all(Length.ZERO);

    public static Edges all(Length length) {
        return new Edges(length, length, length, length);
    }

    public Length on(Side side) {
        return switch (side) {
            case LEFT -> left;
            case TOP -> top;
            case RIGHT -> right;
            case BOTTOM -> bottom;
        };
    }

    public Edges with(Side side, Length length) {
        return new Edges(
                side == Side.LEFT ? length : left,
                side == Side.TOP ? length : top,
                side == Side.RIGHT ? length : right,
                side == Side.BOTTOM ? length : bottom);
    }

    /** {@code size} grown by these on its sides. */
    public Size around(Size size) {
        return new Size(
                size.width().plus(left).plus(right), size.height().plus(top).plus(bottom));
    }
}
