package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One side of a polygon as seen in the picture: places where the colour changes, in raw pixels, each with a weight.
 *
 * <p>Some of the places are wrong (a figure of the fabric, a thread of fringe, a shadow), so the line is found first by
 * consensus and then by weighted least squares (Tukey's biweight, docs/sources.md#robust-fits).
 *
 * @param shift how far the edge lies from where the colour values change when it is judged by light, in pixels, see
 *     {@link SrgbLinear}; signed as {@link Line#off}
 * @param sharpness mean share of the colour change that happens within two pixels, from 0 to 1
 */
public record EdgeFit(List<Point> places, List<Double> weights, double shift, double sharpness) {

    /** Threads shorter than this cannot be told from softness, in pixels. */
    private static final double SHORT = 1.2;
    /** Two ways of telling where a side lies have each about this share of their difference as their error. */
    private static final double AGREED = 0.35;
    /** Places that scatter by more are threads' or shade's, in pixels. */
    private static final double RESTLESS = 0.6;
    /** Places this many steps apart share no noise, since softness and the blocks of a JPEG do not reach as far. */
    private static final int APART = 5;
    /**
     * A cut sways about this many times along a side, so its line is known no better than from as many independent
     * places.
     */
    private static final double SWAYS = 4;

    /** As good as so large a share of a side seen sharply is one whose mean profile is explained. */
    private static final double PLACED = 0.8;

    public EdgeFit {
        places = List.copyOf(places);
        weights = List.copyOf(weights);
    }

    /**
     * The line of a side.
     *
     * @param line in straightened pixels
     * @param scatter of the places used, in pixels
     * @param deviation of the line's offset at its middle, and at its ends for each half length, in pixels
     * @param share of all weight that was used
     * @param fringe how far threads reach beyond it, in pixels; zero for a clean edge
     */
    public record Fit(Line line, double scatter, double deviation, double share, double fringe) {

        /** The fit of a side whose edge does not show. */
        static Fit unseen(Line line, double near, double deviation, double share) {
            return new Fit(line, near, deviation, share, 0);
        }

        /**
         * The same where cloth was told from the shade beside it, along the whole side.
         *
         * @param off where it lies, as {@link Line#off} tells it, in straightened pixels
         * @param within deviation of that place
         */
        Fit placed(double off, double within) {
            return new Fit(line.moved(off), scatter, Math.hypot(deviation, within), Math.max(share, PLACED), fringe);
        }

        /**
         * The same half way to where another way of telling it lies, or as it is.
         *
         * @param off how far that lies, in pixels
         */
        Fit agreed(double off, boolean stays) {
            double apart = AGREED * Math.abs(off);
            return new Fit(stays ? line : line.moved(off / 2), scatter, Math.hypot(deviation, apart), share, fringe);
        }

        Fit moved(double by) {
            return new Fit(line.moved(by), scatter, deviation, share, fringe);
        }

        /**
         * The same with threads or shade beyond it: short ones may be the picture's softness, long ones hide the edge and
         * make it less certain, unless its places lie in a line all the same.
         *
         * @param soft how far anything fades out beyond the line, in pixels
         * @param threads how far threads reach
         */
        Fit faded(double soft, double threads) {
            double hidden = 0.4 * Math.min(soft, SHORT) + 0.06 * Math.max(0, soft - SHORT);
            double told = Math.min(1, scatter / RESTLESS);
            return new Fit(line, scatter, Math.hypot(deviation, hidden * told), share, threads < SHORT ? 0 : threads);
        }
    }

    boolean isUsable() {
        return places.size() >= 6;
    }

    /**
     * Fits the line.
     *
     * @param near how far a place may be off the line and still agree with it, in pixels
     */
    Fit fit(LensModel lens, double near) {
        List<Point> spots = straight(lens);
        double[] weight = weights.stream().mapToDouble(Double::doubleValue).toArray();
        Line line = consensus(spots, weight, near);
        double scale = near;
        double[] used = weight;
        for (int round = 0; round < 5; round++) {
            used = new double[weight.length];
            for (int i = 0; i < used.length; i++) {
                double t = line.off(spots.get(i)) / (3 * scale);
                used[i] = Math.abs(t) >= 1 ? 0 : weight[i] * (1 - t * t) * (1 - t * t);
            }
            line = aligned(Line.fitted(spots, used), line);
            scale = Math.max(0.3, Math.min(near * 1.5, 1.5 * scatter(spots, used, line)));
        }
        double scatter = scatter(spots, used, line);
        double all = Arrays.stream(weight).sum();
        double kept = Arrays.stream(used).sum();
        double independent = Math.max(2, kept / all * spots.size() / 3);
        double noise = Math.hypot(scatter / Math.sqrt(independent), 0.05);
        double waver = waver(line.offs(spots), used);
        return new Fit(line, scatter, Math.hypot(noise, waver / Math.sqrt(SWAYS)), kept / all, 0);
    }

    /**
     * The deviation that places a few steps apart have in common, in pixels: the square root of the covariance of their
     * distances from the line. The picture's noise is not common to them; a cut that sways is.
     */
    static double waver(double[] off, double[] used) {
        double sum = 0;
        double weight = 1e-9;
        for (int i = 0; i + APART < used.length; i++) {
            double both = Math.sqrt(used[i] * used[i + APART]);
            sum += both * off[i] * off[i + APART];
            weight += both;
        }
        return Math.sqrt(Math.max(0, sum / weight));
    }

    List<Point> straight(LensModel lens) {
        List<Point> spots = new ArrayList<>(places.size());
        for (Point place : places) {
            spots.add(lens.straight(place));
        }
        return spots;
    }

    private static Line aligned(Line line, Line like) {
        return line.dx() * like.dx() + line.dy() * like.dy() < 0 ? new Line(line.at(), -line.dx(), -line.dy()) : line;
    }

    private static double scatter(List<Point> spots, double[] used, Line line) {
        double sum = 0;
        double weight = 1e-9;
        for (int i = 0; i < used.length; i++) {
            double off = line.off(spots.get(i));
            sum += used[i] * off * off;
            weight += used[i];
        }
        return Math.sqrt(sum / weight);
    }

    /**
     * The line through two of the places with which most of the others agree; pairs are tried at fixed distances apart.
     */
    private static Line consensus(List<Point> spots, double[] weight, double near) {
        int n = spots.size();
        Line best = Line.through(spots.get(0), spots.get(n - 1));
        double most = -1;
        int stride = Math.max(1, n / 14);
        for (int i = 0; i < n; i += stride) {
            for (int j = i + Math.max(3, n / 3); j < n; j += stride) {
                Line line = Line.through(spots.get(i), spots.get(j));
                double votes = 0;
                for (int k = 0; k < n; k++) {
                    double t = line.off(spots.get(k)) / near;
                    votes += weight[k] * Math.max(0, 1 - t * t);
                }
                if (votes > most) {
                    most = votes;
                    best = line;
                }
            }
        }
        Line through = Line.through(spots.get(0), spots.get(n - 1));
        return aligned(best, through);
    }
}
