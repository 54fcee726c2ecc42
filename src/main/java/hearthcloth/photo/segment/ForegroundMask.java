package hearthcloth.photo.segment;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.image.GrayU8;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.ground.GroundLayer;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.BinaryMorphology;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Separates what lies on the ground from the ground. A pixel stands out when its colour differs from the ground, as lit
 * there, by more than the ground's own texture does, measured along the directions in which that texture varies (its
 * Mahalanobis distance).
 */
public final class ForegroundMask {

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final GrayU8 mask;
    private final SegmentParameters parameters;

    private ForegroundMask(LabThumbnail coarse, GroundModel ground, SegmentParameters parameters) {
        this.coarse = coarse;
        this.ground = ground;
        this.parameters = parameters;
        this.mask = new GrayU8(coarse.width, coarse.height);
    }

    /**
     * The shapes beside what is known already.
     *
     * @param known outlines in raw pixels; what lies in them does not stand out
     */
    public static List<Blob> beside(
            List<List<Point>> known, LabThumbnail coarse, GroundModel ground, SegmentParameters parameters) {
        ForegroundMask standouts = new ForegroundMask(coarse, ground, parameters);
        List<double[]> inverses = ground.kinds().stream()
                .map(kind -> inverse3(standouts.covariance(kind)))
                .toList();
        IntStream.range(0, coarse.height).parallel().forEach(y -> standouts.mark(y, inverses));
        known.forEach(standouts::clear);
        return standouts.blobs();
    }

    private void clear(List<Point> outline) {
        List<Point> inside = outline.stream()
                .map(c -> new Point(c.x() / coarse.step, c.y() / coarse.step))
                .toList();
        for (int y = 0; y < mask.height; y++) {
            for (int x = 0; x < mask.width; x++) {
                if (Polygons.inside(inside, x + 0.5, y + 0.5)) {
                    mask.data[y * mask.width + x] = 0;
                }
            }
        }
    }

    private double[] covariance(GroundLayer kind) {
        double[] sums = new double[6];
        long count = 0;
        double limit = kind.reach() * kind.reach() * 1.7;
        float[] at = new float[3];
        for (int y = 0; y < coarse.height; y += 2) {
            for (int x = 0; x < coarse.width; x += 2) {
                if (!kind.isFoundAt(x, y)) {
                    continue;
                }
                kind.at(x, y, at);
                double l = coarse.lab[0].data[y * coarse.width + x] - at[0];
                double a = coarse.lab[1].data[y * coarse.width + x] - at[1];
                double b = coarse.lab[2].data[y * coarse.width + x] - at[2];
                if (l * l + a * a + b * b < limit) {
                    double[] products = {l * l, l * a, l * b, a * a, a * b, b * b};
                    for (int i = 0; i < 6; i++) {
                        sums[i] += products[i];
                    }
                    count++;
                }
            }
        }
        for (int i = 0; i < 6; i++) {
            sums[i] = sums[i] / Math.max(1, count)
                    + (i == 0 || i == 3 || i == 5 ? parameters.foreground().noise() : 0);
        }
        return sums;
    }

    private void mark(int y, List<double[]> inverses) {
        GroundLayer first = ground.kinds().get(0);
        boolean single = ground.kinds().size() == 1;
        double[] inverse = inverses.get(0);
        float[] at = new float[3];
        for (int x = 0; x < coarse.width; x++) {
            int i = y * coarse.width + x;
            boolean out = true;
            if (single || ground.mayBe(0, x, y)) {
                first.at(x, y, at);
                out = isOdd(i, at, inverse);
            }
            if (out && !single && ground.mayBe(1, x, y)) {
                out = isOddToSecond(x, y, inverses);
            }
            mask.data[i] = (byte) (out ? 1 : 0);
        }
    }

    /**
     * Whether a pixel stands out from the second kind of ground too; where both kinds may lie and one is the other in
     * shade, also from all colours between the two.
     */
    private boolean isOddToSecond(int x, int y, List<double[]> inverses) {
        int i = y * coarse.width + x;
        float[] two = new float[3];
        ground.kinds().get(1).at(x, y, two);
        if (!isOdd(i, two, inverses.get(1))) {
            return false;
        }
        if (!ground.shaded() || !ground.mayBe(0, x, y)) {
            return true;
        }
        float[] one = new float[3];
        ground.kinds().get(0).at(x, y, one);
        return isOdd(i, between(i, one, two), inverses.get(0));
    }

    private boolean isOdd(int i, float[] at, double[] inverse) {
        double l = coarse.lab[0].data[i] - at[0];
        double a = coarse.lab[1].data[i] - at[1];
        double b = coarse.lab[2].data[i] - at[2];
        double odd = inverse[0] * l * l
                + inverse[3] * a * a
                + inverse[5] * b * b
                + 2 * (inverse[1] * l * a + inverse[2] * l * b + inverse[4] * a * b);
        return odd
                        > parameters.foreground().deviations()
                                * parameters.foreground().deviations()
                && l * l + a * a + b * b
                        > parameters.foreground().leastDifference()
                                * parameters.foreground().leastDifference();
    }

