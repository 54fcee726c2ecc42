package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;

/** A place or a way in space: x right, y away, z up; millimetres. */
public record Space(double x, double y, double z) {

    static final Space UP = new Space(0, 0, 1);

    /** A way on the table as a way in space. */
    static Space flat(Point way) {
        return new Space(way.x(), way.y(), 0);
    }

    public Space plus(Space other) {
        return new Space(x + other.x, y + other.y, z + other.z);
    }

    public Space minus(Space other) {
        return new Space(x - other.x, y - other.y, z - other.z);
    }

    public Space times(double factor) {
        return new Space(x * factor, y * factor, z * factor);
    }

    public double dot(Space other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Space cross(Space other) {
        return new Space(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    Space unit() {
        return times(1 / length());
    }
}
