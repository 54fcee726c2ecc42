package hearthcloth.photo.scene;

import java.awt.geom.Path2D;
import java.util.List;

/** One known piece of cloth, or the reference sheet: corners in millimetres on the floor, in order round it. */
record Scrap(List<double[]> corners, Weave weave, double frayMm, boolean isSheet) {

    Scrap {
        corners = List.copyOf(corners);
    }

    int sides() {
        return corners.size();
    }

    double[] corner(int i) {
        return corners.get(Math.floorMod(i, corners.size()));
    }

    double side(int i) {
        double[] a = corner(i);
        double[] b = corner(i + 1);
        return Math.sqrt((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1]));
    }

    double area() {
        double twice = 0;
        for (int i = 0; i < sides(); i++) {
            twice += corner(i)[0] * corner(i + 1)[1] - corner(i + 1)[0] * corner(i)[1];
        }
        return Math.abs(twice) / 2;
    }

    Path2D path() {
        Path2D path = new Path2D.Double();
        path.moveTo(corner(0)[0], corner(0)[1]);
        for (int i = 1; i < sides(); i++) {
            path.lineTo(corner(i)[0], corner(i)[1]);
        }
        path.closePath();
        return path;
    }

    boolean holds(double x, double y) {
        boolean inside = false;
        for (int i = 0, j = sides() - 1; i < sides(); j = i++) {
            double[] a = corners.get(i);
            double[] b = corners.get(j);
            if ((a[1] > y) != (b[1] > y) && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Distance to the rim, and how far along the rim the nearest place is. */
    double[] rim(double x, double y) {
        double best = Double.MAX_VALUE;
        double bestAlong = 0;
        double along = 0;
        for (int i = 0; i < sides(); i++) {
            double[] a = corner(i);
            double[] b = corner(i + 1);
            double length = side(i);
            double t = ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / (length * length);
            t = Math.max(0, Math.min(1, t));
            double dx = x - a[0] - t * (b[0] - a[0]);
            double dy = y - a[1] - t * (b[1] - a[1]);
            double d = dx * dx + dy * dy;
            if (d < best) {
                best = d;
                bestAlong = along + t * length;
            }
            along += length;
        }
        return new double[] {Math.sqrt(best), bestAlong};
    }

    /** Whether a fringe thread of this scrap covers a place outside it. */
    boolean frays(double distance, double along) {
        if (frayMm <= 0 || distance >= frayMm) {
            return false;
        }
        long thread = (long) Math.floor(along / 0.7);
        return Noise.at(weave.seed() + 91, thread, 0) > 0.1
                && distance < frayMm * (0.3 + 0.7 * Math.abs(Noise.at(weave.seed() + 92, thread, 1)));
    }

    Paint paint(double x, double y) {
        double[] a = corner(0);
        double[] b = corner(1);
        double length = side(0);
        double ux = (b[0] - a[0]) / length;
        double uy = (b[1] - a[1]) / length;
        return weave.at((x - a[0]) * ux + (y - a[1]) * uy, (y - a[1]) * ux - (x - a[0]) * uy);
    }
}
