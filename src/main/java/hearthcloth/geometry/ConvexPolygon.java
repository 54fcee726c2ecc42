package hearthcloth.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A convex polygon of flat cloth, its corners anticlockwise; empty when it has fewer than three. Immutable.
 *
 * <p>It is cut by half-planes only, so every result is convex and its corners are exact up to the last bits of a
 * double.
 */
public record ConvexPolygon(List<Point> corners) {

    /** An area below this comes from rounding and is no cloth, in square millimetres. */
    private static final double NOTHING = 1e-7;

    /** Corners nearer than this are one, in millimetres. */
    private static final double CLOSE = 1e-9;

    public static final ConvexPolygon EMPTY = new ConvexPolygon(List.of());

    public ConvexPolygon {
        corners = List.copyOf(corners);
    }

    static ConvexPolygon of(Point... corners) {
        return new ConvexPolygon(List.of(corners));
    }

    /** The rectangle between two opposite corners. */
    public static ConvexPolygon rectangle(double u0, double v0, double u1, double v1) {
        return of(new Point(u0, v0), new Point(u1, v0), new Point(u1, v1), new Point(u0, v1));
    }

    public boolean isEmpty() {
        return corners.size() < 3;
    }

    /** The area in square millimetres, never negative. */
    public double area() {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    /** The mean of the corners, which lies inside. */
    public Point middle() {
        Point sum = new Point(0, 0);
        for (Point corner : corners) {
            sum = sum.plus(corner);
        }
        return sum.times(1.0 / corners.size());
    }

    /** The part where {@code normal · point} is at most {@code most}. */
    public ConvexPolygon below(Point normal, double most) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double da = over(normal, a, most);
            double db = over(normal, b, most);
            if (da <= 0) {
                keep(kept, a);
            }
            if ((da < 0 && db > 0) || (da > 0 && db < 0)) {
                keep(kept, a.plus(b.minus(a).times(da / (da - db))));
            }
        }
        ConvexPolygon cut = new ConvexPolygon(kept);
        return cut.area() < NOTHING ? EMPTY : cut;
    }

    /** How far a point is beyond the line; zero within rounding, so that neighbours cut along the line agree. */
    private static double over(Point normal, Point point, double most) {
        double over = normal.dot(point) - most;
        return Math.abs(over) < CLOSE * Math.max(1, Math.abs(normal.x()) + Math.abs(normal.y())) ? 0 : over;
    }

    private static void keep(List<Point> kept, Point point) {
        for (Point other : kept) {
            if (Math.abs(other.x() - point.x()) < CLOSE && Math.abs(other.y() - point.y()) < CLOSE) {
                return;
            }
        }
        kept.add(point);
    }

    /** The part where {@code normal · point} is at least {@code least}. */
    public ConvexPolygon above(Point normal, double least) {
        return below(normal.times(-1), -least);
    }

    /** The part where {@code normal · point} lies between the two. */
    public ConvexPolygon between(Point normal, double least, double most) {
        return below(normal, most).above(normal, least);
    }

    /** The part that both polygons cover. */
    public ConvexPolygon and(ConvexPolygon other) {
        if (!meets(other)) {
            return EMPTY;
        }
        ConvexPolygon common = this;
        for (int i = 0; i < other.corners.size() && !common.isEmpty(); i++) {
            Point a = other.corners.get(i);
            Point out = other.corners
                    .get((i + 1) % other.corners.size())
                    .minus(a)
                    .left()
                    .times(-1);
            common = common.below(out, out.dot(a));
        }
        return other.isEmpty() ? EMPTY : common;
    }

    /** Whether the upright boxes round both meet; if not, neither do the polygons. */
    private boolean meets(ConvexPolygon other) {
        return least(true) < other.most(true)
                && other.least(true) < most(true)
                && least(false) < other.most(false)
                && other.least(false) < most(false);
    }

    private double least(boolean u) {
        double least = Double.POSITIVE_INFINITY;
        for (Point corner : corners) {
            least = Math.min(least, u ? corner.x() : corner.y());
        }
        return least;
    }

    private double most(boolean u) {
        double most = Double.NEGATIVE_INFINITY;
        for (Point corner : corners) {
            most = Math.max(most, u ? corner.x() : corner.y());
        }
        return most;
    }

    /** What this covers and the other does not, as convex pieces. */
    public List<ConvexPolygon> without(ConvexPolygon other) {
        if (and(other).isEmpty()) {
            return List.of(this);
        }
        List<ConvexPolygon> pieces = new ArrayList<>();
        ConvexPolygon rest = this;
        for (int i = 0; i < other.corners.size() && !rest.isEmpty(); i++) {
            Point a = other.corners.get(i);
            Point out = other.corners
                    .get((i + 1) % other.corners.size())
                    .minus(a)
                    .left()
                    .times(-1);
            ConvexPolygon beyond = rest.above(out, out.dot(a));
            if (!beyond.isEmpty()) {
                pieces.add(beyond);
            }
            rest = rest.below(out, out.dot(a));
        }
        return pieces;
    }

    /** The part of a straight line that lies inside; empty when it passes by or only touches. */
    public Optional<List<Point>> clip(Point from, Point to) {
        double first = 0;
        double last = 1;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point out = corners.get((i + 1) % corners.size()).minus(a).left().times(-1);
            double start = out.dot(from.minus(a));
            double end = out.dot(to.minus(a));
            if (start > 0 && end > 0) {
                return Optional.empty();
            }
            if (start > 0) {
                first = Math.max(first, start / (start - end));
            } else if (end > 0) {
                last = Math.min(last, start / (start - end));
            }
        }
        Point way = to.minus(from);
        return corners.isEmpty() || last - first < CLOSE
                ? Optional.empty()
                : Optional.of(List.of(from.plus(way.times(first)), from.plus(way.times(last))));
    }

    /** The mirror image across the line through the origin in the direction {@code line}. */
    public ConvexPolygon mirrored(Point line) {
        return anticlockwise(corners.stream()
                .map(corner -> line.times(2 * line.dot(corner)).minus(corner))
                .toList());
    }

    /** A polygon of these corners, anticlockwise whatever order they came in. */
    public static ConvexPolygon anticlockwise(List<Point> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        if (twice >= 0) {
            return new ConvexPolygon(corners);
        }
        List<Point> reversed = new ArrayList<>(corners);
        Collections.reverse(reversed);
        return new ConvexPolygon(reversed);
    }
}
