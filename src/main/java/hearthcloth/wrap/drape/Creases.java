package hearthcloth.wrap.drape;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Straight lines on the flat cloth along which it is folded over the gift's edges. Rows of a grid that lie near them are
 * moved onto them, so that the cloth bends there and is not cut off; the hem stays.
 *
 * @param u where lines of equal u run, {@code v} those of equal v
 */
record Creases(List<Double> u, List<Double> v) {

    static final Creases NONE = new Creases(List.of(), List.of());

    /** Nearer than this two places are the same, in millimetres. */
    private static final double SAME = 1e-6;

    /** The hem's own place fades out over this many cells. */
    private static final double FADE = 3;

    Creases {
        u = List.copyOf(u);
        v = List.copyOf(v);
    }

    /** Moves the rows of a grid. */
    void warp(Grid grid) {
        boolean slanting = rows(grid.u).length > Math.max(grid.columns, grid.rows);
        int odd = u.isEmpty() || !slanting ? -1 : (nearest(rows(grid.u), u.get(1)) + grid.columns - 1) % 2;
        double[] byU = warped(grid.u, u, odd < 0 ? -1 : nearest(rows(grid.u), u.get(1)) % 2);
        double[] byV = warped(grid.v, v, odd);
        for (int k = 0; k < grid.u.length; k++) {
            int i = k % grid.columns;
            int j = k / grid.columns;
            int in = Math.min(Math.min(i, grid.columns - 1 - i), Math.min(j, grid.rows - 1 - j));
            double share = Math.min(1, in / FADE);
            grid.u[k] += share * (byU[k] - grid.u[k]);
            grid.v[k] += share * (byV[k] - grid.v[k]);
        }
    }

    /** Whether both points lie on one crease. */
    boolean isOn(Grid grid, int a, int b) {
        return isOn(grid.u[a], grid.u[b], u) || isOn(grid.v[a], grid.v[b], v);
    }

    private static boolean isOn(double a, double b, List<Double> lines) {
        return Math.abs(a - b) < SAME && lines.stream().anyMatch(line -> Math.abs(line - a) < SAME);
    }

    private static double[] warped(double[] places, List<Double> lines, int odd) {
        double[] rows = rows(places);
        double[] to = rows.clone();
        boolean[] fixed = new boolean[rows.length];
        fixed[0] = true;
        fixed[rows.length - 1] = true;
        for (double line : lines) {
            int nearest = nearest(rows, line);
            if (odd >= 0 && nearest % 2 != odd) {
                nearest += line > rows[nearest] ? 1 : -1;
            }
            boolean inside = nearest > 0 && nearest < rows.length - 1;
            if (inside && !fixed[nearest] && !fixed[nearest - 1] && !fixed[nearest + 1]) {
                to[nearest] = line;
                fixed[nearest] = true;
            }
        }
        between(rows, to, fixed);
        double[] warped = new double[places.length];
        for (int k = 0; k < places.length; k++) {
            warped[k] = to[nearest(rows, places[k])];
        }
        return warped;
    }

    private static void between(double[] rows, double[] to, boolean[] fixed) {
        int last = 0;
        for (int i = 1; i < rows.length; i++) {
            if (fixed[i]) {
                for (int q = last + 1; q < i; q++) {
                    double share = (rows[q] - rows[last]) / (rows[i] - rows[last]);
                    to[q] = to[last] + share * (to[i] - to[last]);
                }
                last = i;
            }
        }
    }

    /** The different places, in order. */
    private static double[] rows(double[] places) {
        TreeSet<Long> rounded = new TreeSet<>();
        for (double place : places) {
            rounded.add(Math.round(place / SAME));
        }
        double[] rows = new double[rounded.size()];
        int count = 0;
        for (long each : rounded) {
            if (count == 0 || each * SAME - rows[count - 1] > 100 * SAME) {
                rows[count++] = each * SAME;
            }
        }
        return Arrays.copyOf(rows, count);
    }

    private static int nearest(double[] rows, double place) {
        int at = Arrays.binarySearch(rows, place);
        int high = Math.min(rows.length - 1, at < 0 ? -at - 1 : at);
        int low = Math.max(0, high - 1);
        return place - rows[low] < rows[high] - place ? low : high;
    }
}
