package hearthcloth.geometry;

/** A place or a direction in space: x right, y away, z up; in millimetres. */
public record Vector(double x, double y, double z) {

    public static final Vector UP = new Vector(0, 0, 1);

    /** A direction on the table as a direction in space. */
    public static Vector flat(Point way) {
        return new Vector(way.x(), way.y(), 0);
    }

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public Vector unit() {
        return times(1 / length());
    }
}
