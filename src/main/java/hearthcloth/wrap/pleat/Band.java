package hearthcloth.wrap.pleat;

import static hearthcloth.geometry.Vector.UP;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import java.util.ArrayList;
import java.util.List;

/**
 * A ring of a gift that is round about its upright axis, between two heights, drawn as {@link #SIDES} flat strips.
 *
 * @param r0 radius, {@code z0} height and {@code s0} distance along the profile at its lower edge; the others at its
 *     upper one
 */
public record Band(double r0, double z0, double s0, double r1, double z1, double s1) {

    /** Strips round the gift; a multiple of four, so that each corner has one. */
    public static final int SIDES = 24;

    public static final double HALF_ANGLE = Math.PI / SIDES;

    /** The rings between points of a profile, each a radius and a height, from the base to the top. */
    public static List<Band> profile(double[][] places) {
        List<Band> bands = new ArrayList<>();
        double gone = 0;
        for (int i = 1; i < places.length; i++) {
            double[] a = places[i - 1];
            double[] b = places[i];
            double length = Elementary.hypot(b[0] - a[0], b[1] - a[1]);
            if (length > 1e-9) {
                bands.add(new Band(a[0], a[1], gone, b[0], b[1], gone + length));
                gone += length;
            }
        }
        return bands;
    }

    /** The unit vector outwards of strip i, on the cloth and, laid flat, in space. */
    public static Point way(int i) {
        double angle = 2 * Math.PI * i / SIDES;
        return new Point(Elementary.cos(angle), Elementary.sin(angle));
    }

    /** How much half a strip widens for each unit of its length. */
    private double slope() {
        return (r1 - r0) * Elementary.tan(HALF_ANGLE) / (s1 - s0);
    }

    public boolean widens() {
        return slope() > -1e-12;
    }

    public Facet.Part part() {
        return r1 > r0 && z1 - z0 < 1e-9 ? Facet.Part.BASE : r1 < 1e-9 ? Facet.Part.TOP : Facet.Part.WALL;
    }

    private Vector foot(Vector out) {
        return out.times(r0).plus(UP.times(z0));
    }

    private Vector rise(Vector out) {
        return out.times(r1 - r0).plus(UP.times(z1 - z0)).unit();
    }

    /** The plane that faces as strip i does. */
    public FacetPlane plane(int i) {
        Vector out = Vector.flat(way(i));
        return new FacetPlane(
                "strip " + i + "." + s0, rise(out).cross(UP.cross(out)).times(-1));
    }

    /**
     * How cloth is pleated to strip i: side by side for straight walls, otherwise about the point where the strip's
     * edges meet, behind it or ahead.
     *
     * @param from where on the cloth the middle line of the strip reaches this ring
     * @param axis direction of that line on the cloth
     */
    public Pleating pleating(Point from, Point axis, int i) {
        Vector out = Vector.flat(way(i));
        Vector side = UP.cross(out);
        double half = r0 * Elementary.tan(HALF_ANGLE);
        if (Math.abs(slope()) < 1e-12) {
            return new Pleating.Parallel(from, axis, foot(out), rise(out), side, half);
        }
        double ahead = -half / slope();
        double sense = Math.signum(slope());
        return new Pleating.Fan(
                from.plus(axis.times(ahead)),
                axis.times(sense),
                foot(out).plus(rise(out).times(ahead)),
                rise(out).times(sense),
                side.times(sense),
                Elementary.atan(Math.abs(slope())));
    }
}
