package hearthcloth.photo;

import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Small plane geometry that reading shares: areas, crossings, a symmetric inverse. */
final class Shapes {

    private Shapes() {}

    /** Positive when the corners go round clockwise as seen with y down. */
    static double signedArea(List<Spot> corners) {
        double twice = 0;
        Spot before = corners.get(corners.size() - 1);
        for (Spot spot : corners) {
            twice += before.x() * spot.y() - spot.x() * before.y();
            before = spot;
        }
        return twice / 2;
    }

    /** Area of the convex hull. */
    static double hullArea(List<Spot> spots) {
        Coordinate[] at = spots.stream().map(s -> new Coordinate(s.x(), s.y())).toArray(Coordinate[]::new);
        return new ConvexHull(at, new GeometryFactory()).getConvexHull().getArea();
    }

    static double perimeter(List<Spot> corners) {
        double sum = 0;
        Spot before = corners.get(corners.size() - 1);
        for (Spot spot : corners) {
            sum += before.to(spot);
            before = spot;
        }
        return sum;
    }

    static boolean inside(List<Spot> corners, double x, double y) {
        boolean in = false;
        Spot b = corners.get(corners.size() - 1);
        for (Spot a : corners) {
            if ((a.y() > y) != (b.y() > y) && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
            b = a;
        }
        return in;
    }

    /** Whether a place and those so far off it in four directions are inside. */
    static boolean wellInside(List<Spot> corners, double x, double y, double inset) {
        return inside(corners, x, y)
                && inside(corners, x - inset, y)
                && inside(corners, x + inset, y)
                && inside(corners, x, y - inset)
                && inside(corners, x, y + inset);
    }

    /** Distance from a place to the line through two others. */
    static double off(Spot place, Spot a, Spot b) {
        double length = a.to(b);
        if (length < 1e-9) {
            return place.to(a);
        }
        return Math.abs((b.x() - a.x()) * (place.y() - a.y()) - (b.y() - a.y()) * (place.x() - a.x())) / length;
    }

    /** Inverse of a symmetric matrix given and returned as xx, xy, xz, yy, yz, zz. */
    static double[] inverse3(double[] m) {
        double c0 = m[3] * m[5] - m[4] * m[4];
        double c1 = m[2] * m[4] - m[1] * m[5];
        double c2 = m[1] * m[4] - m[2] * m[3];
        double det = m[0] * c0 + m[1] * c1 + m[2] * c2;
        return new double[] {
            c0 / det,
            c1 / det,
            c2 / det,
            (m[0] * m[5] - m[2] * m[2]) / det,
            (m[1] * m[2] - m[0] * m[4]) / det,
            (m[0] * m[3] - m[1] * m[1]) / det
        };
    }
}
