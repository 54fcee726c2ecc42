package hearthcloth.photo.plane;

import hearthcloth.geometry.Point;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Whether two outlines cover the same cloth. */
public final class OutlineOverlap {

    /** An overlap of no more than this share of the smaller one comes from an edge that was not met exactly. */
    private static final double SHARE = 0.06;

    private OutlineOverlap() {}

    public static boolean isOver(PieceOutline one, PieceOutline other) {
        Geometry a = shape(one.floor());
        Geometry b = shape(other.floor());
        return a.intersection(b).getArea() > SHARE * Math.min(a.getArea(), b.getArea());
    }

    /** The polygon of some corners. The buffer of zero mends an outline that touches itself. */
    private static Geometry shape(List<Point> corners) {
        Coordinate[] ring = Stream.concat(corners.stream(), corners.stream().limit(1))
                .map(spot -> new Coordinate(spot.x(), spot.y()))
                .toArray(Coordinate[]::new);
        return new GeometryFactory().createPolygon(ring).buffer(0);
    }
}
