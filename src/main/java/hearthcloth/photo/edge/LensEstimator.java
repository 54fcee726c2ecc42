package hearthcloth.photo.edge;

import hearthcloth.photo.image.LensModel;
import java.util.List;


/**
 * Estimates lens distortion from the rule that cut edges are straight (plumb lines, after Brown 1971).
 *
 * <p>Under a small kappa a side's sagitta changes in proportion, so kappa is a weighted mean of what each side asks for.
 * Some cloth edges really are curved: sagittas are taken to spread by Student's t with one degree of freedom, whose far
 * ones weigh little (Lange, Little and Taylor 1989). How far cloth edges bow where these pieces were cut, the picture
 * itself tells: of several spreads the likeliest is taken. A prior keeps kappa near nought when the picture says little.
 */
public final class LensEstimator {

    private static final double PRIOR_DEVIATION = 0.08;
    /** Cloth edges bow by this share of their length, more or less: cut with a wheel less, with shears more. */
    private static final double CLOTH_BOW = 1.0 / 2000;

    private static final double[] SPREADS = {0.25, 0.35, 0.5, 0.7, 1, 1.4, 2, 2.8, 4};
    /** Paper, cards and mats are cut straighter. */
    private static final double SHEET_BOW = 1.0 / 5000;
    /** A side that sways bows by this much of its waver. */
    private static final double WAVER_BOW = 2;
    /** What the places' noise leaves open counts this often: a soft edge beside shade bows without noise. */
    private static final double NOISE = 2;

    private static final int ROUNDS = 3;
    private static final int WEIGHINGS = 20;

    private LensEstimator() {}

    /** @param sheet sides of the sheet, trusted more; empty when it is not known yet */
    public static LensModel estimated(LensModel start, List<EdgeFit> sides, List<EdgeFit> sheet, double near) {
        LensModel lens = start;
        for (int round = 0; round < ROUNDS; round++) {
            lens = improved(lens, sides, sheet, round == 0 ? near * 2 : near);
        }
        return lens;
    }

    private static LensModel improved(LensModel lens, List<EdgeFit> sides, List<EdgeFit> sheet, double near) {
        List<Ask> asks = asks(lens, sides, sheet, near);
        Answer best = answer(asks, lens.kappa(), SPREADS[0]);
        for (double spread : SPREADS) {
            Answer answer = answer(asks, lens.kappa(), spread);
            best = answer.likelihood > best.likelihood ? answer : best;
        }
        return lens.with(lens.kappa() + best.change, 1 / Math.sqrt(best.precision));
    }

    private record Answer(double change, double precision, double likelihood) {}

    private static Answer answer(List<Ask> asks, double kappa, double spread) {
        double prior = 1 / (PRIOR_DEVIATION * PRIOR_DEVIATION);
        double change = 0;
        double precision = prior;
        for (int round = 0; round < WEIGHINGS; round++) {
            double top = -kappa * prior;
            double bottom = prior;
            for (Ask ask : asks) {
                double deviation = ask.deviation(spread);
                double weight = 2 / (deviation * deviation + ask.square(change));
                top -= weight * ask.bow.sagitta() * ask.bow.answer();
                bottom += weight * ask.bow.answer() * ask.bow.answer();
            }
            change = top / bottom;
            precision = bottom;
        }
        double likelihood = -0.5 * Math.log(spread) * Math.log(spread);
        for (Ask ask : asks) {
            double deviation = ask.deviation(spread);
            likelihood -= Math.log(deviation) + Math.log1p(ask.square(change) / (deviation * deviation));
        }
        return new Answer(change, precision, likelihood);
    }

    /** @param own what the side's bow may be but for the spread, one deviation in pixels */
    private record Ask(EdgeCurvature bow, double own, double clothBow) {

        double deviation(double spread) {
            return Math.hypot(own, clothBow * spread);
        }

        double square(double change) {
            double left = bow.sagitta() + bow.answer() * change;
            return left * left;
        }
    }

    private static List<Ask> asks(LensModel lens, List<EdgeFit> sides, List<EdgeFit> sheet, double near) {
        return sides.stream()
                .parallel()
                .flatMap(side -> EdgeCurvature.of(side, lens, near).map(bow -> ask(bow, sheet.contains(side))).stream())
                .toList();
    }

    private static Ask ask(EdgeCurvature bow, boolean sheet) {
        double noise = NOISE * bow.deviation();
        return sheet
                ? new Ask(bow, Math.hypot(noise, bow.length() * SHEET_BOW), 0)
                : new Ask(bow, Math.hypot(noise, WAVER_BOW * bow.waver()), bow.length() * CLOTH_BOW);
    }
}
