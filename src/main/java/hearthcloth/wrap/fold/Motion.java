package hearthcloth.wrap.fold;

/**
 * An isometry from the flat cloth into space: the point {@code from} goes to {@code to}, the unit ways u and v to two
 * unit ways at right angles. Cloth is laid by nothing else, so it is never stretched.
 */
public record Motion(Point from, Space to, Space u, Space v) {

    /** Where a point of the cloth comes to lie. */
    public Space at(Point point) {
        return to.plus(u.times(point.u() - from.u())).plus(v.times(point.v() - from.v()));
    }

    /** The point of the cloth that comes to lie at {@code place}, or nearest to it. */
    public Point back(Space place) {
        Space way = place.minus(to);
        return new Point(from.u() + way.dot(u), from.v() + way.dot(v));
    }

    /** Where a way on the cloth then points. */
    Space way(Point way) {
        return u.times(way.u()).plus(v.times(way.v()));
    }

    /** The way the cloth's inside faces (the face that was up on the table). */
    public Space inside() {
        return u.cross(v);
    }

    /** Lays the ways {@code e} and its left {@code e.left()} of the cloth along two ways in space. */
    static Motion along(Point from, Space to, Point e, Space alongE, Space alongLeft) {
        Space u = alongE.times(e.u()).plus(alongLeft.times(-e.v()));
        Space v = alongE.times(e.v()).plus(alongLeft.times(e.u()));
        return new Motion(from, to, u, v);
    }

    /** Lays two unit ways at right angles of the cloth along two in space. */
    static Motion laying(Point from, Space to, Point e, Space alongE, Point n, Space alongN) {
        return new Motion(
                from,
                to,
                alongE.times(e.u()).plus(alongN.times(n.u())),
                alongE.times(e.v()).plus(alongN.times(n.v())));
    }

    /** This motion after the flat cloth is folded over along the line through its origin in the unit way {@code line}. */
    Motion foldedOver(Point line) {
        double a = 2 * line.u() * line.u() - 1;
        double b = 2 * line.u() * line.v();
        double c = 2 * line.v() * line.v() - 1;
        Point start = new Point(a * from.u() + b * from.v(), b * from.u() + c * from.v());
        return new Motion(start, to, u.times(a).plus(v.times(b)), u.times(b).plus(v.times(c)));
    }
}
