package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.PixelImage;
import java.util.Arrays;


/**
 * Tells a card from a scrap of the same proportions by its rounded corners.
 *
 * <p>A sharp corner covers what its two sides cover together, however soft the picture is: the product of how each side
 * fades out a little farther along. What is missing of that is the part a rounded corner leaves to the ground,
 * (1 − π/4) r². Counting an area, it needs no finer picture than finding the sides does.
 */
final class RoundedCorners {

    /** What is looked at: from so far outside both sides to so far inside, in millimetres. */
    private static final double OUTSIDE_MM = -1.2;

    private static final double INSIDE_MM = 4.2;
    /** Where the sides are straight already, and the card's own colour is read. */
    private static final double STRAIGHT_MM = 5;

    private static final int STRAIGHT_COUNT = 9;
    private static final double GROUND_MM = -2.4;
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

    /** About nought when the corners are sharp, about one when they are rounded by {@code radiusMm}; one may be odd. */
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

    /** How much of a place so deep under a side is covered, where that side is straight. */
    private double side(int depth, boolean left) {
        double sum = 0;
        for (int i = 0; i < STRAIGHT_COUNT; i++) {
            double t = STRAIGHT_MM + i * STEP_MM;
            sum += left ? cover(mm(depth), t) : cover(t, mm(depth));
        }
        return sum / STRAIGHT_COUNT;
    }

    /** One for the card's colour, nought for the ground's. */
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
