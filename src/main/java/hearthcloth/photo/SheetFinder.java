package hearthcloth.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Finds the reference among the shapes: a four-sided one that a camera could have made of the sheet's proportions; of
 * several, the whitest and plainest when the sheet is paper, the truest in proportion otherwise.
 */
final class SheetFinder {

    /** How far proportions and right angles may be off, as a share; A4 and Letter are 0.09 apart. */
    private static final double MOST_SKEW = 0.045;

    /** What sharp corners cost a shape that should have rounded ones: enough to rule it out. */
    private static final double SHARP_COST = 40;

    /** How much more being large counts when any rectangle may be the reference. */
    private static final double LARGER = 3;

    private final Picture picture;
    private final Coarse coarse;
    private final Lens lens;
    private final double[] focals;

    SheetFinder(Picture picture, Coarse coarse, Lens lens, Optional<Double> focalShare) {
        this.picture = picture;
        this.coarse = coarse;
        this.lens = lens;
        double side = 2 * Math.max(lens.middle().x(), lens.middle().y());
        this.focals = focalShare
                .map(f -> DoubleStream.of(0.96, 1, 1.04).map(s -> s * f * side))
                .orElse(DoubleStream.of(0.6, 0.66, 0.72, 0.78, 0.86, 1, 1.2).map(f -> f * side))
                .toArray();
    }

    /**
     * The sheet as found.
     *
     * @param corners raw pixels, matching (0,0), (w,0), (w,h), (0,h) of {@code size}
     * @param skew what is left of wrong proportions
     */
    record Found(int index, List<Spot> corners, Plane.Turned size, double skew, double score, double deviation) {}

    /** @param shapes traced polygons, of any number of corners; a cut-off one is an empty place in the list */
    Optional<Found> among(List<Traced> shapes, Sheet sheet) {
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            Traced shape = shapes.get(i);
            if (shape.corners().size() == 4 && convex(shape.corners())) {
                Found candidate = candidate(i, shape, sheet);
                if (candidate.skew <= MOST_SKEW && candidate.score < 6) {
                    found.add(candidate);
                }
            }
        }
        return found.stream().min(Comparator.comparingDouble(Found::score));
    }

    private static boolean convex(List<Spot> corners) {
        double sign = Math.signum(Shapes.signedArea(corners));
        for (int i = 0; i < 4; i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % 4);
            Spot c = corners.get((i + 2) % 4);
            if (sign * ((b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x())) <= 0) {
                return false;
            }
        }
        return true;
    }

    private Found candidate(int index, Traced shape, Sheet sheet) {
        List<Spot> corners = new ArrayList<>(shape.corners());
        if (Shapes.signedArea(corners) < 0) {
            java.util.Collections.reverse(corners);
        }
        Plane.Turned upright = new Plane.Turned(sheet.widthMm(), sheet.heightMm());
        Plane.Turned lying = new Plane.Turned(sheet.heightMm(), sheet.widthMm());
        double one = skew(corners, upright);
        double two = skew(corners, lying);
        double skew = Math.min(one, two);
        double scatter =
                shape.fits().stream().mapToDouble(Side.Fit::scatter).average().orElse(9);
        double score = skew / MOST_SKEW * (sheet.white() ? 1 : 3) + scatter / 3 + plainness(corners, sheet.white());
        double share = Math.abs(Shapes.signedArea(corners)) / (lens.unit() * lens.unit());
        score -= (sheet.white() ? 1 : LARGER) * (Math.log10(share) + 2);
        Plane.Turned size = one <= two ? upright : lying;
        if (sheet.cornerRadius().isPositive() && skew <= MOST_SKEW) {
            Plane plane = Plane.of(lens, corners, size.width(), size.height());
            score += SHARP_COST * Math.max(0, RoundedCorners.sharpness(picture, plane, size) - 0.5);
        }
        return new Found(index, corners, size, skew, score, shape.worstDeviation());
    }

    private double skew(List<Spot> corners, Plane.Turned size) {
        List<Spot> centred = corners.stream()
                .map(lens::straight)
                .map(c -> c.plus(-lens.middle().x(), -lens.middle().y()))
                .toList();
        Homography view = Homography.of(Plane.rectangle(size.width(), size.height()), centred);
        double least = Double.MAX_VALUE;
        for (double focal : focals) {
            least = Math.min(least, view.skew(focal));
        }
        return least;
    }

    /** Low for plain shapes, and for white paper only if bright and without colour. */
    private double plainness(List<Spot> corners, boolean white) {
        double[] mean = new double[3];
        double squares = 0;
        int count = 0;
        for (int i = 1; i < 12; i++) {
            for (int j = 1; j < 12; j++) {
                Spot top = corners.get(0).towards(corners.get(1), i / 12.0);
                Spot low = corners.get(3).towards(corners.get(2), i / 12.0);
                Spot at = top.towards(low, j / 12.0);
                int x = Math.max(0, Math.min(coarse.width - 1, (int) (at.x() / coarse.step)));
                int y = Math.max(0, Math.min(coarse.height - 1, (int) (at.y() / coarse.step)));
                for (int c = 0; c < 3; c++) {
                    double v = coarse.lab[c].data[y * coarse.width + x];
                    mean[c] += v;
                    squares += c == 0 ? 0.25 * v * v : v * v;
                }
                count++;
            }
        }
        double spread = squares / count;
        for (int c = 0; c < 3; c++) {
            mean[c] /= count;
            spread -= c == 0 ? 0.25 * mean[c] * mean[c] : mean[c] * mean[c];
        }
        double figure = Math.sqrt(Math.max(0, spread)) / 4;
        return white ? figure + (95 - mean[0]) / 12 + Math.hypot(mean[1], mean[2]) / 8 : figure;
    }
}
