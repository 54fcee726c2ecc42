package hearthcloth.draw.picture;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** An upright rectangle on paper, in millimetres, from its top left corner. Immutable. */
public record Bounds(double x, double y, double width, double height) {

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public Point middle() {
        return new Point(x + width / 2, y + height / 2);
    }

    public Bounds movedBy(double dx, double dy) {
        return new Bounds(x + dx, y + dy, width, height);
    }

    /** This rectangle reduced by {@code by} on every side, at most to nothing. */
    public Bounds inset(double by) {
        double across = Math.min(by, width / 2);
        double down = Math.min(by, height / 2);
        return new Bounds(x + across, y + down, width - 2 * across, height - 2 * down);
    }

    /** This rectangle enlarged by {@code by} on every side. */
    public Bounds grown(double by) {
        return new Bounds(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    /** The rectangle shared with {@code other}; without extent where nothing is shared. */
    public Bounds shared(Bounds other) {
        double left = Math.max(x, other.x);
        double top = Math.max(y, other.y);
        return new Bounds(
                left,
                top,
                Math.max(0, Math.min(right(), other.right()) - left),
                Math.max(0, Math.min(bottom(), other.bottom()) - top));
    }

    /** Whether more than 1/100 mm is shared, in both directions. */
    public boolean overlaps(Bounds other) {
        double hair = 0.01;
        return x < other.right() - hair
                && other.x < right() - hair
                && y < other.bottom() - hair
                && other.y < bottom() - hair;
    }

    public boolean contains(Bounds other) {
        double hair = 0.01;
        return other.x >= x - hair
                && other.y >= y - hair
                && other.right() <= right() + hair
                && other.bottom() <= bottom() + hair;
    }

    /** The largest of the four rectangles of this one that lie beside {@code other}. */
    public Bounds without(Bounds other) {
        if (!overlaps(other)) {
            return this;
        }
        Bounds best = new Bounds(x, y, Math.max(0, other.x - x), height);
        for (Bounds rest : List.of(
                new Bounds(other.right(), y, Math.max(0, right() - other.right()), height),
                new Bounds(x, y, width, Math.max(0, other.y - y)),
                new Bounds(x, other.bottom(), width, Math.max(0, bottom() - other.bottom())))) {
            best = rest.width * rest.height > best.width * best.height ? rest : best;
        }
        return best;
    }

    /** The corners, clockwise from the top left. */
    public List<Point> outline() {
        return List.of(new Point(x, y), new Point(right(), y), new Point(right(), bottom()), new Point(x, bottom()));
    }

    /** The outline with its corners rounded by {@code radius}, each of six short straight lines. */
    public List<Point> rounded(double radius) {
        List<Point> points = new ArrayList<>();
        double[][] middles = {
            {right() - radius, y + radius},
            {right() - radius, bottom() - radius},
            {x + radius, bottom() - radius},
            {x + radius, y + radius}
        };
        for (int corner = 0; corner < 4; corner++) {
            for (int i = 0; i <= 6; i++) {
                double turn = Math.PI / 2 * (corner - 1 + i / 6.0);
                points.add(new Point(
                        middles[corner][0] + radius * Math.cos(turn), middles[corner][1] + radius * Math.sin(turn)));
            }
        }
        return List.copyOf(points);
    }
}
