package hearthcloth.photo;

import java.util.List;

/**
 * Something that stands out from the ground: its rim as coarse pixel centres in order round it, in full picture pixels.
 *
 * @param cutOff whether it runs off the picture
 */
record Blob(List<Spot> rim, boolean cutOff) {

    /** Half the angle of a tip. */
    private static final double SLENDER_RAD = Math.toRadians(25);

    Blob {
        rim = List.copyOf(rim);
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

    /** A place inside, for a shape that is not too bent. */
    Spot middle() {
        double x = rim.stream().mapToDouble(Spot::x).average().orElse(0);
        double y = rim.stream().mapToDouble(Spot::y).average().orElse(0);
        return new Spot(x, y);
    }

    /** What the boxes round both share, of what they cover together. */
    double boxShare(Blob other) {
        double[] a = box();
        double[] b = other.box();
        double both = Math.max(0, Math.min(a[2], b[2]) - Math.max(a[0], b[0]))
                * Math.max(0, Math.min(a[3], b[3]) - Math.max(a[1], b[1]));
        double all = (a[2] - a[0]) * (a[3] - a[1]) + (b[2] - b[0]) * (b[3] - b[1]) - both;
        return both / Math.max(1, all);
    }

    private double[] box() {
        return new double[] {
            rim.stream().mapToDouble(Spot::x).min().orElse(0),
            rim.stream().mapToDouble(Spot::y).min().orElse(0),
            rim.stream().mapToDouble(Spot::x).max().orElse(0),
            rim.stream().mapToDouble(Spot::y).max().orElse(0)
        };
    }
}
