package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import java.util.List;

/**
 * A reef knot of two gathered ends.
 *
 * @param at its middle
 * @param along unit vector from one standing end to the other; the free ends come out along it, flat
 * @param up unit vector in which it stands off the gift
 * @param bunch diameter of a gathered end, in millimetres
 * @param taken cloth that each end gives to it, in millimetres
 * @param over number of knots that lie under this one
 * @param leads the two ends: first the one that arrives from behind ({@code -along}), then the one from ahead
 */
public record ReefKnot(Vector at, Vector along, Vector up, double bunch, double taken, int over, List<Lead> leads) {

    /** Where on the flat cloth an end reaches its knot, and the unit vector on towards its corner. */
    public record Lead(Point from, Point axis) {

        /** The point of the cloth's middle line at this distance into the knot. */
        public Point after(double gone) {
            return from.plus(axis.times(gone));
        }
    }

    public ReefKnot {
        leads = List.copyOf(leads);
    }

    /** The unit vector across the knot: along, across and up are right-handed. */
    public Vector across() {
        return up.cross(along);
    }
}
