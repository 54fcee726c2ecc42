package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;
import java.util.List;

/**
 * How a line is drawn.
 *
 * @param width in millimetres
 * @param dashes lengths drawn and left out in turn, in millimetres; empty for an unbroken line
 */
public record Stroke(double width, Colour colour, List<Double> dashes) {

    public Stroke {
        dashes = List.copyOf(dashes);
    }

    public static Stroke solid(double width, Colour colour) {
        return new Stroke(width, colour, List.of());
    }

    /** A row of stitches. */
    public static Stroke stitches(double width, Colour colour) {
        return new Stroke(width, colour, List.of(1.3, 0.9));
    }

    /** A trim line. */
    public static Stroke dots(double width, Colour colour) {
        return new Stroke(width, colour, List.of(0.9, 0.9));
    }
}
