package hearthcloth.wrap.fold;

/** A place on the flat cloth: u to the right, v away from the maker, millimetres from under the gift's middle. */
public record Point(double u, double v) {

    Point plus(Point other) {
        return new Point(u + other.u, v + other.v);
    }

    Point minus(Point other) {
        return new Point(u - other.u, v - other.v);
    }

    Point times(double factor) {
        return new Point(u * factor, v * factor);
    }

    double dot(Point other) {
        return u * other.u + v * other.v;
    }

    /** A quarter turn anticlockwise. */
    Point left() {
        return new Point(-v, u);
    }
}
