package hearthcloth.wrap.settle;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What of a mesh is seen by looking at it: from straight above and from eight sides at two heights, with a depth for each
 * dot of a picture. Free and gathered ends are left out, as in the fold's own figures, which count them by themselves.
 */
final class MeshSight {

    private static final int DOTS = 320;

    private final Settled mesh;
    private final boolean[] isLoose;

    /** The share of each triangle that is seen from where most of it is. */
    private final double[] seen;

    MeshSight(Settled mesh, Fold fold) {
        this.mesh = mesh;
        this.seen = new double[mesh.triangles().size() / 3];
        this.isLoose = new boolean[seen.length];
        List<ConvexPolygon> loose =
                fold.facets().stream().filter(Facet::isLoose).map(Facet::cloth).toList();
        for (int t = 0; t < seen.length; t++) {
            Point middle = middle(t);
            isLoose[t] = loose.stream().anyMatch(end -> Polygons.inside(end.corners(), middle.x(), middle.y()));
        }
        look(new Vector(0, 0, 1));
        for (double height : new double[] {0.25, 1}) {
            for (int i = 0; i < 8; i++) {
                double angle = Math.PI * (i + 0.5) / 4;
                look(new Vector(Math.cos(angle), Math.sin(angle), height).unit());
            }
        }
    }

    /** Square millimetres seen of all that is not a free end, and of that what lies in a part of the cloth. */
    double[] seen(ConvexPolygon part) {
        double all = 0;
        double own = 0;
        for (int t = 0; t < seen.length; t++) {
            Point middle = middle(t);
            if (seen[t] > 0) {
                double area = seen[t] * area(t);
                all += area;
                own += Polygons.inside(part.corners(), middle.x(), middle.y()) ? area : 0;
            }
        }
        return new double[] {all, own};
    }

    private void look(Vector eye) {
        Vector right = Math.abs(eye.z()) > 0.99 ? new Vector(1, 0, 0) : new Vector(-eye.y(), eye.x(), 0).unit();
        Vector up = eye.cross(right);
        double reach = mesh.places().stream().mapToDouble(Vector::length).max().orElseThrow();
        double dot = 2 * reach / DOTS;
        double[] depth = new double[DOTS * DOTS];
        Arrays.fill(depth, Double.NEGATIVE_INFINITY);
        int[] front = new int[DOTS * DOTS];
        Arrays.fill(front, -1);
        int[] whole = new int[seen.length];
        for (int t = 0; t < seen.length; t++) {
            whole[t] = draw(t, List.of(right, up, eye), dot, depth, front);
        }
        int[] shown = new int[seen.length];
        for (int t : front) {
            if (t >= 0) {
                shown[t]++;
            }
        }
        for (int t = 0; t < seen.length; t++) {
            seen[t] = Math.max(seen[t], whole[t] == 0 ? 0 : (double) shown[t] / whole[t]);
        }
    }

    /** Draws a triangle and counts its dots. */
    private int draw(int t, List<Vector> view, double dot, double[] depth, int[] front) {
        double[] x = new double[3];
        double[] y = new double[3];
        double[] z = new double[3];
        for (int i = 0; i < 3; i++) {
            x[i] = DOTS / 2 + at(t, i).dot(view.get(0)) / dot;
            y[i] = DOTS / 2 + at(t, i).dot(view.get(1)) / dot;
            z[i] = at(t, i).dot(view.get(2));
        }
        double twice = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
        if (isLoose[t] || Math.abs(twice) < 1e-9) {
            return 0;
        }
        int count = 0;
        for (int i = least(x); i <= most(x); i++) {
            for (int j = least(y); j <= most(y); j++) {
                double one = ((i - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (j - y[0])) / twice;
                double two = ((x[1] - x[0]) * (j - y[0]) - (i - x[0]) * (y[1] - y[0])) / twice;
                if (one >= 0 && two >= 0 && one + two <= 1) {
                    double here = z[0] + one * (z[1] - z[0]) + two * (z[2] - z[0]);
                    count++;
                    if (here > depth[j * DOTS + i]) {
                        depth[j * DOTS + i] = here;
                        front[j * DOTS + i] = t;
                    }
                }
            }
        }
        return count;
    }

    private static int least(double[] numbers) {
        return (int) Math.max(0, Math.ceil(Arrays.stream(numbers).min().orElseThrow()));
    }

    private static int most(double[] numbers) {
        return (int)
                Math.min(DOTS - 1.0, Math.floor(Arrays.stream(numbers).max().orElseThrow()));
    }

    private Vector at(int t, int corner) {
        return mesh.places().get(mesh.triangles().get(3 * t + corner));
    }

    private Point middle(int t) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            corners.add(mesh.cloth().get(mesh.triangles().get(3 * t + i)));
        }
        return corners.get(0).plus(corners.get(1)).plus(corners.get(2)).times(1.0 / 3);
    }

    private double area(int t) {
        Point from = mesh.cloth().get(mesh.triangles().get(3 * t));
        Point one = mesh.cloth().get(mesh.triangles().get(3 * t + 1)).minus(from);
        Point two = mesh.cloth().get(mesh.triangles().get(3 * t + 2)).minus(from);
        return Math.abs(one.left().dot(two)) / 2;
    }
}
