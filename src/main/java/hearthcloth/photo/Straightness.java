package hearthcloth.photo;

import java.util.List;
import java.util.Optional;

/**
 * Estimates lens distortion from the rule that cut edges are straight (plumb lines, after Brown 1971).
 *
 * <p>Under a small kappa a side's sagitta changes in proportion, so kappa is a weighted mean of what each side asks for,
 * found robustly because some cloth edges really are curved. A prior keeps it near nought when the picture says little.
 */
final class Straightness {

    private static final double TRIAL = 0.04;
    /** Shorter sides say nothing about the lens, in pixels. */
    private static final double SHORTEST = 60;

    private static final double PRIOR_DEVIATION = 0.08;
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
        List<Ask> asks = asks(lens, sides, sheet, near);
        double change = 0;
        double precision = 1;
        double misses = 0;
        for (int round = 0; round < 8; round++) {
            double top = -lens.kappa() / (PRIOR_DEVIATION * PRIOR_DEVIATION);
            double bottom = 1 / (PRIOR_DEVIATION * PRIOR_DEVIATION);
            misses = 0;
            for (Ask ask : asks) {
                double miss = (ask.bow + ask.answer * change) / ask.deviation;
                double weight = 1 / (1 + miss * miss) / (ask.deviation * ask.deviation);
                misses += miss * miss / (1 + miss * miss);
                top -= weight * ask.bow * ask.answer;
                bottom += weight * ask.answer * ask.answer;
            }
            change = top / bottom;
            precision = bottom;
        }
        double spread = 0.3 + 1.8 * misses / Math.max(1, asks.size());
        return lens.with(lens.kappa() + change, spread / Math.sqrt(precision));
    }

    /**
     * What one side asks for.
     *
     * @param bow its sagitta now, in pixels
     * @param answer how the sagitta changes with kappa
     * @param deviation of the bow, the cloth's own wandering included
     */
    private record Ask(double bow, double answer, double deviation) {}

    private static List<Ask> asks(Lens lens, List<Side> sides, List<Side> sheet, double near) {
        return sides.stream()
                .parallel()
                .flatMap(side -> ask(side, lens, sheet.contains(side) ? SHEET_BOW : CLOTH_BOW, near).stream())
                .toList();
    }

    private static Optional<Ask> ask(Side side, Lens lens, double bow, double near) {
        int n = side.places().size();
        double length = n < 20 ? 0 : side.places().get(0).to(side.places().get(n - 1));
        double[] now = length < SHORTEST ? new double[3] : side.bow(lens, near);
        if (now[2] <= 0.5 * n) {
            return Optional.empty();
        }
        double answer = (side.bow(lens.with(lens.kappa() + TRIAL, 0), near)[0] - now[0]) / TRIAL;
        return Optional.of(new Ask(now[0], answer, Math.hypot(2 * now[1], length * bow)));
    }
}
