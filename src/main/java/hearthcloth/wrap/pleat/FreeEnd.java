package hearthcloth.wrap.pleat;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import java.util.ArrayList;
import java.util.List;

/**
 * A free end beyond its knot: gathered to a point there and fanned open so that a kite with the cloth's own corner at
 * its tip shows. It rises a little, then droops, and hangs down where the gift ends under it. Pleats and bends are
 * straight folds, so the end keeps its whole length and width. How a real end falls is not known; captions say "drawn
 * opened".
 *
 * @param from where on the flat cloth it leaves the knot, {@code at} in space
 * @param axis the corner's direction on the cloth, {@code out} in space
 * @param side unit vector to which the axis's left turns
 * @param up unit vector off the gift
 * @param half half the angle of the kite that shows, in radians
 */
public record FreeEnd(Point from, Point axis, Vector at, Vector out, Vector side, Vector up, double half) {

    /** A quarter of a right angle, with which the pleats end just under the kite's edges. */
    private static final double HALF = Math.PI / 8;

    /**
     * Shares of the length after which the end bends, and its slope from there on in degrees; chosen for the drawing.
     */
    private static final double[][] RESTING = {{0, 28}, {0.2, 16}, {0.4, 2}, {0.6, -12}, {0.8, -24}};

    /** The slope of the end where it hangs down, in degrees; chosen for the drawing. */
    private static final double HANGING = -74;

    /** The least distance between two bends, in millimetres. */
    private static final double SHORTEST = 3;

    public FreeEnd(Point from, Point axis, Vector at, Vector out, Vector side, Vector up) {
        this(from, axis, at, out, side, up, HALF);
    }

    /** A stretch between two bends: where it begins along the end, the place there in space, and its direction. */
    private record Stretch(double begin, Vector there, Vector way) {}

    /**
     * The end as facets.
     *
     * @param length of the end, and {@code room} how far the gift continues under it
     */
    public List<Facet> lay(ConvexPolygon region, double length, double room) {
        return lay(region, stretches(length, room));
    }

    /** The end held out straight by a hand, at this slope in degrees. */
    public List<Facet> held(ConvexPolygon region, double degrees) {
        return lay(region, List.of(new Stretch(0, at, pitched(degrees))));
    }

    /**
     * The end laid over something: up, across it, down again and on along the gift, hanging down where that ends.
     *
     * @param rise how far up, across and down, in millimetres
     */
    public List<Facet> over(ConvexPolygon region, double[] rise, double room) {
        double[] steep = {55, 0, -42};
        List<Stretch> stretches = new ArrayList<>();
        Vector here = at;
        double gone = 0;
        for (int i = 0; i < rise.length; i++) {
            Vector way = pitched(steep[i]);
            stretches.add(new Stretch(gone, here, way));
            here = here.plus(way.times(rise[i]));
            gone += rise[i];
        }
        stretches.add(new Stretch(gone, here, pitched(0)));
        double rest = Math.max(SHORTEST, room - here.minus(at).dot(out));
        stretches.add(new Stretch(gone + rest, here.plus(out.times(rest)), pitched(HANGING)));
        return lay(region, stretches);
    }

    private List<Facet> lay(ConvexPolygon region, List<Stretch> stretches) {
        List<Facet> facets = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            double end = i + 1 < stretches.size() ? stretches.get(i + 1).begin : Double.POSITIVE_INFINITY;
            facets.addAll(stretch(region, stretch, end));
        }
        return facets;
    }

    private List<Stretch> stretches(double length, double room) {
        List<Stretch> stretches = new ArrayList<>();
        Vector here = at;
        double gone = 0;
        for (int i = 0; i < RESTING.length; i++) {
            double end = i + 1 < RESTING.length ? RESTING[i + 1][0] * length : length;
            Vector way = pitched(RESTING[i][1]);
            stretches.add(new Stretch(gone, here, way));
            double along = way.dot(out);
            double reached = here.minus(at).dot(out);
            if (reached + (end - gone) * along > Math.max(0, room)) {
                double before = Math.max(0, (room - reached) / along);
                if (before < SHORTEST) {
                    stretches.remove(stretches.size() - 1);
                    before = 0;
                }
                stretches.add(new Stretch(gone + before, here.plus(way.times(before)), pitched(HANGING)));
                return stretches;
            }
            here = here.plus(way.times(end - gone));
            gone = end;
        }
        return stretches;
    }

    private Vector pitched(double degrees) {
        double angle = degrees * Elementary.DEGREE;
        return out.times(Elementary.cos(angle)).plus(up.times(Elementary.sin(angle)));
    }

    private List<Facet> stretch(ConvexPolygon region, Stretch stretch, double end) {
        Vector origin = stretch.there.minus(stretch.way.times(stretch.begin));
        Pleating.Fan fan = new Pleating.Fan(from, axis, origin, stretch.way, side, half);
        Vector across = side.minus(out.times(side.dot(out)));
        Vector normal = stretch.way.cross(across).unit();
        Vector outwards = normal.dot(up) + 1e-9 * normal.dot(out) < 0 ? normal.times(-1) : normal;
        FacetPlane plane = new FacetPlane("end " + axis + at + stretch.begin, outwards);
        List<Facet> facets = new ArrayList<>();
        for (int far = fan.most(region); far >= 0; far--) {
            for (int k = -far; k <= far; k += Math.max(1, 2 * far)) {
                Point ray = fan.ray(2 * k * half);
                double zero = ray.dot(from);
                ConvexPolygon piece = fan.within(region, k).above(ray, zero + stretch.begin);
                piece = Double.isInfinite(end) ? piece : piece.below(ray, zero + end);
                if (!piece.isEmpty()) {
                    facets.add(new Facet(Facet.Part.TAIL, piece, fan.motion(k), plane));
                }
            }
        }
        return facets;
    }
}
