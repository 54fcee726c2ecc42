package hearthcloth.wrap.drape;

/**
 * Keeps cloth off cloth. In a step, pairs that come nearer than the cloth is thick are pushed apart; at its end no pair
 * may have changed sides, so that what lay through nothing before lies through nothing after: points that would pass
 * through cloth go on together with it instead, as Bridson et al. 2002 do for the last few
 * (docs/sources.md#drape).
 *
 * <p>Neither does without the other: of the sides of two draped boxes (25 points a side) 0.5 and 1.4 % pass through cloth
 * with both, 10 % where nothing is pushed, 1.7 and 2.9 % where pairs may change sides.
 */
final class Contact {

    /** The share of an overlap that is undone in a step. */
    private static final double FIRM = 0.8;

    /** The share of a push that gives no speed. */
    private static final double DEAD = 0.85;

    private static final double RUB = 0.12;

    /** Lines nearer to parallel than this sine's square have no clear way apart; points and triangles hold them. */
    private static final double PARALLEL = 0.01;

    private static final int ROUNDS = 24;

    private final Neighbours near;
    private final double most;
    private final double[] share = new double[4];
    private final double[] way = new double[3];
    private final Ints turned = new Ints();

    /**
     * @param most the farthest a pair is pushed in one step
     */
    Contact(Neighbours near, double most) {
        this.near = near;
        this.most = most;
    }

    /** Pushes near pairs apart. */
    void part(Sheet sheet) {
        int all = near.count();
        for (int i = 0; i < all; i++) {
            if (meet(sheet.p, i, 0)) {
                double gap = gap(sheet.p, i) * near.side()[i];
                double thick = thickness(sheet, i);
                if (gap < thick) {
                    push(sheet, i, Math.min(thick - gap, most) * FIRM * near.side()[i]);
                }
            }
        }
    }

    private double thickness(Sheet sheet, int i) {
        int[] of = near.points();
        double least = sheet.thickness[of[4 * i]];
        for (int q = 1; q < 4; q++) {
            least = Math.min(least, sheet.thickness[of[4 * i + q]]);
        }
        return least;
    }

    /** Fills shares and way of a pair; false where the nearest points lie farther than {@code beyond} outside it. */
    private boolean meet(double[] p, int i, double beyond) {
        int[] of = near.points();
        int q = 4 * i;
        return i < near.faces()
                ? face(p, of[q], of[q + 1], of[q + 2], of[q + 3], beyond)
                : lines(p, of[q], of[q + 1], of[q + 2], of[q + 3], beyond);
    }

    private boolean face(double[] p, int a, int b, int c, int k, double beyond) {
        double ux = p[3 * b] - p[3 * a];
        double uy = p[3 * b + 1] - p[3 * a + 1];
        double uz = p[3 * b + 2] - p[3 * a + 2];
        double vx = p[3 * c] - p[3 * a];
        double vy = p[3 * c + 1] - p[3 * a + 1];
        double vz = p[3 * c + 2] - p[3 * a + 2];
        double rx = p[3 * k] - p[3 * a];
        double ry = p[3 * k + 1] - p[3 * a + 1];
        double rz = p[3 * k + 2] - p[3 * a + 2];
        double uu = ux * ux + uy * uy + uz * uz;
        double uv = ux * vx + uy * vy + uz * vz;
        double vv = vx * vx + vy * vy + vz * vz;
        double ru = rx * ux + ry * uy + rz * uz;
        double rv = rx * vx + ry * vy + rz * vz;
        double det = uu * vv - uv * uv;
        if (det < 1e-12 * uu * vv) {
            return false;
        }
        double onB = (ru * vv - rv * uv) / det;
        double onC = (rv * uu - ru * uv) / det;
        double onA = 1 - onB - onC;
        if (onA < -beyond || onB < -beyond || onC < -beyond) {
            return false;
        }
        shares(-onA, -onB, -onC, 1);
        across(ux, uy, uz, vx, vy, vz, Math.sqrt(det));
        return true;
    }

    private boolean lines(double[] p, int a, int b, int c, int d, double beyond) {
        double ux = p[3 * b] - p[3 * a];
        double uy = p[3 * b + 1] - p[3 * a + 1];
        double uz = p[3 * b + 2] - p[3 * a + 2];
        double vx = p[3 * d] - p[3 * c];
        double vy = p[3 * d + 1] - p[3 * c + 1];
        double vz = p[3 * d + 2] - p[3 * c + 2];
        double rx = p[3 * a] - p[3 * c];
        double ry = p[3 * a + 1] - p[3 * c + 1];
        double rz = p[3 * a + 2] - p[3 * c + 2];
        double uu = ux * ux + uy * uy + uz * uz;
        double uv = ux * vx + uy * vy + uz * vz;
        double vv = vx * vx + vy * vy + vz * vz;
        double ru = rx * ux + ry * uy + rz * uz;
        double rv = rx * vx + ry * vy + rz * vz;
        double det = uu * vv - uv * uv;
        if (det < PARALLEL * uu * vv) {
            return false;
        }
        double s = (uv * rv - ru * vv) / det;
        double t = (uu * rv - uv * ru) / det;
        if (s < -beyond || s > 1 + beyond || t < -beyond || t > 1 + beyond) {
            return false;
        }
        shares(1 - s, s, t - 1, -t);
        across(ux, uy, uz, vx, vy, vz, Math.sqrt(det));
        return true;
    }

