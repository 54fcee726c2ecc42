package hearthcloth.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * Estimates lens distortion from the rule that cut edges are straight (plumb lines, after Brown 1971).
 *
 * <p>Under a small kappa a side's sagitta changes in proportion, so kappa is a weighted mean of what each side asks for,
 * found robustly because some cloth edges really are curved. A prior keeps it near nought when the picture says little.
 */
final class Straightness {

    private static final double TRIAL = 0.04;
    private static final double PRIOR_DEVIATION = 0.05;
    /** Cloth edges wander: taken as 1/1000 of the length; those that wander more are outvoted. */
    private static final double CLOTH_BOW = 1.0 / 1000;

    /** Paper, cards and mats are cut straighter. */
    private static final double SHEET_BOW = 1.0 / 5000;

    private Straightness() {}

    /** @param sheet sides of the sheet, trusted more; empty when it is not known yet */
    static Lens estimated(Lens start, List<Side> sides, List<Side> sheet, double near) {
        Lens lens = start;
        for (int round = 0; round < 3; round++) {
            lens = improved(lens, sides, sheet, round == 0 ? near * 2 : near);
        }
        return lens;
    }

    private static Lens improved(Lens lens, List<Side> sides, List<Side> sheet, double near) {
        Lens trial = lens.with(lens.kappa() + TRIAL, 0);
        List<double[]> asks = new ArrayList<>();
        for (Side side : sides) {
            int n = side.places().size();
            double length = n < 20 ? 0 : side.places().get(0).to(side.places().get(n - 1));
            if (length < 60) {
                continue;
            }
            double[] now = side.bow(lens, near);
            double[] then = side.bow(trial, near);
            if (now[2] > 0.5 * n) {
                asks.add(new double[] {
                    now[0],
                    (then[0] - now[0]) / TRIAL,
                    Math.hypot(2 * now[1], length * (sheet.contains(side) ? SHEET_BOW : CLOTH_BOW))
                });
            }
        }
        double change = 0;
        double precision = 1;
        double misses = 0;
        for (int round = 0; round < 8; round++) {
            double top = -lens.kappa() / (PRIOR_DEVIATION * PRIOR_DEVIATION);
            double bottom = 1 / (PRIOR_DEVIATION * PRIOR_DEVIATION);
            misses = 0;
            for (double[] ask : asks) {
                double miss = (ask[0] + ask[1] * change) / ask[2];
                double weight = 1 / (1 + miss * miss) / (ask[2] * ask[2]);
                misses += miss * miss / (1 + miss * miss);
                top -= weight * ask[0] * ask[1];
                bottom += weight * ask[1] * ask[1];
            }
            change = top / bottom;
            precision = bottom;
        }
        double spread = 1 + 2 * misses / Math.max(1, asks.size());
        return lens.with(lens.kappa() + change, spread / Math.sqrt(precision));
    }
}
