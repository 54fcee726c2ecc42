package hearthcloth.photo.segment;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.plane.Hulls;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * A shape that stands out from the ground: its rim as the centres of coarse pixels in order round it, given in raw
 * pixels.
 *
 * @param cutOff whether it runs off the picture
 * @param inner a place inside the shape
 */
public record Blob(List<Point> rim, boolean cutOff, Point inner, Box box) {

    /** Only every third place of the rim is tested, for speed. */
    private static final int EVERY = 3;

    /** Corners with a smaller half angle are tips, which the opening of the mask has removed. */
    private static final double SLENDER_RAD = Math.toRadians(25);

    public Blob {
        rim = List.copyOf(rim);
    }

    public Blob(List<Point> rim, boolean cutOff) {
        this(rim, cutOff, Hulls.inner(rim), Box.round(rim));
    }

    /** The upright rectangle round the shape, in raw pixels. */
    record Box(double left, double top, double right, double low) {

        private static Box round(List<Point> rim) {
            DoubleSummaryStatistics x = rim.stream().mapToDouble(Point::x).summaryStatistics();
            DoubleSummaryStatistics y = rim.stream().mapToDouble(Point::y).summaryStatistics();
            return new Box(x.getMin(), y.getMin(), x.getMax(), y.getMax());
        }

        private boolean holds(Point at) {
            return at.x() >= left && at.x() <= right && at.y() >= top && at.y() <= low;
        }
    }

    boolean holds(Point at) {
        return box.holds(at) && Polygons.inside(rim, at.x(), at.y());
    }

    /** The share of its convex hull that it fills. */
    double filled() {
        return area() / Hulls.hullArea(rim);
    }

    /** The area in square raw pixels. */
    public double area() {
        return Math.abs(Polygons.signedArea(rim));
    }

    /**
     * The share of the rim that does not follow a polygon, from 0 to 1. A place of the rim deep inside the polygon
     * counts fully, since there the polygon covers what is no cloth; one far outside counts half, since it may be a
     * thread or a figure of the ground.
     *
     * @param far distance beyond which a place does not follow the polygon, in raw pixels
     */
    public double straying(List<Point> polygon, double far) {
        double sum = 0;
        int looked = 0;
        for (int i = 0; i < rim.size(); i += EVERY) {
            Point at = rim.get(i);
            if (Polygons.toRim(at, polygon) > far) {
                sum += Polygons.inside(polygon, at.x(), at.y()) ? 1 : 0.5;
            }
            looked++;
        }
        return sum / Math.max(1, looked);
    }

    /**
     * The number of the polygon's corners in which this shape has nothing. Tips are left out, since slender parts were
     * worn away from the mask before.
     *
     * @param area that is missing at such a corner at least, in square raw pixels
     */
    public int lacking(List<Point> polygon, double area) {
        int count = 0;
        int n = polygon.size();
        double sign = Math.signum(Polygons.signedArea(polygon));
        for (int i = 0; i < n; i++) {
            Point corner = polygon.get(i);
            Line in = Line.through(polygon.get(Math.floorMod(i - 1, n)), corner);
            Line out = Line.through(corner, polygon.get((i + 1) % n));
            double sine = sign * in.sine(out);
            double half = 0.5 * Math.acos(Math.max(-1, Math.min(1, -(in.dx() * out.dx() + in.dy() * out.dy()))));
            if (sine > 0 && half > SLENDER_RAD) {
                double deep = Math.sqrt(2 * area / sine) * Math.cos(half);
                double x = out.dx() - in.dx();
                double y = out.dy() - in.dy();
                double length = Math.hypot(x, y);
                count += Polygons.inside(rim, corner.x() + deep * x / length, corner.y() + deep * y / length) ? 0 : 1;
            }
        }
        return count;
    }
}
