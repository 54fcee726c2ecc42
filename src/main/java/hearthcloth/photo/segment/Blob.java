package hearthcloth.photo.segment;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.plane.Hulls;
import java.util.DoubleSummaryStatistics;
import java.util.List;


/**
 * Something that stands out from the ground: its rim as coarse pixel centres in order round it, in full picture pixels.
 *
 * @param cutOff whether it runs off the picture
 * @param inner a place inside
 */
public record Blob(List<Point> rim, boolean cutOff, Point inner, Box box) {

    /** A shape that fills this much of its convex hull is compact: one piece, or neighbours whose edges are in line. */
    static final double COMPACT = 0.93;
    /** Every so many places of a rim are looked at. */
    private static final int EVERY = 3;

    /** Half the angle of a tip. */
    private static final double SLENDER_RAD = Math.toRadians(25);

    public Blob {
        rim = List.copyOf(rim);
    }

    public Blob(List<Point> rim, boolean cutOff) {
        this(rim, cutOff, Hulls.inner(rim), Box.round(rim));
    }

    /** The upright rectangle round it. */
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

    /** How much of its convex hull it fills. */
    double filled() {
        return area() / Hulls.hullArea(rim);
    }

    /** In square pixels. */
    public double area() {
        return Math.abs(Polygons.signedArea(rim));
    }

    /**
     * How much of its rim is none of a polygon's, from 0 to 1: what runs deep inside the polygon, so that this covers what is
     * not cloth, and half of what runs far outside, which may be a thread or a figure of the ground.
     *
     * @param far in pixels
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
     * How many corners of a polygon have nothing of this shape in them. A tip is left out: what is slender is worn away on
     * the way here.
     *
     * @param area that lacks at such a corner at least, in square pixels
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
