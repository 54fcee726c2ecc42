package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.plane.Homography;
import hearthcloth.photo.plane.MeasuringSheet;
import hearthcloth.photo.plane.SheetSupport;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ejml.simple.SimpleEVD;
import org.ejml.simple.SimpleMatrix;

/**
 * The floor under a measuring sheet that may be bent. Where a mark stands above the floor, it shows farther from the camera's
 * foot than it lies. How the heights vary over the sheet is taken to be a Gaussian process (docs/sources.md#gaussian-process);
 * how high and how rough they are is weighed by how likely they make the marks as seen. Of plane, lens and heights together
 * many samples are drawn that explain the marks; each stands on its own floor ({@link SheetSupport}). Their mean is the
 * floor, and their spread is how uncertain it is, bend and all.
 */
final class SheetBend {

    /** Samples drawn; with these the spread is known to a tenth. */
    private static final int SAMPLES = 64;

    private static final long SEED = 22;
    /** The numbers of the plane, and that of the lens after them. */
    private static final int PLANE = 8;

    private static final int NUMBERS = PLANE + 1;

    /**
     * Paper does not bend quite as the process says. With deviations this much larger, 19 of 20 lengths beside drawn sheets
     * with up to 12 mm of lift lie within twice their deviation (docs/reading.md).
     */
    private static final double WIDER = 1.3;

    /** The marks' corners in the picture and the lens: what a floor is told by. */
    private static final int TOLD = 9;

    private final LensModel lens;
    private final SheetSight sight;
    private final Random chance = new Random(SEED);

    private SheetBend(LensModel lens, List<MarkedSheet.Placed> marks, double focal) {
        this.lens = lens;
        this.sight = SheetSight.of(lens, marks, focal);
    }

    /** Where the corners of the dark rim would show if they lay on the floor, in raw pixels, and through which lens. */
    record Shown(LensModel lens, List<Point> corners) {}

    /**
     * The floor, and how surely.
     *
     * @param shown as it most likely shows, then with each thing that is uncertain one deviation off
     * @param liftMm by how much the highest mark stands above the floor
     */
    record Floor(List<Shown> shown, double liftMm) {}

    /**
     * Finds the floor.
     *
     * @param focal the camera's focal length in pixels, about
     */
    static Floor of(LensModel lens, List<MarkedSheet.Placed> marks, double focal) {
        return new SheetBend(lens, marks, focal).floor();
    }

    private Floor floor() {
        List<BendGuess> guesses = BendGuess.all(sight);
        double most = guesses.stream().mapToDouble(BendGuess::likelihood).max().orElse(0);
        double all = guesses.stream()
                .mapToDouble(guess -> Math.exp(guess.likelihood() - most))
                .sum();
        SimpleMatrix samples = new SimpleMatrix(TOLD, SAMPLES);
        double lift = 0;
        int at = 0;
        double share = 0;
        for (BendGuess guess : guesses) {
            share += Math.exp(guess.likelihood() - most) / all;
            int upTo = (int) Math.round(share * SAMPLES);
            if (upTo > at) {
                SimpleMatrix drawn = guess.drawn(upTo - at, chance);
                for (int s = 0; s < drawn.getNumCols(); s++, at++) {
                    lift += put(drawn, s, samples, at) / SAMPLES;
                }
            }
        }
        return new Floor(shown(samples), lift);
    }

    /** Writes what one sample makes of the floor into a column; returns how high its highest mark stands. */
    private double put(SimpleMatrix drawn, int from, SimpleMatrix samples, int to) {
        double[] heights = new double[sight.places().size()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = drawn.get(NUMBERS + i, from);
        }
        SheetSupport support = SheetSupport.of(sight.places(), heights, SheetSight.MIDDLE);
        LensModel through = lens.with(lens.kappa() + drawn.get(PLANE, from), lens.deviation());
        List<Point> rim = FloorPlane.rectangle(MeasuringSheet.WIDTH_MM, MeasuringSheet.HEIGHT_MM);
        Homography.Eye eye = sight.eye();
        for (int c = 0; c < 4; c++) {
            Point corner = rim.get(c);
            Point low = eye.foot().towards(corner, 1 / (1 - support.at(corner) / eye.height()));
            double[][] by = SheetSight.moves(low);
            double x = low.x();
            double y = low.y();
            for (int k = 0; k < PLANE; k++) {
                x += by[0][k] * drawn.get(k, from);
                y += by[1][k] * drawn.get(k, from);
            }
            Point raw = through.bent(sight.first().straight(new Point(x, y)));
            samples.set(2 * c, to, raw.x());
            samples.set(2 * c + 1, to, raw.y());
        }
        samples.set(TOLD - 1, to, through.kappa());
        double lift = 0;
        for (int i = 0; i < heights.length; i++) {
            lift = Math.max(lift, heights[i] - support.at(sight.places().get(i)));
        }
        return lift;
    }

    private List<Shown> shown(SimpleMatrix samples) {
        SimpleMatrix mean = new SimpleMatrix(TOLD, 1);
        for (int s = 0; s < SAMPLES; s++) {
            mean = mean.plus(samples.getColumn(s).scale(1.0 / SAMPLES));
        }
        SimpleMatrix covariance = new SimpleMatrix(TOLD, TOLD);
        for (int s = 0; s < SAMPLES; s++) {
            SimpleMatrix off = samples.getColumn(s).minus(mean);
            covariance = covariance.plus(off.mult(off.transpose()).scale(1.0 / (SAMPLES - 1)));
        }
        List<Shown> shown = new ArrayList<>();
        shown.add(shown(mean, 0));
        SimpleEVD<SimpleMatrix> parts = covariance.eig();
        for (int k = 0; k < TOLD; k++) {
            double deviation =
                    WIDER * Math.sqrt(Math.max(0, parts.getEigenvalue(k).getReal()));
            shown.add(shown(mean.plus(parts.getEigenVector(k).scale(deviation)), 0));
        }
        return shown;
    }

    private Shown shown(SimpleMatrix told, int column) {
        List<Point> corners = new ArrayList<>();
        for (int c = 0; c < 4; c++) {
            corners.add(new Point(told.get(2 * c, column), told.get(2 * c + 1, column)));
        }
        return new Shown(lens.with(told.get(TOLD - 1, column), 0), corners);
    }
}
