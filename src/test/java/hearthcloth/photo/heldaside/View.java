package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;

/**
 * A pinhole camera over the floor with what its lens leaves bent. The floor's y runs as a page's, downwards.
 *
 * <p>A place in the picture, {@code r} half diagonals from its middle, is seen by a pinhole at {@code r (1 + a r² + b r⁴)}:
 * positive shares pull the picture's corners in (barrel).
 */
final class View {

    /** Size of the picture in pixels, and the focal length of a full-frame lens with the same diagonal angle. */
    record Frame(int width, int height, double equivalentMm) {
        double diagonal() {
            return Math.hypot(width, height);
        }

        /** In pixels; 43.27 mm is the diagonal of 36 × 24 mm. */
        double focal() {
            return equivalentMm / Math.hypot(36, 24) * diagonal();
        }
    }

    /** Where it is held: height of the lens over the floor, and its turns. The middle of the picture sees the floor's origin. */
    record Pose(double height, double tiltRad, double yawRad, double rollRad) {}

    /** What the lens bends. */
    record Bend(double a, double b) {}

    final Frame frame;
    final Pose pose;
    final Bend bend;
    private final double[] turn;
    private final double standX;
    private final double standY;

    View(Frame frame, Pose pose, Bend bend) {
        this.frame = frame;
        this.pose = pose;
        this.bend = bend;
        this.turn = turned(pose);
        this.standX = -pose.height * turn[2] / turn[8];
        this.standY = -pose.height * turn[5] / turn[8];
    }

    /** The place a pixel's place sees, at {@code above} over the floor. */
    void floor(double px, double py, double above, double[] out) {
        double x = px - frame.width / 2.0;
        double y = py - frame.height / 2.0;
        double half = frame.diagonal() / 2;
        double r2 = (x * x + y * y) / (half * half);
        double s = (1 + bend.a * r2 + bend.b * r2 * r2) / frame.focal();
        double down = turn[6] * x * s + turn[7] * y * s + turn[8];
        double far = (pose.height - above) / down;
        out[0] = standX + far * (turn[0] * x * s + turn[1] * y * s + turn[2]);
        out[1] = standY + far * (turn[3] * x * s + turn[4] * y * s + turn[5]);
    }

    /** How far a place seen at {@code x} moves for every millimetre it lies higher. */
    double slopeX(double x) {
        return (x - standX) / pose.height;
    }

    double slopeY(double y) {
        return (y - standY) / pose.height;
    }

    Point floor(Point pixel) {
        double[] out = new double[2];
        floor(pixel.x(), pixel.y(), 0, out);
        return new Point(out[0], out[1]);
    }

    /** Where a place on the floor shows. */
    Point picture(Point floor) {
        double x = floor.x() - standX;
        double y = floor.y() - standY;
        double d = pose.height;
        double ahead = turn[2] * x + turn[5] * y + turn[8] * d;
        double u = (turn[0] * x + turn[3] * y + turn[6] * d) / ahead * frame.focal();
        double v = (turn[1] * x + turn[4] * y + turn[7] * d) / ahead * frame.focal();
        double half = frame.diagonal() / 2;
        double wanted = Math.hypot(u, v) / half;
        double r = wanted;
        for (int k = 0; k < 20; k++) {
            double r2 = r * r;
            double off = r * (1 + bend.a * r2 + bend.b * r2 * r2) - wanted;
            r -= off / (1 + 3 * bend.a * r2 + 5 * bend.b * r2 * r2);
        }
        double share = wanted == 0 ? 1 : r / wanted;
        return new Point(frame.width / 2.0 + u * share, frame.height / 2.0 + v * share);
    }

    /** Millimetres of floor that a pixel there is wide, about. */
    double pixelMm(double px, double py) {
        Point at = floor(new Point(px, py));
        return (at.to(floor(new Point(px + 1, py))) + at.to(floor(new Point(px, py + 1)))) / 2;
    }

    /** The camera's axes in the floor's: about the way down, then about the picture's own x, then its roll. */
    private static double[] turned(Pose p) {
        double cy = Math.cos(p.yawRad);
        double sy = Math.sin(p.yawRad);
        double ct = Math.cos(p.tiltRad);
        double st = Math.sin(p.tiltRad);
        double cr = Math.cos(p.rollRad);
        double sr = Math.sin(p.rollRad);
        double[] tilt = {1, 0, 0, 0, ct, -st, 0, st, ct};
        double[] yaw = {cy, -sy, 0, sy, cy, 0, 0, 0, 1};
        double[] roll = {cr, -sr, 0, sr, cr, 0, 0, 0, 1};
        return product(yaw, product(tilt, roll));
    }

    private static double[] product(double[] a, double[] b) {
        double[] c = new double[9];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                c[3 * i + j] = a[3 * i] * b[j] + a[3 * i + 1] * b[3 + j] + a[3 * i + 2] * b[6 + j];
            }
        }
        return c;
    }
}
