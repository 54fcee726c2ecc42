package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import java.util.Arrays;
import java.util.List;

/** Where edgels lie, to find how much of a line shows an edge. */
final class EdgelMap {

    /** The angle at a place without an edgel. */
    private static final double NONE = -1;
    /**
     * An edgel belongs to a line when it is no farther from it than this, in coarse pixels, and turned by less than
     * {@link #TURNED}.
     */
    private static final double NEAR = 2;

    private static final double TURNED = Math.toRadians(15);
    /**
     * The length of the stretch beyond a corner that is tested, as a share of the side; it begins {@link #PAST} coarse
     * pixels past the corner.
     */
    private static final double BEYOND = 0.12;

    private static final double PAST = 5;

    private final int width;
    private final int height;
    private final double[] angles;

    EdgelMap(List<Edgels.Edgel> edgels, int width, int height) {
        this.width = width;
        this.height = height;
        angles = new double[width * height];
        Arrays.fill(angles, NONE);
        for (Edgels.Edgel e : edgels) {
            if (holds(e.x(), e.y())) {
                angles[at(e.x(), e.y())] = e.angle();
            }
        }
    }

    private boolean holds(double x, double y) {
        return x >= 0 && y >= 0 && x < width && y < height;
    }

    private int at(double x, double y) {
        int row = (int) y;
        int column = (int) x;
        return row * width + column;
    }

    /** The share of the line between two places that shows an edge, from 0 to 1. */
    double shown(Point from, Point to) {
        double length = from.to(to);
        double nx = -(to.y() - from.y()) / length;
        double ny = (to.x() - from.x()) / length;
        int count = 0;
        int n = (int) Math.max(1, length);
        for (int i = 0; i < n; i++) {
            Point at = from.towards(to, (i + 0.5) / n);
            count += shows(at, nx, ny) ? 1 : 0;
        }
        return (double) count / n;
    }

    private boolean shows(Point at, double nx, double ny) {
        double normal = Math.atan2(ny, nx);
        for (double t = -NEAR; t <= NEAR; t += 0.5) {
            double x = at.x() + t * nx;
            double y = at.y() + t * ny;
            if (holds(x, y)) {
                double angle = angles[at(x, y)];
                if (angle != NONE && Math.abs(Math.sin(angle - normal)) < Math.sin(TURNED)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The share that shows an edge of the side's continuation past {@code to}. */
    double beyond(Point from, Point to) {
        double length = from.to(to);
        return shown(from.towards(to, 1 + PAST / length), from.towards(to, 1 + Math.max(BEYOND, 3 * PAST / length)));
    }
}