    /** The colour between two that is nearest to a pixel's; the soft edge of a shadow has such colours. */
    private float[] between(int i, float[] one, float[] two) {
        double along = 0;
        double squares = 1e-6;
        for (int c = 0; c < 3; c++) {
            double way = two[c] - one[c];
            along += (coarse.lab[c].data[i] - one[c]) * way;
            squares += way * way;
        }
        double share = Math.max(0, Math.min(1, along / squares));
        float[] out = new float[3];
        for (int c = 0; c < 3; c++) {
            out[c] = (float) (one[c] + share * (two[c] - one[c]));
        }
        return out;
    }

    /**
     * The shapes that stand out, without lines and lint. Figured cloth may fall apart where a figure looks like the
     * ground: what closing the mask makes into one shape is taken for one piece, and so is what a wider closing makes
     * into one compact shape, unless {@link FragmentGrouping} finds pieces that lie close together.
     */
    private List<Blob> blobs() {
        FloorLineFilter.clear(mask, coarse, ground, parameters);
        RugFigureFilter.clear(mask, coarse, ground, parameters);
        List<GrayU8> shapes = IntStream.of(1, 3)
                .parallel()
                .mapToObj(radius -> BinaryMorphology.filled(opened(
                        BinaryMorphology.closed(mask, radius),
                        parameters.foreground().opening())))
                .toList();
        List<List<Blob>> found = shapes.stream()
                .parallel()
                .map(of -> MaskContours.of(of, coarse, 0, 0))
                .toList();
        FragmentGrouping neighbours = new FragmentGrouping(coarse, ground, parameters.parting());
        List<Blob> out = new ArrayList<>(found.get(0).stream()
                .parallel()
                .flatMap(whole -> parted(whole, shapes.get(0), neighbours).stream())
                .toList());
        for (Blob whole : found.get(1)) {
            List<Blob> parts = partsOf(whole, out);
            if (parts.isEmpty()
                    || (parts.size() > 1
                            && whole.filled() > parameters.parting().compact()
                            && neighbours.within(whole, parts).isEmpty())) {
                out.removeAll(parts);
                out.add(whole);
            }
        }
        return out;
    }

    /** The pieces of one shape. A figure of the ground's colour makes no waist in the mask that is {@code solid}. */
    private List<Blob> parted(Blob whole, GrayU8 solid, FragmentGrouping neighbours) {
        List<Blob> parts = neighbours.within(
                whole, cores(whole, mask, parameters.foreground().apart()));
        if (parts.isEmpty()) {
            parts = neighbours.ofTwoCloths(
                    whole, cores(whole, solid, parameters.foreground().shade()));
        }
        return parts.isEmpty() ? List.of(whole) : parts;
    }

    /** What is left of a shape when it is separated at its waists, found within its own box. */
    private List<Blob> cores(Blob whole, GrayU8 of, int half) {
        Blob.Box box = whole.box();
        int left = (int) Math.max(0, box.left() / coarse.step - 1);
        int top = (int) Math.max(0, box.top() / coarse.step - 1);
        int right = (int) Math.min(mask.width, box.right() / coarse.step + 2);
        int low = (int) Math.min(mask.height, box.low() / coarse.step + 2);
        GrayU8 own = of.subimage(left, top, right, low, null).clone();
        return partsOf(
                whole,
                MaskContours.of(BinaryMorphology.filled(TouchingPieceSplitter.of(own, half)), coarse, left, top));
    }

    private static List<Blob> partsOf(Blob whole, List<Blob> blobs) {
        return blobs.stream().filter(part -> whole.holds(part.inner())).toList();
    }

    /** Removes lines and spurs up to six pixels wide, then lets what is left grow back into its own sharp corners. */
    static GrayU8 opened(GrayU8 filled, int half) {
        GrayU8 core = BinaryMorphology.opened(filled, half);
        for (int round = 0; round < 2; round++) {
            GrayU8 grown = BinaryImageOps.dilate4(core, 1, null);
            for (int i = 0; i < grown.data.length; i++) {
                grown.data[i] &= filled.data[i];
            }
            core = grown;
        }
        return core;
    }

    /** Inverse of a symmetric matrix given and returned as xx, xy, xz, yy, yz, zz. */
    private static double[] inverse3(double[] m) {
        double c0 = m[3] * m[5] - m[4] * m[4];
        double c1 = m[2] * m[4] - m[1] * m[5];
        double c2 = m[1] * m[4] - m[2] * m[3];
        double det = m[0] * c0 + m[1] * c1 + m[2] * c2;
        return new double[] {
            c0 / det,
            c1 / det,
            c2 / det,
            (m[0] * m[5] - m[2] * m[2]) / det,
            (m[1] * m[2] - m[0] * m[4]) / det,
            (m[0] * m[3] - m[1] * m[1]) / det
        };
    }
}
