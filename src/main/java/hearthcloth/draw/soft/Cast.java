package hearthcloth.draw.soft;

import hearthcloth.geometry.Point;
import hearthcloth.number.Elementary;
import java.util.ArrayList;
import java.util.List;

/**
 * What keeps the light from the table, close under the cloth sharp and farther off ever softer: the surface cast onto the
 * table along several shares of the way to the light, each smeared out wider.
 */
final class Cast {

    private static final int DOTS = 128;

    /** The shares of the way, and how wide each is smeared out, in dots. */
    private static final double[] SHARES = {0, 0.14, 0.28, 0.42};

    private static final double WIDER = 1.6;
    private static final int TURNS = 24;

    /** The turn from one smear to the next: they lie evenly, as seeds in a sunflower. */
    private static final double TURN = 2.39996;

    /** How much each of them darkens, and all together at most. */
    private static final double EACH = 2.0 / TURNS / SHARES.length;

    private static final double DARK = 0.34;

    /** So faint it ends, and is no darker for that where it is dark. */
    private static final double FAINT = 0.04;

    /** The height of the table, and how far the shadow's square reaches from the middle, in millimetres. */
    final double floor;

    private final double reach;
    private final float[] dark = new float[DOTS * DOTS];

    Cast(Shape shape) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double wide = 0;
        for (int k = 0; k < shape.places.length; k += 3) {
            low = Math.min(low, shape.places[k + 2]);
            high = Math.max(high, shape.places[k + 2]);
            wide = Math.max(wide, Math.max(Math.abs(shape.places[k]), Math.abs(shape.places[k + 1])));
        }
        this.floor = low - 1;
        this.reach = 1.25 * wide + 0.5 * (high - low);
        for (int n = 0; n < SHARES.length; n++) {
            smear(cast(shape, low, SHARES[n]), 1 + n * WIDER);
        }
        for (int k = 0; k < dark.length; k++) {
            dark[k] = (float) (DARK * (1 - Elementary.pow(1 - EACH, dark[k])));
        }
    }

    /** Where the surface, cast so far, lies on the table. */
    private float[] cast(Shape shape, double low, double share) {
        float[] one = new float[DOTS * DOTS];
        double[] x = new double[3];
        double[] y = new double[3];
        for (int t = 0; t < shape.corners.length; t += 3) {
            for (int c = 0; c < 3; c++) {
                int k = 3 * shape.corners[t + c];
                double fall = (shape.places[k + 2] - low) / Daylight.WINDOW.z() * share;
                x[c] = across(shape.places[k] - Daylight.WINDOW.x() * fall);
                y[c] = down(shape.places[k + 1] - Daylight.WINDOW.y() * fall);
            }
            new Triangle(x, y).dots(DOTS, DOTS, (at, b, c) -> one[at] = 1);
        }
        return one;
    }

    private double across(double x) {
        return (x + reach) / (2 * reach) * DOTS;
    }

    private double down(double y) {
        return (reach - y) / (2 * reach) * DOTS;
    }

    private void smear(float[] one, double wide) {
        for (int i = 0; i < TURNS; i++) {
            double far = wide * Math.sqrt((i + 0.5) / TURNS);
            double right = far * Elementary.cos(i * TURN);
            double below = far * Elementary.sin(i * TURN);
            for (int y = 0; y < DOTS; y++) {
                for (int x = 0; x < DOTS; x++) {
                    dark[y * DOTS + x] += (float) sample(one, x - right, y - below);
                }
            }
        }
    }

    private static double sample(float[] dots, double x, double y) {
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        double upper = at(dots, left, top) + (at(dots, left + 1, top) - at(dots, left, top)) * (x - left);
        double lower = at(dots, left, top + 1) + (at(dots, left + 1, top + 1) - at(dots, left, top + 1)) * (x - left);
        return upper + (lower - upper) * (y - top);
    }

    private static double at(float[] dots, int x, int y) {
        return x < 0 || y < 0 || x >= DOTS || y >= DOTS ? 0 : dots[y * DOTS + x];
    }

    /** How dark the table is at a place of the picture, from 0 to 1. */
    double at(Sight sight, double right, double up) {
        double along = (floor - up * sight.up().z()) / sight.towards().z();
        double x = right * sight.right().x()
                + up * sight.up().x()
                + along * sight.towards().x();
        double y = right * sight.right().y()
                + up * sight.up().y()
                + along * sight.towards().y();
        double here = sample(dark, across(x) - 0.5, down(y) - 0.5);
        return Math.max(0, here - FAINT) * DARK / (DARK - FAINT);
    }

    /** Where it is seen: right and down on the picture, in millimetres. */
    List<Point> seen(Sight sight) {
        List<Point> seen = new ArrayList<>();
        for (int k = 0; k < dark.length; k++) {
            if (dark[k] > FAINT) {
                double x = ((k % DOTS + 0.5) / DOTS * 2 - 1) * reach;
                double y = (1 - (Math.floorDiv(k, DOTS) + 0.5) / DOTS * 2) * reach;
                double right = x * sight.right().x()
                        + y * sight.right().y()
                        + floor * sight.right().z();
                double up = x * sight.up().x()
                        + y * sight.up().y()
                        + floor * sight.up().z();
                seen.add(new Point(right, -up));
            }
        }
        return seen;
    }
}
