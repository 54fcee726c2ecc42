package hearthcloth.photo;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.InteriorPointArea;
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

    /** A place inside, far from the rim where it can be; the first corner of what has no inside. */
    static Spot inner(List<Spot> corners) {
        Coordinate[] ring = Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(s -> new Coordinate(s.x(), s.y()))
                .toArray(Coordinate[]::new);
        if (ring.length < 4) {
            return corners.get(0);
        }
        Coordinate at = InteriorPointArea.getInteriorPoint(new GeometryFactory().createPolygon(ring));
        return at == null ? corners.get(0) : new Spot(at.x, at.y);
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

    /** Distance from a place to the nearest side of a polygon. */
    static double toRim(Spot place, List<Spot> corners) {
        double least = Double.MAX_VALUE;
        Spot a = corners.get(corners.size() - 1);
        for (Spot b : corners) {
            double along = (place.x() - a.x()) * (b.x() - a.x()) + (place.y() - a.y()) * (b.y() - a.y());
            double length = a.to(b);
            double share = length < 1e-9 ? 0 : Math.max(0, Math.min(1, along / (length * length)));
            least = Math.min(least, a.towards(b, share).to(place));
            a = b;
        }
        return least;
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
