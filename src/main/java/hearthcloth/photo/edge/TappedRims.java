package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.LabThumbnail;
import java.util.ArrayList;
import java.util.List;

/**
 * Moves corners that were tapped with a finger to the nearest rims: each side is laid where the colour changes most all along it,
 * no farther off than a finger errs.
 */
public final class TappedRims {

    /** A fingertip on a phone's picture errs by this share of its longer side: 10 of 360 points (common practice, no source). */
    private static final double FINGER = 0.028;

    /** Each end of a side is tried at so many places on each side of its tap. */
    private static final int TRIED = 16;

    /** From where the sides came to lie they are laid once more, this many times as finely. */
    private static final double CLOSER = 5;

    /** Colours are compared this far inside and outside a side, in coarse pixels. */
    private static final double BESIDE = 2;

    /** The share of a side at each end that is left out: other sides and rounded corners begin there. */
    private static final double ENDS = 0.1;

    private static final int SAMPLES = 40;

    /** How much less a rim counts that lies as far off as a finger errs. */
    private static final double FAR = 0.4;

    /** A change of colour that is less than this is no rim, in CIELAB units; the side stays where it was tapped. */
    private static final double LEAST_CHANGE = 3;

    private final LabThumbnail smooth;
    private final double step;

    private TappedRims(LabThumbnail smooth) {
        this.smooth = smooth;
        this.step = smooth.step;
    }

    /**
     * The corners where the rims nearest to the tapped sides cross.
     *
     * @param taps in raw pixels, in order round the sheet
     * @return in raw pixels, in the same order
     */
    public static List<Point> of(LabThumbnail smooth, List<Point> taps) {
        TappedRims rims = new TappedRims(smooth);
        double reach = FINGER * Math.max(smooth.width, smooth.height);
        return rims.near(rims.near(taps, reach), reach / CLOSER);
    }

    private List<Point> near(List<Point> taps, double reach) {
        double inwards = Math.signum(Polygons.signedArea(taps));
        List<Line> sides = new ArrayList<>();
        for (int i = 0; i < taps.size(); i++) {
            Point a = taps.get(i).times(1 / step);
            Point b = taps.get((i + 1) % taps.size()).times(1 / step);
            sides.add(nearest(a, b, reach, inwards));
        }
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < taps.size(); i++) {
            Point cross = sides.get(Math.floorMod(i - 1, sides.size())).crossing(sides.get(i));
            Point tap = taps.get(i);
            Point corner = cross.times(step);
            corners.add(corner.to(tap) < 3 * reach * step ? corner : tap);
        }
        return corners;
    }

    private Line nearest(Point a, Point b, double reach, double inwards) {
        Point along = b.minus(a).times(1 / Math.max(1e-9, a.to(b)));
        Point in = new Point(-along.y() * inwards, along.x() * inwards);
        double most = LEAST_CHANGE;
        Line best = Line.through(a, b);
        for (int i = -TRIED; i <= TRIED; i++) {
            for (int j = -TRIED; j <= TRIED; j++) {
                Point from = a.plus(in.times(reach * i / TRIED));
                Point to = b.plus(in.times(reach * j / TRIED));
                double off = (Math.abs(i) + Math.abs(j)) / (2.0 * TRIED);
                double change = change(from, to, in) * (1 - FAR * off);
                if (change > most) {
                    most = change;
                    best = Line.through(from, to);
                }
            }
        }
        return best;
    }

    /** How much the colour differs between inside and outside, as the mean all along the side, in CIELAB units. */
    private double change(Point a, Point b, Point in) {
        double[] sum = new double[3];
        for (int i = 0; i < SAMPLES; i++) {
            Point at = a.towards(b, ENDS + (1 - 2 * ENDS) * i / (SAMPLES - 1));
            int inside = place(at.plus(in.times(BESIDE)));
            int outside = place(at.plus(in.times(-BESIDE)));
            for (int c = 0; c < 3; c++) {
                sum[c] += smooth.lab[c].data[inside] - smooth.lab[c].data[outside];
            }
        }
        return Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]) / SAMPLES;
    }

    private int place(Point at) {
        int x = (int) Math.max(0, Math.min(smooth.width - 1, at.x()));
        int y = (int) Math.max(0, Math.min(smooth.height - 1, at.y()));
        return y * smooth.width + x;
    }
}
