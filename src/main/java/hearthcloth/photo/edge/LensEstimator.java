package hearthcloth.photo.edge;

import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.List;

/**
 * Estimates lens distortion from the rule that cut edges are straight (plumb lines, docs/sources.md#plumb-lines).
 *
 * <p>For a small kappa a side's sagitta changes in proportion, so kappa is a weighted mean of what each side demands.
 * Some cloth edges really are curved; sagittas are taken to spread by Student's t with one degree of freedom, which
 * gives far ones little weight (docs/sources.md#robust-fits). How far cloth edges bow where these pieces were cut is
 * taken from the picture itself: of several spreads the likeliest is chosen. A prior keeps kappa near zero when the
 * picture says little.
 */
public final class LensEstimator {

    /** Rounds of straightening and measuring again. */
    private static final int ROUNDS = 3;
    /** Rounds of reweighting within one estimate. */
    private static final int WEIGHINGS = 20;

    private LensEstimator() {}

    /**
     * Estimates the lens.
     *
     * @param sheet sides of the sheet, which are trusted more; empty when it is not known yet
     */
    public static LensModel estimated(
            LensModel start, List<EdgeFit> sides, List<EdgeFit> sheet, double near, EdgeParameters.Lens parameters) {
        LensModel lens = start;
        for (int round = 0; round < ROUNDS; round++) {
            lens = improved(lens, sides, sheet, round == 0 ? near * 2 : near, parameters);
        }
        return lens;
    }

    private static LensModel improved(
            LensModel lens, List<EdgeFit> sides, List<EdgeFit> sheet, double near, EdgeParameters.Lens parameters) {
        List<Ask> asks = asks(lens, sides, sheet, near, parameters);
        Answer best = answer(asks, lens.kappa(), parameters.spreads().get(0), parameters);
        for (double spread : parameters.spreads()) {
            Answer answer = answer(asks, lens.kappa(), spread, parameters);
            best = answer.likelihood > best.likelihood ? answer : best;
        }
        return lens.with(lens.kappa() + best.change, 1 / Math.sqrt(best.precision));
    }

    /**
     * The best change of kappa for one spread of cloth edges, its precision (one over the variance) and its log
     * likelihood.
     */
    private record Answer(double change, double precision, double likelihood) {}

    private static Answer answer(List<Ask> asks, double kappa, double spread, EdgeParameters.Lens parameters) {
        double prior = 1 / (parameters.priorDeviation() * parameters.priorDeviation());
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

    /**
     * What one side demands.
     *
     * @param own deviation of the side's sagitta from everything but the spread of cloth edges, in pixels
     * @param clothBow usual sagitta of a cloth edge of this length, in pixels; zero for the sheet
     */
    private record Ask(EdgeCurvature bow, double own, double clothBow) {

        double deviation(double spread) {
            return Math.hypot(own, clothBow * spread);
        }

        double square(double change) {
            double left = bow.sagitta() + bow.answer() * change;
            return left * left;
        }
    }

    private static List<Ask> asks(
            LensModel lens, List<EdgeFit> sides, List<EdgeFit> sheet, double near, EdgeParameters.Lens parameters) {
        return sides.stream()
                .parallel()
                .flatMap(side -> EdgeCurvature.of(side, lens, near, parameters.side())
                        .map(bow -> ask(bow, sheet.contains(side), parameters))
                        .stream())
                .toList();
    }

    private static Ask ask(EdgeCurvature bow, boolean sheet, EdgeParameters.Lens parameters) {
        double noise = parameters.side().noise() * bow.deviation();
        return sheet
                ? new Ask(bow, Math.hypot(noise, bow.length() * parameters.sheetBow()), 0)
                : new Ask(
                        bow,
                        Math.hypot(noise, parameters.waverBow() * bow.waver()),
                        bow.length() * parameters.clothBow());
    }
}
