package hearthcloth.wrap.drape;

/** Keeps cloth out of the gift and above the table. */
final class Support {

    private final Solid solid;
    private final double table;
    private final double off;
    private final double rub;
    private final double[] out = new double[3];
    private boolean[] byEdge = new boolean[0];

    /**
     * @param table the table's height
     * @param off how far cloth keeps from the gift
     * @param rub the share of a sliding motion that is lost in a step
     */
    Support(Solid solid, double table, double off, double rub) {
        this.solid = solid;
        this.table = table;
        this.off = off;
        this.rub = rub;
    }

    void carry(Sheet sheet) {
        for (int k = 0; k < sheet.points(); k++) {
            if (sheet.ease[k] > 0) {
                carry(sheet, 3 * k);
            }
        }
        if (byEdge.length < sheet.points()) {
            byEdge = new boolean[sheet.points()];
        }
        double[] p = sheet.p;
        for (int k = 0; k < sheet.points(); k++) {
            byEdge[k] = solid.isByAnEdge(p[3 * k], p[3 * k + 1], p[3 * k + 2], 1.5 * sheet.grid.gap);
        }
        int[] lines = sheet.grid.lines;
        for (int e = 0; e < sheet.grid.rest.length; e++) {
            if (byEdge[lines[2 * e]] && byEdge[lines[2 * e + 1]]) {
                carry(sheet, lines[2 * e], lines[2 * e + 1], sheet.grid.gap);
            }
        }
    }

    private void carry(Sheet sheet, int a) {
        double[] p = sheet.p;
        double[] x = sheet.x;
        if (p[a + 2] < table) {
            p[a + 2] = table;
            p[a] += rub * (x[a] - p[a]);
            p[a + 1] += rub * (x[a + 1] - p[a + 1]);
        }
        double inside = solid.outside(p[a], p[a + 1], p[a + 2], out) - off;
        if (inside < 0) {
            double along = 0;
            for (int i = 0; i < 3; i++) {
                p[a + i] -= inside * out[i];
                along += (p[a + i] - x[a + i]) * out[i];
            }
            for (int i = 0; i < 3; i++) {
                p[a + i] -= rub * (p[a + i] - x[a + i] - along * out[i]);
            }
        }
    }

    /** A line across an edge of the gift: its deepest point is brought out. */
    private void carry(Sheet sheet, int a, int b, double gap) {
        double[] p = sheet.p;
        double ea = sheet.ease[a];
        double eb = sheet.ease[b];
        if (ea == 0 || eb == 0) {
            return;
        }
        double deepest = 0.5;
        double least = along(p, a, b, deepest);
        for (double step = 0.25; step > 0.05; step /= 2) {
            double here = deepest;
            for (int way = -1; way < 2; way += 2) {
                double depth = along(p, a, b, here + way * step);
                if (depth < least) {
                    least = depth;
                    deepest = here + way * step;
                }
            }
        }
        double inside = along(p, a, b, deepest) - off;
        if (inside < 0) {
            double f = deepest;
            double share = Math.min(-inside / (ea * (1 - f) * (1 - f) + eb * f * f), gap / 6);
            for (int i = 0; i < 3; i++) {
                p[3 * a + i] += share * ea * (1 - f) * out[i];
                p[3 * b + i] += share * eb * f * out[i];
            }
        }
    }

    private double along(double[] p, int a, int b, double f) {
        return solid.outside(
                p[3 * a] * (1 - f) + p[3 * b] * f,
                p[3 * a + 1] * (1 - f) + p[3 * b + 1] * f,
                p[3 * a + 2] * (1 - f) + p[3 * b + 2] * f,
                out);
    }
}
