package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Collects marks in the order drawn, until {@link #finished}. Not thread-safe; used within one method. */
public final class Sketch {

    private final List<Mark> marks = new ArrayList<>();

    public Sketch add(Mark mark) {
        marks.add(mark);
        return this;
    }

    public Sketch fill(Bounds bounds, Colour colour) {
        return add(new Mark.Area(bounds.outline(), colour));
    }

    public Sketch outline(Bounds bounds, Stroke stroke) {
        return outline(bounds.outline(), stroke);
    }

    public Sketch outline(List<Point> corners, Stroke stroke) {
        List<Point> closed = new ArrayList<>(corners);
        closed.add(corners.get(0));
        return add(new Mark.Line(closed, stroke));
    }

    public Sketch line(Point from, Point to, Stroke stroke) {
        return add(new Mark.Line(List.of(from, to), stroke));
    }

    public Sketch words(String text, Point at, Type type) {
        return text.isBlank() ? this : add(new Mark.Words(text, at, type));
    }

    /** Adds everything in {@code picture}, with its top left corner at {@code at}. */
    public Sketch place(Picture picture, Point at) {
        picture.marks().forEach(mark -> marks.add(mark.movedBy(at.x(), at.y())));
        return this;
    }

    /** Slanting lines {@code step} apart that fill {@code bounds}, from lower left to upper right. */
    public Sketch hatch(Bounds bounds, double step, Stroke stroke) {
        double first = Math.ceil((bounds.x() + bounds.y()) / step) * step;
        for (double sum = first; sum < bounds.right() + bounds.bottom(); sum += step) {
            double x1 = Math.max(bounds.x(), sum - bounds.bottom());
            double x2 = Math.min(bounds.right(), sum - bounds.y());
            if (x2 - x1 > 0.05) {
                line(new Point(x1, sum - x1), new Point(x2, sum - x2), stroke);
            }
        }
        return this;
    }

    public List<Mark> marks() {
        return List.copyOf(marks);
    }

    /** The room of everything drawn so far. */
    public Bounds bounds() {
        List<Bounds> all = marks.stream().map(Mark::bounds).toList();
        double left = all.stream().mapToDouble(Bounds::x).min().orElse(0);
        double top = all.stream().mapToDouble(Bounds::y).min().orElse(0);
        double right = all.stream().mapToDouble(Bounds::right).max().orElse(0);
        double bottom = all.stream().mapToDouble(Bounds::bottom).max().orElse(0);
        return new Bounds(left, top, right - left, bottom - top);
    }

    /** A picture just large enough for everything drawn, with a margin of {@code air} round it. */
    public Picture trimmed(String title, double air) {
        Bounds bounds = bounds();
        List<Mark> moved = marks.stream()
                .map(mark -> mark.movedBy(air - bounds.x(), air - bounds.y()))
                .toList();
        return new Picture(title, bounds.width() + 2 * air, bounds.height() + 2 * air, moved);
    }

    /** A picture that is placed in another and has no name of its own. */
    public Picture part(double width, double height) {
        return finished("", width, height);
    }

    public Picture finished(String title, double width, double height) {
        return new Picture(title, width, height, marks);
    }
}