    /** The way at right angles to two others, whose cross product is so long. */
    private void across(double ux, double uy, double uz, double vx, double vy, double vz, double length) {
        way[0] = (uy * vz - uz * vy) / length;
        way[1] = (uz * vx - ux * vz) / length;
        way[2] = (ux * vy - uy * vx) / length;
    }

    private void shares(double a, double b, double c, double d) {
        share[0] = a;
        share[1] = b;
        share[2] = c;
        share[3] = d;
    }

    /** The distance between the pair's nearest points along {@link #way}. */
    private double gap(double[] p, int i) {
        int[] of = near.points();
        double sum = 0;
        for (int q = 0; q < 4; q++) {
            int k = 3 * of[4 * i + q];
            sum += share[q] * (p[k] * way[0] + p[k + 1] * way[1] + p[k + 2] * way[2]);
        }
        return sum;
    }

    private void push(Sheet sheet, int i, double by) {
        int[] of = near.points();
        double sum = 0;
        for (int q = 0; q < 4; q++) {
            sum += sheet.ease[of[4 * i + q]] * share[q] * share[q];
        }
        if (sum < 1e-9) {
            return;
        }
        double[] slide = new double[3];
        for (int q = 0; q < 4; q++) {
            int k = of[4 * i + q];
            double l = by * sheet.ease[k] * share[q] / sum;
            for (int c = 0; c < 3; c++) {
                slide[c] += share[q] * (sheet.p[3 * k + c] - sheet.x[3 * k + c]);
                sheet.p[3 * k + c] += l * way[c];
                sheet.from[3 * k + c] += DEAD * l * way[c];
            }
        }
        double along = slide[0] * way[0] + slide[1] * way[1] + slide[2] * way[2];
        for (int q = 0; q < 4; q++) {
            int k = of[4 * i + q];
            double l = RUB * sheet.ease[k] * share[q] / sum;
            for (int c = 0; c < 3; c++) {
                sheet.p[3 * k + c] -= l * (slide[c] - along * way[c]);
            }
        }
    }

    /** Lets no pair pass through another in this step, as far as held points leave it another way. */
    void keepApart(Sheet sheet) {
        turned.clear();
        boolean[] moved = new boolean[sheet.points()];
        int bad = round(sheet, 0, moved, moved);
        for (int round = 1; round < ROUNDS && bad > 0; round++) {
            boolean[] next = new boolean[sheet.points()];
            bad = round(sheet, round, moved, next);
            moved = next;
        }
        for (int i = 0; i < turned.count(); i++) {
            int pair = turned.held()[i];
            near.side()[pair] = (byte) (near.volume(sheet.p, pair) < 0 ? -1 : 1);
        }
    }

    /** Looks at all pairs, or in later rounds at those of points that were moved in the one before. */
    private int round(Sheet sheet, int round, boolean[] moved, boolean[] next) {
        int bad = 0;
        int[] of = near.points();
        int all = near.count();
        for (int i = 0; i < all; i++) {
            int q = 4 * i;
            if (round > 0 && !moved[of[q]] && !moved[of[q + 1]] && !moved[of[q + 2]] && !moved[of[q + 3]]) {
                continue;
            }
            double after = near.volume(sheet.p, i) * near.side()[i];
            if (after <= 0) {
                turned.add(i);
                if (crosses(sheet, i, after)) {
                    together(sheet, i, round);
                    bad++;
                    for (int k = q; k < q + 4; k++) {
                        next[of[k]] = true;
                    }
                }
            }
        }
        return bad;
    }

    private final double[] then = new double[12];

    /** Whether the pair meets within its bounds at the moment its volume is nothing. */
    private boolean crosses(Sheet sheet, int i, double after) {
        double before = near.volume(sheet.x, i) * near.side()[i];
        double at = before <= 0 ? 0 : before / (before - after);
        int[] of = near.points();
        for (int q = 0; q < 4; q++) {
            int k = of[4 * i + q];
            for (int c = 0; c < 3; c++) {
                then[3 * q + c] = sheet.x[3 * k + c] + at * (sheet.p[3 * k + c] - sheet.x[3 * k + c]);
            }
        }
        return i < near.faces() ? face(then, 0, 1, 2, 3, 0.01) : lines(then, 0, 1, 2, 3, 0.01);
    }

    /** The four go the same way; in the last rounds they stay where they were. */
    private void together(Sheet sheet, int i, int round) {
        int[] of = near.points();
        double held = 0;
        for (int q = 0; q < 4; q++) {
            held += sheet.ease[of[4 * i + q]] == 0 ? 1 : 0;
        }
        for (int c = 0; c < 3; c++) {
            double mean = 0;
            for (int q = 0; q < 4; q++) {
                int k = of[4 * i + q];
                double weight = held == 0 ? 0.25 : sheet.ease[k] == 0 ? 1 / held : 0;
                mean += weight * (sheet.p[3 * k + c] - sheet.x[3 * k + c]);
            }
            for (int q = 0; q < 4; q++) {
                int k = of[4 * i + q];
                if (sheet.ease[k] > 0) {
                    sheet.p[3 * k + c] = sheet.x[3 * k + c] + (round < ROUNDS / 2 || held > 0 ? mean : 0);
                }
            }
        }
    }
}
