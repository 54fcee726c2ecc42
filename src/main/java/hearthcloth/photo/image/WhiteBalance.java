package hearthcloth.photo.image;

import hearthcloth.colour.Lab;

/**
 * Removes the room's light from a colour. What white paper shows is taken to be white, and where the ground is darker
 * than beside the paper, less light is assumed to fall.
 *
 * <p>Each of X, Y and Z is scaled on its own (von Kries). Without white paper only the shade is removed.
 *
 * @param paper colour of the paper in the picture
 * @param ground colour of the ground round the paper
 */
public record WhiteBalance(Lab paper, Lab ground) {

    /** The colour of office paper under daylight: docs/sources.md#office-paper. */
    public static final Lab PAPER = new Lab(95, 0, 0);

    /** Below this value the cube root of CIELAB is replaced by a straight line (CIE 15, docs/sources.md#lab). */
    private static final double BEND = 6.0 / 29;

    /** The colour as it would look in daylight, given the ground's colour at the same place. */
    public Lab of(Lab seen, Lab groundThere) {
        double shade = Math.max(0.25, Math.min(4, y(ground) / Math.max(1e-3, y(groundThere))));
        double x = cube(fx(seen)) / cube(fx(paper)) * cube(fx(PAPER)) * shade;
        double y = y(seen) / y(paper) * y(PAPER) * shade;
        double z = cube(fz(seen)) / cube(fz(paper)) * cube(fz(PAPER)) * shade;
        double l = Math.max(0, Math.min(100, 116 * root(y) - 16));
        return new Lab(l, 500 * (root(x) - root(y)), 200 * (root(y) - root(z)));
    }

    private static double fy(Lab lab) {
        return (lab.lightness() + 16) / 116;
    }

    private static double fx(Lab lab) {
        return fy(lab) + lab.a() / 500;
    }

    private static double fz(Lab lab) {
        return fy(lab) - lab.b() / 200;
    }

    private static double y(Lab lab) {
        return cube(fy(lab));
    }

    private static double cube(double f) {
        return f > BEND ? f * f * f : Math.max(0, 3 * BEND * BEND * (f - 4.0 / 29));
    }

    private static double root(double t) {
        return t > BEND * BEND * BEND ? Math.cbrt(t) : t / (3 * BEND * BEND) + 4.0 / 29;
    }
}
