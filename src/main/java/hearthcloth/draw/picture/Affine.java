package hearthcloth.draw.picture;

/**
 * Where a plane lies on the paper: a place (u, v) of it at (a u + c v + e, b u + d v + f) millimetres.
 */
public record Affine(double a, double b, double c, double d, double e, double f) {

    /** Upright and as large as said, with the plane's origin at (x, y). */
    public static Affine scaled(double scale, double x, double y) {
        return new Affine(scale, 0, 0, scale, x, y);
    }

    /** Millimetres of paper for one of the plane, on the whole. */
    public double scale() {
        return Math.sqrt(Math.abs(a * d - b * c));
    }

    /** The same in a picture so many times smaller. */
    public Affine dividedBy(double times) {
        return new Affine(a / times, b / times, c / times, d / times, e / times, f / times);
    }

    Affine movedBy(double dx, double dy) {
        return new Affine(a, b, c, d, e + dx, f + dy);
    }

    /** Whether it is neither turned nor sheared nor stretched. */
    boolean isUpright() {
        return b == 0 && c == 0 && a == d;
    }
}
