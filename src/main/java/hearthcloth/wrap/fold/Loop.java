package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;

import static hearthcloth.wrap.fold.Space.UP;

import java.util.ArrayList;
import java.util.List;

/**
 * A handle: two ends go up as an arch and are tied at their tips. How long it is follows from what the ends have: a small
 * part goes to the crossing, a knot in their thin tips takes its diameters, a tenth stays free, and the rest is the handle,
 * never less than a third.
 *
 * @param foot where both ends begin, in space
 * @param along unit way of the arch, level
 * @param bunch diameter of an end there, millimetres
 * @param crossing true where each end first crosses to the other's side: half a knot
 */
record Loop(Space foot, Space along, double bunch, boolean crossing) {

    /** Where a handle begins beside its middle, in shares of the length of an end. */
    private static final double CROSS = 1 / 6.0;

    /**
     * One of the two ends.
     *
     * @param rest its cloth
     * @param from where on the cloth it begins, {@code axis} its corner's way
     * @param sense +1 where it stands ahead in the handle, −1 behind
     */
    record End(List<Outline> rest, Point from, Point axis, int sense) {

        double length() {
            double most = 0;
            for (Outline outline : rest) {
                for (Point corner : outline.corners()) {
                    most = Math.max(most, axis.dot(corner.minus(from)));
                }
            }
            return most;
        }
    }

    /** How the shorter end is shared out: to the crossing, to the handle and to the knot. */
    private record Share(double cross, double leg, double knot) {
        static Share of(double length, double most) {
            double cross = Math.min(most, length * CROSS);
            double free = length / 10;
            double leg = Math.max(length / 3, length - cross - free - TIP);
            return new Share(cross, leg, length - cross - free - leg);
        }
    }

    /** A reef knot in a tip 0.25 mm thick: its 7 diameters reach where the tip is so thick, 49 · 16 τ/π. */
    private static final double TIP = 49 * 16 * 0.25 / Math.PI;

    /** Lays both ends, adds the facets, and answers the knot. */
    Knot lay(End first, End second, List<Facet> facets) {
        Share share = Share.of(Math.min(first.length(), second.length()), crossing ? 2 * bunch : 0.2 * bunch);
        Ends tips = new Ends(share.knot / Ends.DIAMETERS);
        Space across = UP.cross(along);
        Space top = foot;
        List<Knot.Lead> leads = new ArrayList<>();
        for (End end : List.of(first, second)) {
            // side by side where they cross
            Space start = foot.plus(across.times(crossing ? end.sense * bunch / 2 : 0));
            Strip.Path path = path(start, end, share);
            top = new Space(foot.x(), foot.y(), path.at().z()).plus(UP.times(tips.bunch()));
            double knotted = path.gone();
            Space side = across.times(end.sense);
            Strip strip = new Strip(end.from, end.axis, side, bunch / 2);
            double zero = end.axis.dot(end.from);
            facets.addAll(new Ends(bunch).pack(end.rest, end.from, end.axis, start, along.times(end.sense), side));
            for (Outline outline : end.rest) {
                facets.addAll(strip.lay(outline.between(end.axis, zero, zero + knotted), path.runs()));
            }
            Point tied = end.from.plus(end.axis.times(knotted));
            List<Outline> tip = end.rest.stream()
                    .map(outline -> outline.above(end.axis, zero + knotted))
                    .filter(outline -> !outline.isEmpty())
                    .toList();
            Space out = along.times(end.sense);
            facets.addAll(tips.lay(tip, tied, end.axis, top, out, side, Double.POSITIVE_INFINITY));
            leads.add(new Knot.Lead(tied, end.axis));
        }
        // the first of a knot's leads arrives from behind
        List<Knot.Lead> ordered = first.sense < 0 ? leads : List.of(leads.get(1), leads.get(0));
        return new Knot(top, along, UP, tips.bunch(), tips.taken(), 1, ordered);
    }

    /** Out to its side, and up over the middle in three straight stretches as long as the handle's leg. */
    private Strip.Path path(Space start, End end, Share share) {
        Space ahead = along.times(end.sense);
        String name = "handle " + end.axis;
        double out = share.cross * 0.77;
        Space wide = start.plus(ahead.times(out)).plus(UP.times(Math.sqrt(share.cross * share.cross - out * out)));
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
        Strip.Path path = new Strip.Path(start, 0);
        Space at = start;
        List<Space> places = new ArrayList<>(List.of(wide));
        places.addAll(arch(wide, ahead, out, low));
        for (int i = 0; i < places.size(); i++) {
            Space way = places.get(i).minus(at).unit();
            path.to(
                    places.get(i),
                    Facet.Part.CORD,
                    new Plane(name + i, way.cross(UP.cross(along)).times(-1)));
            at = places.get(i);
        }
        return path;
    }

    private static List<Space> arch(Space wide, Space ahead, double out, double high) {
        return List.of(
                wide.plus(ahead.times(0.2 * high)).plus(UP.times(0.4 * high)),
                wide.plus(ahead.times(0.05 * high - 0.3 * out)).plus(UP.times(0.85 * high)),
                wide.plus(ahead.times(-out)).plus(UP.times(high)));
    }

    private static double length(Space wide, Space ahead, double out, double high) {
        double length = 0;
        Space at = wide;
        for (Space place : arch(wide, ahead, out, high)) {
            length += place.minus(at).length();
            at = place;
        }
        return length;
    }
}
