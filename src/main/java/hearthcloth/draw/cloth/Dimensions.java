package hearthcloth.draw.cloth;

import hearthcloth.draw.letters.Typeface;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;

/** Dimension lines: a thin ink line with a slanting tick at each end and the measure above its middle. */
public final class Dimensions {

    /** The room of a dimension line with its words, from the line outwards, in millimetres. */
    static final double ROOM = 5;

    static final Type TYPE = Type.of(3.4, Weight.SEMIBOLD, Palette.INK).at(Type.Anchor.MIDDLE);

    private static final Stroke LINE = Stroke.solid(0.18, Palette.INK);
    private static final Stroke TICK = Stroke.solid(0.35, Palette.INK);

    private Dimensions() {}

    /**
     * Draws a dimension across the page at height {@code y}, with the measure above it; the measure is left out where
     * it is wider than the line.
     */
    static void across(Sketch sketch, double from, double to, double y, String measure) {
        sketch.line(new Point(from, y), new Point(to, y), LINE);
        tick(sketch, new Point(from, y));
        tick(sketch, new Point(to, y));
        if (TYPE.width(measure) + 1 <= to - from) {
            sketch.words(measure, new Point((from + to) / 2, y - 1.2), TYPE);
        }
    }

    /** Draws a dimension down the page at {@code x}; the measure runs up the page, to the left of the line. */
    static void down(Sketch sketch, double from, double to, double x, String measure) {
        sketch.line(new Point(x, from), new Point(x, to), LINE);
        tick(sketch, new Point(x, from));
        tick(sketch, new Point(x, to));
        if (TYPE.width(measure) + 1 <= to - from) {
            sketch.words(measure, new Point(x - 1.2, (from + to) / 2), TYPE.running(Type.Way.UP));
        }
    }

    /** Half the height of capitals, in millimetres, to centre words on a line. */
    public static double halfCaps(Type type) {
        return type.size() * Typeface.CAPS / 2;
    }

    private static void tick(Sketch sketch, Point at) {
        sketch.line(at.plus(-0.9, 0.9), at.plus(0.9, -0.9), TICK);
    }
}
