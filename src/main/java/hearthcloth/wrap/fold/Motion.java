package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;

/**
 * An isometry from the flat cloth into space: the point {@code from} goes to {@code to}, the unit vectors u and v to
 * two unit vectors at right angles. Cloth is laid by isometries only, so it is never stretched.
 */
public record Motion(Point from, Vector to, Vector u, Vector v) {

    /** Where a point of the cloth lies in space. */
    public Vector at(Point point) {
        return to.plus(u.times(point.x() - from.x())).plus(v.times(point.y() - from.y()));
    }

    /** The point of the cloth that lies at {@code place}, or nearest to it. */
    public Point back(Vector place) {
        Vector way = place.minus(to);
        return new Point(from.x() + way.dot(u), from.y() + way.dot(v));
    }

    /** Where a direction on the cloth points in space. */
    public Vector way(Point way) {
        return u.times(way.x()).plus(v.times(way.y()));
    }

    /** The direction that the cloth's inside faces (the face that was up on the table). */
    public Vector inside() {
        return u.cross(v);
    }

    /** Lays the unit vectors {@code e} and its left {@code e.left()} of the cloth along two directions in space. */
    public static Motion along(Point from, Vector to, Point e, Vector alongE, Vector alongLeft) {
        Vector u = alongE.times(e.x()).plus(alongLeft.times(-e.y()));
        Vector v = alongE.times(e.y()).plus(alongLeft.times(e.x()));
        return new Motion(from, to, u, v);
    }

    /** Lays two unit vectors at right angles of the cloth along two in space. */
    public static Motion laying(Point from, Vector to, Point e, Vector alongE, Point n, Vector alongN) {
        return new Motion(
                from,
                to,
                alongE.times(e.x()).plus(alongN.times(n.x())),
                alongE.times(e.y()).plus(alongN.times(n.y())));
    }

    /**
     * This motion after the flat cloth is folded over along the line through its origin in the direction {@code line}.
     */
    public Motion foldedOver(Point line) {
        double a = 2 * line.x() * line.x() - 1;
        double b = 2 * line.x() * line.y();
        double c = 2 * line.y() * line.y() - 1;
        Point start = new Point(a * from.x() + b * from.y(), b * from.x() + c * from.y());
        return new Motion(start, to, u.times(a).plus(v.times(b)), u.times(b).plus(v.times(c)));
    }
}
