package hearthcloth.photo.scene;

/**
 * A pinhole with barrel distortion, looking down at the floor. Distances in millimetres, the floor is z = 0, y runs
 * away from the maker. Distortion is the forward polynomial r' = r (1 + k r²) with r in focal lengths.
 */
final class Camera {

    final int width;
    final int height;
    private final double focal;
    private final double k;
    private final double[] eye;
    private final double[][] axes;

    Camera(int width, int height, double focal, double k, double[] target, double distance, double tilt, double turn) {
        this.width = width;
        this.height = height;
        this.focal = focal;
        this.k = k;
        double sx = Math.sin(tilt) * Math.sin(turn);
        double sy = -Math.sin(tilt) * Math.cos(turn);
        double[] back = {sx, sy, Math.cos(tilt)};
        eye = new double[] {target[0] + distance * back[0], target[1] + distance * back[1], distance * back[2]};
        double[] right = unit(new double[] {Math.cos(turn), Math.sin(turn), 0});
        double[] down = cross(right, back);
        axes = new double[][] {right, down, back};
    }

    /** Where the floor shows at picture place (px, py), pixel centres at whole numbers plus a half. */
    double[] floorAt(double px, double py) {
        return at(px, py, 0);
    }

    /** Where what shows at a picture place lies, when it is this high above the floor. */
    double[] at(double px, double py, double heightMm) {
        double xd = (px - width / 2.0) / focal;
        double yd = (py - height / 2.0) / focal;
        double rd = Math.sqrt(xd * xd + yd * yd);
        double r = rd;
        double before = Double.NaN;
        for (int i = 0; i < 5 && r != before; i++) {
            before = r;
            r -= (r * (1 + k * r * r) - rd) / (1 + 3 * k * r * r);
        }
        double scale = rd > 1e-12 ? r / rd : 1;
        double x = xd * scale;
        double y = yd * scale;
        double[] ray = new double[3];
        for (int i = 0; i < 3; i++) {
            ray[i] = x * axes[0][i] + y * axes[1][i] - axes[2][i];
        }
        double t = (heightMm - eye[2]) / ray[2];
        return new double[] {eye[0] + t * ray[0], eye[1] + t * ray[1]};
    }

    /** Where a place on the floor shows in the picture. */
    double[] pictureAt(double x, double y) {
        double[] d = {x - eye[0], y - eye[1], -eye[2]};
        double depth = -dot(d, axes[2]);
        double u = dot(d, axes[0]) / depth;
        double v = dot(d, axes[1]) / depth;
        double bend = 1 + k * (u * u + v * v);
        return new double[] {width / 2.0 + focal * u * bend, height / 2.0 + focal * v * bend};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] a) {
        double length = Math.sqrt(dot(a, a));
        return new double[] {a[0] / length, a[1] / length, a[2] / length};
    }
}
