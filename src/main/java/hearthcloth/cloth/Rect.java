package hearthcloth.cloth;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;

/** An upright rectangle at its place: origin top left, x to the right, y down. Immutable. */
public record Rect(Length x, Length y, Size size) {

    public static Rect at(Length x, Length y, Size size) {
        return new Rect(x, y, size);
    }

    public Length width() {
        return size.width();
    }

    public Length height() {
        return size.height();
    }

    public Length right() {
        return x.plus(size.width());
    }

    public Length bottom() {
        return y.plus(size.height());
    }

    public Rect movedBy(Length dx, Length dy) {
        return new Rect(x.plus(dx), y.plus(dy), size);
    }

    /** The mirror image within a cloth {@code width} wide: the cloth turned over like a page. */
    public Rect turnedOver(Length width) {
        return new Rect(width.minus(right()), y, size);
    }
}
