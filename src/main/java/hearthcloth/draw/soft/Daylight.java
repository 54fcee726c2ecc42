package hearthcloth.draw.soft;

import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;

/**
 * How light cloth is that faces some way: a window from the near left above, the sky, and light from all round, of which
 * the table throws some back. What the page that turns the gift uses, too.
 */
final class Daylight {

    /** The way to the window. */
    static final Vector WINDOW = new Vector(-0.5, -0.6, 0.9).unit();

    private static final double SUN = 0.557;
    private static final double SKY = 0.477;
    private static final double ROUND_ABOUT = 0.111;

    /** What the table throws back of the sky's, in red, green and blue. */
    private static final double[] TABLE = {0.275, 0.242, 0.195};

    /** Numbers of a screen's colours are about this root of their light. */
    private static final double GAMMA = 2.2;

    /** The roots are looked up, since there are many; as fine as a colour's numbers can tell. */
    private static final int STEPS = 1024;

    private static final double MOST = 1.2;

    private static final double[] ROOTS = roots();

    private Daylight() {}

    private static double[] roots() {
        double[] roots = new double[STEPS + 1];
        for (int i = 1; i <= STEPS; i++) {
            roots[i] = Elementary.pow(MOST * i / STEPS, 1 / GAMMA);
        }
        return roots;
    }

    /** Factors for the numbers of each point's colour; three a point. */
    static double[] on(Shape shape, int side) {
        double[] light = new double[shape.normals.length];
        for (int k = 0; k < light.length; k += 3) {
            double x = side * shape.normals[k];
            double y = side * shape.normals[k + 1];
            double z = side * shape.normals[k + 2];
            double sun = SUN * Math.max(0, x * WINDOW.x() + y * WINDOW.y() + z * WINDOW.z()) + ROUND_ABOUT;
            for (int c = 0; c < 3; c++) {
                light[k + c] = root(sun + SKY * (TABLE[c] + (1 - TABLE[c]) * (z + 1) / 2));
            }
        }
        return light;
    }

    private static double root(double light) {
        double at = Math.max(0, Math.min(1, light / MOST)) * STEPS;
        int below = (int) Math.min(STEPS - 1.0, at);
        return ROOTS[below] + (ROOTS[below + 1] - ROOTS[below]) * (at - below);
    }
}
