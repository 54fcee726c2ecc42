package hearthcloth.photo.segment;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.LabThumbnail;
import java.util.ArrayList;
import java.util.List;

/**
 * How the colour changes from outside to inside at places all round a shape, in CIELAB. Uneven light on crumpled ground
 * makes it paler or darker but hardly changes its hue. So paper differs from its ground by the same hue all round, or
 * is paler all round; shapes that folds make do neither.
 *
 * @param changes colour inside less colour outside, one L*, a*, b* for each place
 */
public record RimColourProfile(List<double[]> changes) {

    /** Places for each side of the shape. */
    private static final int PARTS = 4;
    /** Colours are averaged from this distance to {@link #TO} on either side of the rim, in coarse pixels. */
    private static final int FROM = 4;

    private static final int TO = 8;
    /** The mean change of a* and b* must be larger than this, in CIELAB units, to count as a change of hue. */
    private static final double HUE = 1;
    /** No place may have less than this share of the mean change of hue. */
    private static final double EVEN = 0.35;
    /** Paper that does not differ in hue must be paler than this at every place, in points of L*. */
    private static final double PALER = 1.5;
    /** White paper is not darker than its ground by more than this on average, in points of L*. */
    private static final double DARKER = -2;

    public static RimColourProfile of(List<Point> corners, LabThumbnail coarse, OccupancyMap occupied) {
        int outwards = Polygons.signedArea(corners) > 0 ? -1 : 1;
        List<double[]> changes = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            for (int part = 0; part < PARTS; part++) {
                Part place = new Part(a, b, (part + 0.1) / PARTS, (part + 0.9) / PARTS, outwards);
                double[] in = place.mean(-1, coarse, occupied);
                double[] out = place.mean(1, coarse, occupied);
                if (in.length > 0 && out.length > 0) {
                    changes.add(new double[] {in[0] - out[0], in[1] - out[1], in[2] - out[2]});
                }
            }
        }
        return new RimColourProfile(changes);
    }

    /** A stretch of one side of the shape, from one share of its length to another. */
    private record Part(Point a, Point b, double from, double to, int outwards) {

        /**
         * The mean colour on one side of this stretch, taken where no piece lies; empty if a piece lies everywhere
         * there.
         */
        double[] mean(int side, LabThumbnail coarse, OccupancyMap occupied) {
            double length = a.to(b);
            double nx = -(b.y() - a.y()) / length * outwards * side;
            double ny = (b.x() - a.x()) / length * outwards * side;
            double[] sum = new double[3];
            int count = 0;
            for (double share = from; share < to; share += coarse.step / length) {
                for (int t = FROM; t < TO; t++) {
                    Point at = a.towards(b, share).plus(t * coarse.step * nx, t * coarse.step * ny);
                    int x = (int) (at.x() / coarse.step);
                    int y = (int) (at.y() / coarse.step);
                    if (occupied.isFree(x, y)) {
                        for (int c = 0; c < 3; c++) {
                            sum[c] += coarse.lab[c].data[y * coarse.width + x];
                        }
                        count++;
                    }
                }
            }
            return count == 0 ? new double[0] : new double[] {sum[0] / count, sum[1] / count, sum[2] / count};
        }
    }

    /** Whether the inside differs from the outside in the same way everywhere, and is not darker. */
    public boolean isOfOneKind() {
        double lightness = mean(0);
        double a = mean(1);
        double b = mean(2);
        double hue = Math.hypot(a, b);
        boolean oneHue = hue > HUE && changes.stream().allMatch(c -> c[1] * a + c[2] * b > EVEN * hue * hue);
        return changes.size() > 2 * PARTS
                && lightness > DARKER
                && (oneHue || changes.stream().allMatch(c -> c[0] > PALER));
    }

    private double mean(int plane) {
        return changes.stream().mapToDouble(c -> c[plane]).average().orElse(0);
    }
}
