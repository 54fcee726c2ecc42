package hearthcloth.photo;

import java.util.List;

/**
 * Tells a card from a scrap of the same proportions by its rounded corners: just inside where the sides would cross, a
 * card already shows the ground.
 */
final class RoundedCorners {

    /** Where to look, in millimetres in from both sides: outside the arc, inside a sharp corner. */
    private static final double PROBE_MM = 0.55;

    private static final double INSIDE_MM = 5;
    private static final double OUTSIDE_MM = -2.5;

    private RoundedCorners() {}

    /** Nought when all four corners are rounded, one when all are sharp. */
    static double sharpness(Picture picture, Plane plane, Plane.Turned size) {
        double sum = 0;
        for (Spot corner : Plane.rectangle(size.width(), size.height())) {
            double right = corner.x() > 0 ? -1 : 1;
            double below = corner.y() > 0 ? -1 : 1;
            double[] in = colour(picture, plane, corner.plus(right * INSIDE_MM, below * INSIDE_MM));
            double[] out = colour(picture, plane, corner.plus(right * OUTSIDE_MM, below * OUTSIDE_MM));
            double[] probe = colour(picture, plane, corner.plus(right * PROBE_MM, below * PROBE_MM));
            double top = 0;
            double bottom = 1;
            for (int c = 0; c < 3; c++) {
                top += (probe[c] - out[c]) * (in[c] - out[c]);
                bottom += (in[c] - out[c]) * (in[c] - out[c]);
            }
            sum += Math.max(0, Math.min(1, top / bottom));
        }
        return sum / 4;
    }

    private static double[] colour(Picture picture, Plane plane, Spot floor) {
        Spot raw = plane.raw(floor);
        double[] sum = new double[3];
        for (Spot at : List.of(raw, raw.plus(0.5, 0), raw.plus(-0.5, 0), raw.plus(0, 0.5), raw.plus(0, -0.5))) {
            picture.add(at.x(), at.y(), 0.2, sum);
        }
        return sum;
    }
}
