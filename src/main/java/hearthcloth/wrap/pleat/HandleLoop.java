package hearthcloth.wrap.pleat;

import static hearthcloth.geometry.Vector.UP;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.ReefKnot;
import java.util.ArrayList;
import java.util.List;

/**
 * A handle: two ends go up as an arch and are tied at their tips. Its length follows from what the ends have: a small
 * part goes to the crossing, a knot in their thin tips takes its diameters, a tenth stays free, and the rest, never
 * less than a third, is the handle.
 *
 * @param foot where both ends begin, in space
 * @param along unit vector of the arch, level
 * @param bunch diameter of an end there, in millimetres
 * @param crossing true where each end first crosses to the other's side, as half a knot
 */
public record HandleLoop(Vector foot, Vector along, double bunch, boolean crossing) {

    /** How far beside its middle a handle begins, as a share of the length of an end. */
    private static final double CROSS = 1 / 6.0;

    /**
     * One of the two ends.
     *
     * @param rest its cloth
     * @param from where on the cloth it begins, {@code axis} its corner's direction
     * @param sense +1 where it stands ahead in the handle, −1 behind
     */
    public record End(List<ConvexPolygon> rest, Point from, Point axis, int sense) {

        double length() {
            double most = 0;
            for (ConvexPolygon outline : rest) {
                for (Point corner : outline.corners()) {
                    most = Math.max(most, axis.dot(corner.minus(from)));
                }
            }
            return most;
        }
    }

    /** How the shorter end is divided: to the crossing, to the handle and to the knot. */
    private record Share(double cross, double leg, double knot) {
        static Share of(double length, double most) {
            double cross = Math.min(most, length * CROSS);
            double free = length / 10;
            double leg = Math.max(length / 3, length - cross - free - TIP);
            return new Share(cross, leg, length - cross - free - leg);
        }
    }

    /**
     * The length, in mm, that a reef knot takes of a tip 0.25 mm thick: 7 diameters at the place where the tip is that
     * thick, 49 · 16 τ/π (docs/sources.md#bunch, #knot-take-up).
     */
    private static final double TIP = 49 * 16 * 0.25 / Math.PI;

    /** Lays both ends, adds the facets, and returns the knot. */
    public ReefKnot lay(End first, End second, List<Facet> facets) {
        Share share = Share.of(Math.min(first.length(), second.length()), crossing ? 2 * bunch : 0.2 * bunch);
        KnotEnds tips = new KnotEnds(share.knot / KnotEnds.DIAMETERS);
        Vector across = UP.cross(along);
        Vector top = foot;
        List<ReefKnot.Lead> leads = new ArrayList<>();
        for (End end : List.of(first, second)) {
            // side by side where they cross
            Vector start = foot.plus(across.times(crossing ? end.sense * bunch / 2 : 0));
            FoldedStrip.Path path = path(start, end, share);
            top = new Vector(foot.x(), foot.y(), path.at().z()).plus(UP.times(tips.bunch()));
            double knotted = path.gone();
            Vector side = across.times(end.sense);
            FoldedStrip strip = new FoldedStrip(end.from, end.axis, side, bunch / 2);
            double zero = end.axis.dot(end.from);
            facets.addAll(new KnotEnds(bunch).pack(end.rest, end.from, end.axis, start, along.times(end.sense), side));
            for (ConvexPolygon outline : end.rest) {
                facets.addAll(strip.lay(outline.between(end.axis, zero, zero + knotted), path.runs()));
            }
            Point tied = end.from.plus(end.axis.times(knotted));
            List<ConvexPolygon> tip = end.rest.stream()
                    .map(outline -> outline.above(end.axis, zero + knotted))
                    .filter(outline -> !outline.isEmpty())
                    .toList();
            Vector out = along.times(end.sense);
            facets.addAll(tips.lay(tip, tied, end.axis, top, out, side, Double.POSITIVE_INFINITY));
            leads.add(new ReefKnot.Lead(tied, end.axis));
        }
        // the first of a knot's leads arrives from behind
        List<ReefKnot.Lead> ordered = first.sense < 0 ? leads : List.of(leads.get(1), leads.get(0));
        return new ReefKnot(top, along, UP, tips.bunch(), tips.taken(), 1, ordered);
    }

    /** The path out to its side and up over the middle, in three straight stretches as long as the handle's leg. */
    private FoldedStrip.Path path(Vector start, End end, Share share) {
        Vector ahead = along.times(end.sense);
        String name = "handle " + end.axis;
        double out = share.cross * 0.77;
        Vector wide = start.plus(ahead.times(out)).plus(UP.times(Math.sqrt(share.cross * share.cross - out * out)));
        double low = 0;
        double high = share.leg;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (length(wide, ahead, out, middle) < share.leg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        FoldedStrip.Path path = new FoldedStrip.Path(start, 0);
        Vector at = start;
        List<Vector> places = new ArrayList<>(List.of(wide));
        places.addAll(arch(wide, ahead, out, low));
        for (int i = 0; i < places.size(); i++) {
            Vector way = places.get(i).minus(at).unit();
            path.to(
                    places.get(i),
                    Facet.Part.CORD,
                    new FacetPlane(name + i, way.cross(UP.cross(along)).times(-1)));
            at = places.get(i);
        }
        return path;
    }

    private static List<Vector> arch(Vector wide, Vector ahead, double out, double high) {
        return List.of(
                wide.plus(ahead.times(0.2 * high)).plus(UP.times(0.4 * high)),
                wide.plus(ahead.times(0.05 * high - 0.3 * out)).plus(UP.times(0.85 * high)),
                wide.plus(ahead.times(-out)).plus(UP.times(high)));
    }

    private static double length(Vector wide, Vector ahead, double out, double high) {
        double length = 0;
        Vector at = wide;
        for (Vector place : arch(wide, ahead, out, high)) {
            length += place.minus(at).length();
            at = place;
        }
        return length;
    }
}
