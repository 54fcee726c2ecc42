package hearthcloth.geometry;

import hearthcloth.number.Elementary;

/**
 * A place or a way in the plane, in whatever unit its holder says: pixels of a picture, millimetres on the floor, on the
 * flat cloth or on paper. Which way y runs is the holder's too.
 */
public record Point(double x, double y) {

    /** The distance to {@code other}, in the unit of both. */
    public double to(Point other) {
        return Elementary.hypot(other.x - x, other.y - y);
    }

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** This way turned by a quarter, anticlockwise where y runs up. */
    public Point left() {
        return new Point(-y, x);
    }

    /** The place {@code share} of the way to {@code other}: 0 here, 1 there. */
    public Point towards(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
