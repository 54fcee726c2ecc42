package hearthcloth.wrap.drape;

import java.util.List;

/** Two pairs of corners lifted, gathered and knotted over a box, one pair after the other. */
final class BoxHands implements Handling {

    static final double LIFT = 0.9;
    static final double TIE = 0.35;

    /** How hard the spare corners are tucked inwards while the second pair rises; in millimetres a second squared. */
    private static final double TUCK = 12000;

    private static final double NEAR = 1e-3;

    private final List<List<Grip>> pairs;
    private final double halfL;
    private final double halfW;
    private final boolean[] under;

    BoxHands(List<List<Grip>> pairs, double halfL, double halfW, Sheet sheet) {
        this.pairs = pairs;
        this.halfL = halfL;
        this.halfW = halfW;
        this.under = new boolean[sheet.points()];
        for (int k = 0; k < under.length; k++) {
            double a = Math.abs(sheet.grid.u[k]) - halfL;
            double b = Math.abs(sheet.grid.v[k]) - halfW;
            under[k] = a < NEAR && b < NEAR;
        }
        for (List<Grip> pair : pairs) {
            for (Grip grip : pair) {
                for (int k : grip.held()) {
                    sheet.knotted[k] |= grip.isKnotted(k);
                }
            }
        }
    }

    private static double begin(int pair) {
        return pair * (LIFT + TIE);
    }

    @Override
    public int phase(double time) {
        return (int) Math.floor(time / (LIFT + TIE) + 1e-9);
    }

    @Override
    public void loosen(double time, Sheet sheet) {
        for (int k = 0; k < under.length; k++) {
            sheet.loose[k] = sheet.knotted[k];
        }
        for (int pair = 0; pair < pairs.size(); pair++) {
            for (Grip grip : pairs.get(pair)) {
                for (int k = 0; k < under.length && phase(time) == pair; k++) {
                    sheet.loose[k] |= grip.isTail(k);
                }
            }
        }
    }

    @Override
    public double busy() {
        return begin(pairs.size());
    }

    @Override
    public void hold(double time, Sheet sheet) {
        for (int k = 0; k < under.length; k++) {
            if (under[k]) {
                sheet.ease[k] = 0;
            }
        }
        for (int pair = 0; pair < pairs.size(); pair++) {
            double gone = time - begin(pair);
            if (gone >= 0) {
                for (Grip grip : pairs.get(pair)) {
                    grip.hold(Grip.smooth(gone / LIFT), Grip.smooth((gone - LIFT) / TIE));
                }
            }
        }
    }

    @Override
    public void pull(double time, Sheet sheet, int k, double[] pull) {
        tuck((time - begin(1)) / LIFT, sheet, k, pull);
    }

    private void tuck(double gone, Sheet sheet, int k, double[] pull) {
        double a = Math.abs(sheet.grid.u[k]) - halfL;
        double b = Math.abs(sheet.grid.v[k]) - halfW;
        if (sheet.knotted[k] || a <= 0 || b <= 0 || gone < 0.05 || gone > 1.1) {
            return;
        }
        double strength = TUCK * Grip.smooth((gone - 0.05) / 0.25) * Grip.smooth((1.1 - gone) / 0.2);
        boolean byEnd = b > a;
        double in = Math.max(0, halfW - (byEnd ? a : b));
        if (Math.abs(sheet.x[3 * k + 1]) > in) {
            pull[1] = -Math.signum(sheet.grid.v[k]) * strength;
        }
        if (byEnd && Math.abs(sheet.x[3 * k]) > halfL + 0.25 * sheet.grid.gap) {
            pull[0] = -Math.signum(sheet.grid.u[k]) * strength;
        }
    }
}
