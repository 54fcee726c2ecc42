package hearthcloth.wrap.drape;

/** Resists bending: three points in a row want to lie straight, softly (XPBD, Macklin et al. 2016). */
final class Bending {

    private final Grid grid;
    private final double along;
    private final double slanting;

    /**
     * The shares of the rigidity that the rows along threads and each of the two along diagonals bear, so that cloth is
     * equally stiff along both: derived from a + 2 b = a/2 + 4 b = 1.
     */
    private static final double ALONG = 2.0 / 3;

    private static final double SLANTING = 1.0 / 6;

    /**
     * Bending for one step.
     *
     * @param softness the compliance over the square of the step's length, for points of mass one
     */
    Bending(Grid grid, double softness) {
        this.grid = grid;
        this.along = softness / ALONG;
        this.slanting = softness / SLANTING;
    }

    void straighten(Sheet sheet) {
        double[] p = sheet.p;
        int[] bends = grid.bends;
        for (int q = 0; q < bends.length; q += 3) {
            int a = bends[q];
            int b = bends[q + 1];
            int c = bends[q + 2];
            double ea = sheet.ease[a];
            double eb = sheet.ease[b];
            double ec = sheet.ease[c];
            double all = ea + 4 * eb + ec;
            if (all == 0) {
                continue;
            }
            double share = 1 / (all + (q < 3 * grid.threadBends ? along : slanting));
            for (int i = 0; i < 3; i++) {
                double d = (p[3 * a + i] - 2 * p[3 * b + i] + p[3 * c + i]) * share;
                p[3 * a + i] -= ea * d;
                p[3 * b + i] += 2 * eb * d;
                p[3 * c + i] -= ec * d;
            }
        }
    }
}
