package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.PixelImage;
import java.util.Arrays;

/**
 * Tells a card from a scrap of the same proportions by its rounded corners.
 *
 * <p>A sharp corner covers what its two sides cover together, however soft the picture is: the product of how each side
 * fades out a little farther along. The area that is missing of that product is what a rounded corner leaves to the
 * ground, (1 − π/4) r². Since an area is counted, this needs no finer picture than finding the sides does.
 */
final class RoundedCorners {

    /** The corner is examined from this far outside both sides to {@link #INSIDE_MM} inside, in millimetres. */
    private static final double OUTSIDE_MM = -1.2;

    private static final double INSIDE_MM = 4.2;
    /**
     * From this far along a side, in millimetres, it is straight; there {@link #STRAIGHT_COUNT} samples are read, and
     * the card's own colour.
     */
    private static final double STRAIGHT_MM = 5;

    private static final int STRAIGHT_COUNT = 9;
    /** From this far outside a side the ground's colour is read, in millimetres. */
    private static final double GROUND_MM = -2.4;
    /** The distance between samples, in millimetres. */
    private static final double STEP_MM = 0.45;

    private final PixelImage picture;
    private final FloorPlane plane;
    private final Point corner;
    private final double right;
    private final double below;
    private final double[] in;
    private final double[] out;

    private RoundedCorners(PixelImage picture, FloorPlane plane, Point corner) {
        this.picture = picture;
        this.plane = plane;
        this.corner = corner;
        right = corner.x() > 0 ? -1 : 1;
        below = corner.y() > 0 ? -1 : 1;
        in = new double[3];
        out = new double[3];
        for (int i = 0; i < STRAIGHT_COUNT; i++) {
            double t = STRAIGHT_MM + i * STEP_MM;
            add(STRAIGHT_MM, t, 0.5 / STRAIGHT_COUNT, in);
            add(t, STRAIGHT_MM, 0.5 / STRAIGHT_COUNT, in);
            add(GROUND_MM, t, 0.5 / STRAIGHT_COUNT, out);
            add(t, GROUND_MM, 0.5 / STRAIGHT_COUNT, out);
        }
    }

    /**
     * About zero when the corners are sharp and about one when they are rounded by {@code radiusMm}: the mean of the
     * middle two of the four corners, so that one may be wrong.
     */
    static double roundness(PixelImage picture, FloorPlane plane, FloorPlane.Turned size, double radiusMm) {
        double missing = (1 - Math.PI / 4) * radiusMm * radiusMm;
        double[] each = FloorPlane.rectangle(size.width(), size.height()).stream()
                .mapToDouble(corner -> new RoundedCorners(picture, plane, corner).missingMm2() / missing)
                .sorted()
                .toArray();
        return (each[1] + each[2]) / 2;
    }

    private double missingMm2() {
        int n = (int) Math.ceil((INSIDE_MM - OUTSIDE_MM) / STEP_MM);
        double[] across = new double[n];
        double[] along = new double[n];
        Arrays.setAll(across, i -> side(i, true));
        Arrays.setAll(along, i -> side(i, false));
        double missing = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                missing += across[i] * along[j] - cover(mm(i), mm(j));
            }
        }
        return missing * STEP_MM * STEP_MM;
    }

    private static double mm(int i) {
        return OUTSIDE_MM + (i + 0.5) * STEP_MM;
    }

    /** How much of a place at this depth under a side is covered, from 0 to 1, where that side is straight. */
    private double side(int depth, boolean left) {
        double sum = 0;
        for (int i = 0; i < STRAIGHT_COUNT; i++) {
            double t = STRAIGHT_MM + i * STEP_MM;
            sum += left ? cover(mm(depth), t) : cover(t, mm(depth));
        }
        return sum / STRAIGHT_COUNT;
    }

    /** One for the card's colour, zero for the ground's. */
    private double cover(double u, double v) {
        double[] seen = new double[3];
        add(u, v, 1, seen);
        double top = 0;
        double bottom = 1;
        for (int c = 0; c < 3; c++) {
            double apart = in[c] - out[c];
            top += (seen[c] - out[c]) * apart;
            bottom += apart * apart;
        }
        return Math.max(-0.3, Math.min(1.3, top / bottom));
    }

    private void add(double u, double v, double weight, double[] sum) {
        Point at = plane.raw(corner.plus(right * u, below * v));
        picture.add(at.x(), at.y(), weight, sum);
    }
}
