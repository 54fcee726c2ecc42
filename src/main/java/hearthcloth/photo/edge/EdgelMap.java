package hearthcloth.photo.edge;

import hearthcloth.geometry.Point;
import hearthcloth.photo.parameter.SheetParameters;
import java.util.Arrays;
import java.util.List;

/** Where edgels lie, to find how much of a line shows an edge. */
public final class EdgelMap {

    /** The angle at a place without an edgel. */
    private static final double NONE = -1;

    private final int width;
    private final int height;
    private final double[] angles;
    private final SheetParameters.Edgel parameters;

    public EdgelMap(List<Edgels.Edgel> edgels, int width, int height, SheetParameters.Edgel parameters) {
        this.width = width;
        this.height = height;
        this.parameters = parameters;
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
    public double shown(Point from, Point to) {
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
        for (double t = -parameters.near(); t <= parameters.near(); t += 0.5) {
            double x = at.x() + t * nx;
            double y = at.y() + t * ny;
            if (holds(x, y)) {
                double angle = angles[at(x, y)];
                if (angle != NONE
                        && Math.abs(Math.sin(angle - normal)) < Math.sin(Math.toRadians(parameters.turnedDegrees()))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The share that shows an edge of the side's continuation past {@code to}. */
    public double beyond(Point from, Point to) {
        double length = from.to(to);
        return shown(
                from.towards(to, 1 + parameters.past() / length),
                from.towards(to, 1 + Math.max(parameters.beyond(), 3 * parameters.past() / length)));
    }
}
