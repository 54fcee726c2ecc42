package hearthcloth.photo;

import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * Something that stands out from the ground: its rim as coarse pixel centres in order round it, in full picture pixels.
 *
 * @param cutOff whether it runs off the picture
 * @param middle a place inside, for a shape that is not too bent
 */
record Blob(List<Spot> rim, boolean cutOff, Spot middle, Box box) {

    /** A shape that fills this much of its convex hull is compact: one piece, or neighbours whose edges are in line. */
    static final double COMPACT = 0.93;
    /** Half the angle of a tip. */
    private static final double SLENDER_RAD = Math.toRadians(25);

    Blob {
        rim = List.copyOf(rim);
    }

    Blob(List<Spot> rim, boolean cutOff) {
        this(rim, cutOff, middle(rim), Box.round(rim));
    }

    /** The upright rectangle round it. */
    record Box(double left, double top, double right, double low) {

        private static Box round(List<Spot> rim) {
            DoubleSummaryStatistics x = rim.stream().mapToDouble(Spot::x).summaryStatistics();
            DoubleSummaryStatistics y = rim.stream().mapToDouble(Spot::y).summaryStatistics();
            return new Box(x.getMin(), y.getMin(), x.getMax(), y.getMax());
        }

        private boolean holds(Spot at) {
            return at.x() >= left && at.x() <= right && at.y() >= top && at.y() <= low;
        }

        private double area() {
            return (right - left) * (low - top);
        }

        /** What both cover, of what they cover together. */
        double share(Box other) {
            double both = Math.max(0, Math.min(right, other.right) - Math.max(left, other.left))
                    * Math.max(0, Math.min(low, other.low) - Math.max(top, other.top));
            return both / Math.max(1, area() + other.area() - both);
        }
    }

    private static Spot middle(List<Spot> rim) {
        return new Spot(
                rim.stream().mapToDouble(Spot::x).average().orElse(0),
                rim.stream().mapToDouble(Spot::y).average().orElse(0));
    }

    boolean holds(Spot at) {
        return box.holds(at) && Shapes.inside(rim, at.x(), at.y());
    }

    /** How much of its convex hull it fills. */
    double filled() {
        return area() / Shapes.hullArea(rim);
    }

    /** In square pixels. */
    double area() {
        return Math.abs(Shapes.signedArea(rim));
    }

    /**
     * How many corners of a polygon have nothing of this shape in them. A tip is left out: what is slender is worn away on
     * the way here.
     *
     * @param area that lacks at such a corner at least, in square pixels
     */
    int lacking(List<Spot> polygon, double area) {
        int count = 0;
        int n = polygon.size();
        double sign = Math.signum(Shapes.signedArea(polygon));
        for (int i = 0; i < n; i++) {
            Spot corner = polygon.get(i);
            Line in = Line.through(polygon.get(Math.floorMod(i - 1, n)), corner);
            Line out = Line.through(corner, polygon.get((i + 1) % n));
            double sine = sign * in.sine(out);
            double half = 0.5 * Math.acos(Math.max(-1, Math.min(1, -(in.dx() * out.dx() + in.dy() * out.dy()))));
            if (sine > 0 && half > SLENDER_RAD) {
                double deep = Math.sqrt(2 * area / sine) * Math.cos(half);
                double x = out.dx() - in.dx();
                double y = out.dy() - in.dy();
                double length = Math.hypot(x, y);
                count += Shapes.inside(rim, corner.x() + deep * x / length, corner.y() + deep * y / length) ? 0 : 1;
            }
        }
        return count;
    }
}
