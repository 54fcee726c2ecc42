package hearthcloth.wrap.pleat;

import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.fold.ReefKnot;
import java.util.ArrayList;
import java.util.List;

/**
 * The middle lines of a reef knot's two strands. Each comes in along its own standing side, turns a bight through the
 * other's and leaves beside where it came in. Of the six crossings, both legs of the second strand pass under the first
 * one's bend and both legs of the first over the second's; in a granny one leg would pass over and one under.
 *
 * <p>The crossings are those of docs/sources.md#reef-knot. The curve is drawn as long as the cloth the knot takes.
 */
public record ReefStrands(List<Vector> first, List<Vector> second) {

    /** The middle line of the first strand: along, across, up; in units of about half a strand's width. */
    private static final double[][] FIRST = {
        {-4.1, -0.8, -2.2},
        {-3.8, -0.95, -0.8},
        {-3.1, -1, 0.6},
        {-2.2, -1, 1},
        {0.418, -1, -1},
        {2.0, -1, 0.4},
        {2.3, -0.543, 1},
        {2.3, 0.543, 1},
        {2.0, 1, 0.4},
        {0.418, 1, -1},
        {-2.2, 1, 1},
        {-3.4, 0.9, 0.8},
        {-4.4, 0.5, 0.6}
    };

    private static final double[][] SECOND = {
        {4.1, -0.7, -2.2},
        {3.5, -0.6, -1.2},
        {2.2, -0.543, -1},
        {0.418, -1, 1},
        {-1, -1.5, 0.2},
        {-2.2, -1.4, -0.8},
        {-2.5, 0, -1},
        {-2.2, 1.4, -0.8},
        {-1, 1.5, 0.2},
        {0.418, 1, 1},
        {2.2, 0.543, -1},
        {3.3, 0.55, 0},
        {4.4, 0.5, 0.6}
    };

    /** How far from the knot's middle the free ends leave, in the same units. */
    private static final double EXIT = FIRST[FIRST.length - 1][0];

    /** How high they leave, in the same units. */
    private static final double RISE = FIRST[FIRST.length - 1][2];

    private static final List<double[]> ONE = rounded(FIRST);
    private static final List<double[]> TWO = rounded(SECOND);
    /** The length of a strand in those units, in which half its width is one. */
    public static final double UNITS = (length(ONE) + length(TWO)) / 2;

    public ReefStrands {
        first = List.copyOf(first);
        second = List.copyOf(second);
    }

    /** The strands of a knot, from where they come in to where the free ends begin. */
    public static ReefStrands of(ReefKnot knot) {
        return new ReefStrands(laid(knot, ONE), laid(knot, TWO));
    }

    /** Where the free end begins that leaves a knot at {@code at} in the direction {@code out}. */
    static Vector exit(Vector at, Vector out, Vector up, double taken) {
        return at.plus(out.times(-EXIT * unit(taken))).plus(up.times(RISE * unit(taken)));
    }

    private static double unit(double taken) {
        return taken / UNITS;
    }

    private static List<Vector> laid(ReefKnot knot, List<double[]> line) {
        double unit = unit(knot.taken());
        List<Vector> points = new ArrayList<>();
        for (double[] point : line) {
            points.add(knot.at()
                    .plus(knot.along().times(point[0] * unit))
                    .plus(knot.across().times(point[1] * unit))
                    .plus(knot.up().times(point[2] * unit)));
        }
        return points;
    }

    /** The line with its corners cut once; its ends stay. */
    private static List<double[]> rounded(double[][] line) {
        List<double[]> points = List.of(line);
        for (int round = 0; round < 1; round++) {
            List<double[]> finer = new ArrayList<>();
            finer.add(points.get(0));
            for (int i = 1; i < points.size(); i++) {
                finer.add(between(points.get(i - 1), points.get(i), 0.25));
                finer.add(between(points.get(i - 1), points.get(i), 0.75));
            }
            finer.add(points.get(points.size() - 1));
            points = finer;
        }
        return points;
    }

    private static double[] between(double[] a, double[] b, double share) {
        double[] point = new double[3];
        for (int i = 0; i < 3; i++) {
            point[i] = a[i] + (b[i] - a[i]) * share;
        }
        return point;
    }

    private static double length(List<double[]> line) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            double[] a = line.get(i - 1);
            double[] b = line.get(i);
            sum += Elementary.hypot(Elementary.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
        }
        return sum;
    }
}
