package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.Typeface;
import hearthcloth.draw.letters.Weight;
import hearthcloth.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * Words that belong to a shape.
 *
 * @param room where they may stand on the shape
 * @param ground the colour there
 * @param wordings from the best to the shortest, each a list of lines
 */
public record Label(Bounds room, Colour ground, List<List<String>> wordings) {

    /** The space between words and the edge of their room, as a share of the em. */
    private static final double AIR = 0.28;

    public Label {
        wordings = wordings.stream().map(List::copyOf).toList();
    }

    /** A label in one line, or none. */
    public static Label of(Bounds room, Colour ground, String text) {
        return new Label(room, ground, List.of(List.of(text)));
    }

    /** A label that has a place inside its room. */
    record Inside(Label label, List<String> lines, double size, Type.Way way) {

        Bounds plate() {
            double width = Label.width(lines, size) + size * AIR;
            double height = Label.height(lines, size) + size * AIR;
            Point middle = label.room.middle();
            return way == Type.Way.ALONG
                    ? new Bounds(middle.x() - width / 2, middle.y() - height / 2, width, height)
                    : new Bounds(middle.x() - height / 2, middle.y() - width / 2, height, width);
        }

        /** Draws it on the ground of its shape, with round ends, so that it lies on a figured one like a label. */
        void draw(Sketch sketch) {
            Bounds plate = plate();
            double radius = Math.min(plate.width(), plate.height()) / 2.5;
            sketch.add(new Mark.Area(plate.rounded(radius), label.ground));
            words(sketch, label.ground.inkOn());
        }

        /** Draws it beside the drawing. */
        void drawBeside(Sketch sketch) {
            sketch.add(new Mark.Bare(plate().outline()));
            words(sketch, Palette.INK);
        }

        private void words(Sketch sketch, Colour ink) {
            Point middle = label.room.middle();
            double top = -Label.height(lines, size) / 2 + Typeface.CAPS * size + overhang(size);
            for (int i = 0; i < lines.size(); i++) {
                double down = top + i * size * LEADING;
                Point at = way == Type.Way.ALONG
                        ? new Point(middle.x(), middle.y() + down)
                        : new Point(middle.x() + down, middle.y());
                sketch.words(lines.get(i), at, type(i, size, ink).running(way));
            }
        }
    }

    private static final double LEADING = 1.15;

    /**
     * The label in the largest size between {@code least} and {@code most} at which a wording fits, best wording first.
     */
    Optional<Inside> inside(double most, double least) {
        for (double size = most; size > least - 1e-9; size -= 0.2) {
            for (List<String> lines : wordings) {
                for (Type.Way way : Type.Way.values()) {
                    Inside inside = new Inside(this, lines, size, way);
                    if (room.contains(inside.plate())) {
                        return Optional.of(inside);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** True when a wording fits into its room in letters of {@code size}. */
    public boolean fits(double size) {
        return inside(size, size).isPresent();
    }

    /** The wording used outside the shape: the shortest. */
    List<String> last() {
        return wordings.get(wordings.size() - 1);
    }

    static Type type(int line, double size, Colour colour) {
        return Type.of(size, line == 0 ? Weight.SEMIBOLD : Weight.REGULAR, colour)
                .at(Type.Anchor.MIDDLE);
    }

    static double width(List<String> lines, double size) {
        double width = 0;
        for (int i = 0; i < lines.size(); i++) {
            width = Math.max(width, type(i, size, Palette.INK).width(lines.get(i)));
        }
        return width;
    }

    /** The height from above the capitals of the first line to below the tails of the last, equal above and below. */
    static double height(List<String> lines, double size) {
        return size * (Typeface.CAPS + LEADING * (lines.size() - 1)) + 2 * overhang(size);
    }

    /** The room above the capitals that equals the tails below the baseline, so that capitals stand in the middle. */
    private static double overhang(double size) {
        return Typeface.BELOW * size;
    }
}
