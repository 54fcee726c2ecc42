package hearthcloth.photo.image;

import hearthcloth.geometry.Point;

/**
 * How the lens distorts: a place that should lie at radius r from the middle (half the diagonal being one) appears at r
 * (1 − kappa r²). Positive kappa is barrel distortion. This is the usual first term of radial distortion with the
 * opposite sign (docs/sources.md#radial-distortion).
 *
 * @param middle of the picture, in pixels
 * @param unit half the picture's diagonal, in pixels
 * @param deviation standard deviation of kappa as estimated
 */
public record LensModel(Point middle, double unit, double kappa, double deviation) {

    /**
     * Steps of Newton's method when a place is straightened; they reach a thousandth of a pixel for any kappa that a
     * telephone's lens has.
     */
    private static final int ROUNDS = 4;

    /**
     * The lens that is assumed before the picture is examined: no distortion, with a deviation of 2 % at the corners
     * (docs/sources.md#lens-distortion).
     */
    public static LensModel unknown(PixelImage picture) {
        return new LensModel(
                new Point(picture.width / 2.0, picture.height / 2.0),
                Math.hypot(picture.width, picture.height) / 2,
                0,
                0.02);
    }

    public LensModel with(double newKappa, double newDeviation) {
        return new LensModel(middle, unit, newKappa, newDeviation);
    }

    public Point straight(Point raw) {
        double x = (raw.x() - middle.x()) / unit;
        double y = (raw.y() - middle.y()) / unit;
        double goal = Math.hypot(x, y);
        double r = goal;
        for (int i = 0; i < ROUNDS; i++) {
            r -= (r * (1 - kappa * r * r) - goal) / (1 - 3 * kappa * r * r);
        }
        double stretch = goal > 1e-12 ? unit * r / goal : unit;
        return middle.plus(x * stretch, y * stretch);
    }

    public Point bent(Point straight) {
        double x = (straight.x() - middle.x()) / unit;
        double y = (straight.y() - middle.y()) / unit;
        double shrink = unit * (1 - kappa * (x * x + y * y));
        return middle.plus(x * shrink, y * shrink);
    }
}
