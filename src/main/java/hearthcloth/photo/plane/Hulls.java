package hearthcloth.photo.plane;

import hearthcloth.geometry.Point;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.InteriorPointArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** What JTS knows of a polygon: its convex hull's area and a place inside. */
public final class Hulls {

    private Hulls() {}

    /** A place inside, far from the rim where it can be; the first corner of what has no inside. */
    public static Point inner(List<Point> corners) {
        Coordinate[] ring = Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(s -> new Coordinate(s.x(), s.y()))
                .toArray(Coordinate[]::new);
        if (ring.length < 4) {
            return corners.get(0);
        }
        Coordinate at = InteriorPointArea.getInteriorPoint(new GeometryFactory().createPolygon(ring));
        return at == null ? corners.get(0) : new Point(at.x, at.y);
    }

    /** Area of the convex hull. */
    public static double hullArea(List<Point> spots) {
        Coordinate[] at = spots.stream().map(s -> new Coordinate(s.x(), s.y())).toArray(Coordinate[]::new);
        return new ConvexHull(at, new GeometryFactory()).getConvexHull().getArea();
    }
}
