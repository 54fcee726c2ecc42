package hearthcloth.draw.picture;

import hearthcloth.draw.letters.Typeface;
import hearthcloth.draw.letters.Weight;
import hearthcloth.geometry.Point;
import java.util.List;

/** Words, rules and pictures one below the other in a column. Not thread-safe; used within one method. */
public final class TextColumn {

    private final double width;
    private final Sketch sketch = new Sketch();
    private double y;

    public TextColumn(double width) {
        this.width = width;
    }

    public double width() {
        return width;
    }

    public double height() {
        return y;
    }

    public TextColumn gap(double millimetres) {
        y += millimetres;
        return this;
    }

    /** A paragraph, broken into lines. */
    public TextColumn words(String text, Type type) {
        return words(text, 0, type, Integer.MAX_VALUE);
    }

    /** A paragraph of at most {@code most} lines, {@code in} millimetres from the left. */
    public TextColumn words(String text, double in, Type type, int most) {
        for (String line : Paragraph.lines(text, width - in, type, most)) {
            y += type.leading();
            sketch.words(line, new Point(in, y - drop(type)), type);
        }
        return this;
    }

    /** Adds a paragraph with a mark in front of its first line. */
    public TextColumn item(String mark, double in, String text, Type type) {
        sketch.words(mark, new Point(0, y + type.leading() - drop(type)), type.in(Weight.SEMIBOLD));
        return words(text, in, type, Integer.MAX_VALUE);
    }

    /** A picture, {@code in} millimetres from the left. */
    public TextColumn picture(Picture picture, double in) {
        sketch.place(picture, new Point(in, y));
        y += picture.height();
        return this;
    }

    /** Adds the divider of the house: a hairline and a dashed line under it, as a felled seam looks. */
    public TextColumn seam() {
        seam(sketch, 0, width, y);
        y += 1.6;
        return this;
    }

    public static void seam(Sketch sketch, double from, double to, double y) {
        sketch.line(new Point(from, y), new Point(to, y), Stroke.solid(0.25, Palette.SECOND_INK));
        sketch.line(
                new Point(from, y + 1.6),
                new Point(to, y + 1.6),
                new Stroke(0.25, Palette.SECOND_INK, List.of(1.3, 0.9)));
    }

    /** Adds any other drawing at the place reached, which then moves on by {@code height}. */
    public TextColumn draw(double height, java.util.function.BiConsumer<Sketch, Double> drawing) {
        drawing.accept(sketch, y);
        y += height;
        return this;
    }

    /** A column that is placed in a page and has no name of its own. */
    public Picture part() {
        return finished("");
    }

    public Picture finished(String title) {
        return sketch.finished(title, width, y);
    }

    /** The distance from the top of a line to its baseline, in millimetres. */
    public static double baseline(Type type) {
        return type.size() * (Typeface.ABOVE + 0.14);
    }

    /** The distance from the bottom of a line to its baseline, in millimetres. */
    private static double drop(Type type) {
        return type.leading() - baseline(type);
    }
}
