package hearthcloth.wrap.drape;

import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.ReefKnot;
import java.util.List;

/** Measures a draped cloth against the limits of {@link Drape.Acceptance}. */
final class DrapeJudge {

    /** Cloth within so many diameters of a bunch from a knot's middle is in the knot's own tangle. */
    private static final double KNOT = 3;

    /** The foot, where nothing is seen, is this many gaps of the grid high. */
    private static final double FOOT = 0.5;

    /** Places looked at along each side of a triangle. */
    private static final int PARTS = 6;

    private final Sheet sheet;
    private final Solid solid;
    private final double scale;

    DrapeJudge(Sheet sheet, Solid solid, double scale) {
        this.sheet = sheet;
        this.solid = solid;
        this.scale = scale;
    }

    Drape.Acceptance of(List<ReefKnot> knots) {
        return new Drape.Acceptance(stretch(), depth() / scale, piercing(knots));
    }

    private double stretch() {
        Grid grid = sheet.grid;
        double most = 0;
        for (int e = 0; e < grid.threads; e++) {
            int a = grid.lines[2 * e];
            int b = grid.lines[2 * e + 1];
            if (!sheet.knotted[a] || !sheet.knotted[b]) {
                most = Math.max(most, place(a).minus(place(b)).length() / grid.rest[e] - 1);
            }
        }
        return most;
    }

    private Vector place(int k) {
        return new Vector(sheet.x[3 * k], sheet.x[3 * k + 1], sheet.x[3 * k + 2]);
    }

    private double depth() {
        int[] corners = sheet.grid.triangles;
        double deepest = 0;
        for (int t = 0; t < corners.length; t += 3) {
            int a = corners[t];
            int b = corners[t + 1];
            int c = corners[t + 2];
            if (!sheet.knotted[a] && !sheet.knotted[b] && !sheet.knotted[c]) {
                deepest = Math.max(deepest, depth(place(a), place(b), place(c)));
            }
        }
        return deepest;
    }

    private double depth(Vector a, Vector b, Vector c) {
        double deepest = 0;
        double[] out = new double[3];
        for (int i = 0; i <= PARTS; i++) {
            for (int j = 0; j <= PARTS - i; j++) {
                double onA = (double) i / PARTS;
                double onB = (double) j / PARTS;
                Vector at = a.times(onA).plus(b.times(onB)).plus(c.times(1 - onA - onB));
                if (at.z() > FOOT * sheet.grid.gap) {
                    deepest = Math.max(deepest, -solid.outside(at.x(), at.y(), at.z(), out));
                }
            }
        }
        return deepest;
    }

    private double piercing(List<ReefKnot> knots) {
        boolean[] pierced = new Piercing(sheet.grid, sheet.x, sheet.knotted).sides();
        int wrong = 0;
        for (int e = 0; e < pierced.length; e++) {
            wrong += pierced[e] && isAway(place(sheet.grid.sides[2 * e]), knots) ? 1 : 0;
        }
        return (double) wrong / pierced.length;
    }

    private boolean isAway(Vector place, List<ReefKnot> knots) {
        return knots.stream()
                .allMatch(knot -> place.times(1 / scale).minus(knot.at()).length() > KNOT * knot.bunch());
    }
}
