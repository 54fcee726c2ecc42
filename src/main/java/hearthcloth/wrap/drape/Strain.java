package hearthcloth.wrap.drape;

/**
 * Keeps the threads of a cloth from stretching: constraints solved one after another, to and fro in turn (Müller et al.
 * 2007, Macklin et al. 2016). Cloth gives way to pushing, since it buckles, and a little to pulling on the bias.
 */
final class Strain {

    /** How much softer cloth is pushed than a point is heavy: it buckles in folds finer than the grid. */
    private final double squeeze;

    private final double bias;

    /** Beyond this share the bias locks. */
    private static final double LOCKED = 0.03;

    private static final double LOCK = 0.3;

    private final Grid grid;

    Strain(Grid grid, double squeeze, double bias) {
        this.grid = grid;
        this.squeeze = squeeze;
        this.bias = bias;
    }

    /** Goes once over all lines, from the first or from the last. */
    void pull(Sheet sheet, boolean forwards) {
        int all = grid.rest.length;
        for (int z = 0; z < all; z++) {
            pull(sheet, forwards ? z : all - 1 - z);
        }
    }

    private void pull(Sheet sheet, int e) {
        int a = grid.lines[2 * e];
        int b = grid.lines[2 * e + 1];
        double ea = sheet.ease[a];
        double eb = sheet.ease[b];
        if (ea + eb == 0) {
            return;
        }
        double[] p = sheet.p;
        double dx = p[3 * b] - p[3 * a];
        double dy = p[3 * b + 1] - p[3 * a + 1];
        double dz = p[3 * b + 2] - p[3 * a + 2];
        double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
        if (length < 1e-9) {
            return;
        }
        double over = length - grid.rest[e];
        double share = over / (ea + eb + softness(e, over)) / length;
        p[3 * a] += share * ea * dx;
        p[3 * a + 1] += share * ea * dy;
        p[3 * a + 2] += share * ea * dz;
        p[3 * b] -= share * eb * dx;
        p[3 * b + 1] -= share * eb * dy;
        p[3 * b + 2] -= share * eb * dz;
    }

    private double softness(int e, double over) {
        if (over < 0) {
            return squeeze;
        }
        if (e < grid.threads) {
            return 0;
        }
        return over > LOCKED * grid.rest[e] ? LOCK : bias;
    }
}
