package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How much a side is bowed: its sagitta, from a parabola fitted robustly to its places (Tukey's biweight,
 * docs/sources.md#robust-fits).
 *
 * @param sagitta in pixels, after straightening with the lens at hand
 * @param answer change of the sagitta for a change of the lens's kappa by one
 * @param deviation of the sagitta that the noise of the places leaves, in pixels
 * @param waver how far the side sways about its parabola, root mean square, in pixels
 * @param length of the side in pixels
 */
record EdgeCurvature(double sagitta, double answer, double deviation, double waver, double length) {

    /** Rounds of reweighting. */
    private static final int ROUNDS = 6;
    /** Neighbouring places share pixels: this many together count as one independent place. */
    private static final double ALIKE = 3;
    /**
     * The change of kappa by which {@code answer} is found; it is small beside what would bend a side out of a
     * parabola's shape.
     */
    private static final double TRIAL = 0.01;

    /**
     * Measures one side; empty when it is too short or too few places agree.
     *
     * @param near how far a place may be off a side and still belong to it, in pixels
     */
    static Optional<EdgeCurvature> of(EdgeFit side, LensModel lens, double near, EdgeParameters.Side parameters) {
        int n = side.places().size();
        if (n < parameters.fewest() || side.places().get(0).to(side.places().get(n - 1)) < parameters.shortest()) {
            return Optional.empty();
        }
        Line line = side.fit(lens, near).line();
        List<Point> spots = side.straight(lens);
        Parabola parabola = new Parabola(line, spots);
        double[] off = line.offs(spots);
        double[] weight = new double[n];
        for (int i = 0; i < n; i++) {
            weight[i] = Math.abs(off[i]) < parameters.farthest() * near ? 1 : 0;
        }
        double[] left = off;
        for (int round = 0; round < ROUNDS; round++) {
            left = parabola.left(off, weight);
            double scatter = Math.max(parameters.leastScatter(), scatter(left, weight));
            for (int i = 0; i < n; i++) {
                double t = left[i] / (parameters.cut() * scatter);
                weight[i] = Math.abs(t) >= 1 ? 0 : (1 - t * t) * (1 - t * t);
            }
        }
        return bow(side, lens, parabola, off, weight, parameters);
    }

    private static Optional<EdgeCurvature> bow(
            EdgeFit side,
            LensModel lens,
            Parabola parabola,
            double[] off,
            double[] weight,
            EdgeParameters.Side parameters) {
        double[] left = parabola.left(off, weight);
        double[] other = parabola.line.offs(side.straight(lens.with(lens.kappa() + TRIAL, 0)));
        double sagitta = parabola.sagitta(off, weight);
        double answer = (parabola.sagitta(other, weight) - sagitta) / TRIAL;
        double deviation = Math.max(parameters.leastScatter(), scatter(left, weight))
                * Math.sqrt(ALIKE / parabola.strength(weight));
        return sum(weight) < parameters.leastShare() * weight.length
                ? Optional.empty()
                : Optional.of(
                        new EdgeCurvature(sagitta, answer, deviation, EdgeFit.waver(left, weight), parabola.length));
    }

    private static double scatter(double[] left, double[] weight) {
        double squares = 0;
        for (int i = 0; i < left.length; i++) {
            squares += weight[i] * left[i] * left[i];
        }
        return Math.sqrt(squares / Math.max(1e-9, sum(weight)));
    }

    private static double sum(double[] values) {
        return Arrays.stream(values).sum();
    }

    /** Parabolas over one line; places along it run from −1 to 1. */
    private static final class Parabola {

        private final Line line;
        private final double length;
        private final double[] along;
        private final double[] square;

        Parabola(Line line, List<Point> spots) {
            this.line = line;
            Point first = spots.get(0);
            Point last = spots.get(spots.size() - 1);
            length = first.to(last);
            double middle = line.along(first.towards(last, 0.5));
            along = spots.stream()
                    .mapToDouble(spot -> 2 * (line.along(spot) - middle) / length)
                    .toArray();
            square = Arrays.stream(along).map(s -> s * s).toArray();
        }

        /**
         * The square of the position along the line, less the part that a straight line explains, by weighted least
         * squares.
         */
        private double[] curve(double[] weight) {
            return straightened(square, weight);
        }

        private double[] straightened(double[] values, double[] weight) {
            double w = 1e-9;
            double s = 0;
            double v = 0;
            for (int i = 0; i < values.length; i++) {
                w += weight[i];
                s += weight[i] * along[i];
                v += weight[i] * values[i];
            }
            double ss = 1e-9;
            double sv = 0;
            for (int i = 0; i < values.length; i++) {
                double d = along[i] - s / w;
                ss += weight[i] * d * d;
                sv += weight[i] * d * (values[i] - v / w);
            }
            double[] out = new double[values.length];
            for (int i = 0; i < values.length; i++) {
                out[i] = values[i] - v / w - sv / ss * (along[i] - s / w);
            }
            return out;
        }

        /** How firmly the places determine the sagitta: its deviation is theirs divided by the square root of this. */
        double strength(double[] weight) {
            double[] curve = curve(weight);
            double strength = 1e-9;
            for (int i = 0; i < curve.length; i++) {
                strength += weight[i] * curve[i] * curve[i];
            }
            return strength;
        }

        double sagitta(double[] off, double[] weight) {
            return sagitta(off, weight, curve(weight));
        }

        private static double sagitta(double[] off, double[] weight, double[] curve) {
            double sum = 0;
            double strength = 1e-9;
            for (int i = 0; i < curve.length; i++) {
                sum += weight[i] * curve[i] * off[i];
                strength += weight[i] * curve[i] * curve[i];
            }
            return sum / strength;
        }

        /** What remains of the distances when the best parabola is taken away, in pixels. */
        double[] left(double[] off, double[] weight) {
            double[] curve = curve(weight);
            double sagitta = sagitta(off, weight, curve);
            double[] left = straightened(off, weight);
            for (int i = 0; i < left.length; i++) {
                left[i] -= sagitta * curve[i];
            }
            return left;
        }
    }
}
