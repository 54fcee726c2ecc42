package hearthcloth.photo.edge;

import boofcv.struct.image.GrayF32;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SheetParameters;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Places where the colour steps sharply, however little it changes. Paper's rim makes such a step; a fold of crumpled
 * cloth does not, because its slope goes on to either side. The places are thinned to one pixel across the step, after
 * Canny (docs/sources.md#edges-and-lines).
 */
public final class Edgels {

    /**
     * Half the distance over which a step is measured, in coarse pixels; {@link #FAR} is half the distance over which
     * the slope it may be part of is measured.
     */
    private static final int NEAR = 2;

    private static final int FAR = 6;
    /** One pixel in this many is enough to find the median. */
    private static final int SOME = 37;

    private final LabThumbnail coarse;
    private final float[] steps;
    private final float[] angles;
    private double least;

    /**
     * One place of an edge.
     *
     * @param x in coarse pixels, as y
     * @param angle of the direction in which the colour changes, from 0 to π
     */
    public record Edgel(double x, double y, double angle) {

        Point spot() {
            return new Point(x, y);
        }

        /** The angle to another direction, from 0 to π/2. */
        double turned(double other) {
            double d = Math.abs(angle - other) % Math.PI;
            return Math.min(d, Math.PI - d);
        }
    }

    private Edgels(LabThumbnail coarse) {
        this.coarse = coarse;
        steps = new float[coarse.width * coarse.height];
        angles = new float[steps.length];
    }

    /**
     * All edgels of a picture.
     *
     * @param coarse the smoothed picture
     * @param free whether a pixel may be an edgel
     */
    public static List<Edgel> in(
            LabThumbnail coarse, BiPredicate<Integer, Integer> free, SheetParameters.Edgel parameters) {
        Edgels edgels = new Edgels(coarse);
        IntStream.range(FAR, coarse.height - FAR).parallel().forEach(edgels::row);
        edgels.least = Math.max(parameters.leastStep(), parameters.overNoise() * edgels.usual());
        return IntStream.range(FAR, coarse.height - FAR)
                .parallel()
                .boxed()
                .flatMap(y -> IntStream.range(FAR, coarse.width - FAR)
                        .filter(x -> edgels.isCrest(x, y) && free.test(x, y))
                        .mapToObj(x -> new Edgel(x + 0.5, y + 0.5, edgels.angles[y * coarse.width + x])))
                .toList();
    }

    private double usual() {
        float[] some = new float[(steps.length + SOME - 1) / SOME];
        for (int i = 0; i < some.length; i++) {
            some[i] = steps[i * SOME];
        }
        Arrays.sort(some);
        return some[some.length / 2];
    }

    private void row(int y) {
        for (int x = FAR; x < coarse.width - FAR; x++) {
            int i = y * coarse.width + x;
            double squares = 0;
            double xx = 0;
            double xy = 0;
            double yy = 0;
            for (GrayF32 plane : coarse.lab) {
                squares += square(beyondSlope(plane.data, i, 1)) + square(beyondSlope(plane.data, i, coarse.width));
                double dx = plane.data[i + 1] - plane.data[i - 1];
                double dy = plane.data[i + coarse.width] - plane.data[i - coarse.width];
                xx += dx * dx;
                xy += dx * dy;
                yy += dy * dy;
            }
            steps[i] = (float) Math.sqrt(squares);
            double angle = 0.5 * Math.atan2(2 * xy, xx - yy);
            angles[i] = (float) (angle < 0 ? angle + Math.PI : angle);
        }
    }

    private static double square(double v) {
        return v * v;
    }

    /** Zero on a slope, and the height of the step on a step. */
    private static double beyondSlope(float[] plane, int i, int stride) {
        double near = plane[i + NEAR * stride] - plane[i - NEAR * stride];
        double far = plane[i + FAR * stride] - plane[i - FAR * stride];
        return (near * FAR - far * NEAR) / (FAR - NEAR);
    }

    /**
     * Whether this place has the largest step within {@link #FAR} pixels to either side, since a step overshoots there.
     */
    private boolean isCrest(int x, int y) {
        int i = y * coarse.width + x;
        if (steps[i] <= least) {
            return false;
        }
        double dx = Math.cos(angles[i]);
        double dy = Math.sin(angles[i]);
        for (int t = 1; t <= FAR; t++) {
            int by = (int) Math.round(t * dy) * coarse.width + (int) Math.round(t * dx);
            if (steps[i] < steps[i - by] || steps[i] <= steps[i + by]) {
                return false;
            }
        }
        return true;
    }
}
