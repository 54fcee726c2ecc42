package hearthcloth.wrap.tie;

import static hearthcloth.geometry.Vector.UP;
import static hearthcloth.wrap.pleat.Panels.FAR;
import static hearthcloth.wrap.pleat.Panels.LEFT;
import static hearthcloth.wrap.pleat.Panels.NEAR;
import static hearthcloth.wrap.pleat.Panels.RIGHT;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.pleat.Ear;
import hearthcloth.wrap.pleat.FoldedStrip;
import hearthcloth.wrap.pleat.KnotEnds;
import hearthcloth.wrap.pleat.Panels;
import java.util.ArrayList;
import java.util.List;

/**
 * The ties of a box set on the diagonal, as the first derivation folds them (docs/sources.md#box-fold): flaps straight
 * up the walls and over the top, the four spare corners ({@link Ear}) folded inside, all continuous. It is taken rather
 * than the second derivation's fold, which slits the cloth from the rim outwards, because here nothing is cut; only
 * where a knotted flap is drawn in to its knot is the cloth parted, along the flap's own edges above the rim, where
 * real cloth puckers.
 *
 * <p>Left and right flaps that go to a knot are drawn in: pleated under from the top's corners to the knot. The near
 * and far flaps of the four-corner and two-knot ties lie flat beneath them, so what shows on the top is one triangle or
 * trapezium for each flap.
 */
final class BoxFold {

    /** The distance of cords from what they lie on, in millimetres, for the drawing. */
    static final double OFF = 0.6;

    private final Tie tie;
    private final Panels panels;
    private final double halfL;
    private final double halfW;
    private final double height;
    private final ConvexPolygon cloth;
    private final KnotEnds ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<ReefKnot> knots = new ArrayList<>();

    private BoxFold(Fit fit, Gift.Box box, ConvexPolygon cloth) {
        this.tie = fit.tie();
        this.panels = Panels.of(box, cloth);
        this.halfL = panels.halfL();
        this.halfW = panels.halfW();
        this.height = panels.height();
        this.cloth = cloth;
        this.ends = KnotEnds.of(fit.tail().in(Unit.MILLIMETRE));
    }

    static Fold of(Fit fit) {
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        if (!(fit.gift() instanceof Gift.Box box)) {
            throw new IllegalArgumentException(fit.gift() + " is not a box");
        }
        BoxFold fold = new BoxFold(fit, box, laying.whole());
        fold.build();
        return new Fold(fit, laying, fold.facets, fold.knots);
    }

    private void build() {
        facets.add(panels.base());
        Ear nearRight = ear(RIGHT, NEAR);
        Ear nearLeft = ear(LEFT, NEAR);
        Ear farRight = ear(RIGHT, FAR);
        Ear farLeft = ear(LEFT, FAR);
        for (Ear ear : List.of(nearRight, nearLeft, farRight, farLeft)) {
            facets.addAll(ear.wallB());
            facets.addAll(ear.wallA());
        }
        List.of(NEAR, FAR, RIGHT, LEFT).forEach(way -> facets.addAll(panels.wall(way)));
        switch (tie) {
            case ERRAND -> errand(nearRight, nearLeft, farRight, farLeft);
            case FLAT -> flat(nearRight, nearLeft, farRight, farLeft);
            default -> tied(nearRight, nearLeft, farRight, farLeft);
        }
    }

    private double half(Point way) {
        return panels.half(way);
    }

    /** How far a flap lies over the top before it ends in a knot; infinite when it is only laid. */
    private double reach(Point way) {
        boolean side = way.y() == 0;
        return switch (tie) {
            case FLAT -> Double.POSITIVE_INFINITY;
            case ERRAND -> side ? halfL : Double.POSITIVE_INFINITY;
            case TWO_KNOT -> halfW;
            default -> side ? halfL : halfW;
        };
    }

    /**
     * The ear at a corner. Ears lie inside the left and right flaps, except the far ones of the flat wrap, which lie
     * inside the far flap, since that is last.
     */
    private Ear ear(Point side, Point end) {
        boolean inFar = tie == Tie.FLAT && end.equals(FAR);
        Point a = inFar ? end : side;
        Point b = inFar ? side : end;
        ConvexPolygon spare = cloth.above(a, half(a)).above(b, half(b));
        double pleat = tie == Tie.ERRAND || tie == Tie.FLAT ? 2 * half(b) : half(b);
        return new Ear(
                a, b, half(a), half(b), height, pleat, spare, height + reach(a), height + reach(b), Panels.Sides.BOX);
    }

    private List<Facet> top(Point way) {
        return Double.isInfinite(reach(way)) ? panels.laid(way) : panels.top(way, reach(way));
    }

    private void tied(Ear nearRight, Ear nearLeft, Ear farRight, Ear farLeft) {
        underFlaps(nearRight, nearLeft, farRight, farLeft);
        if (tie == Tie.TWO_KNOT) {
            knotsOnTheRidge();
            return;
        }
        Vector lower = new Vector(0, 0, height + ends.bunch());
        Vector upper = new Vector(0, 0, height + 3 * ends.bunch());
        for (Point way : List.of(NEAR, FAR, RIGHT, LEFT)) {
            Vector at = way.x() == 0 ? lower : upper;
            facets.addAll(end(way, at, Vector.flat(way), Vector.flat(way.left()), half(way)));
        }
        knots.add(new ReefKnot(
                lower, Vector.flat(FAR), UP, ends.bunch(), ends.taken(), 0, List.of(lead(NEAR), lead(FAR))));
        knots.add(new ReefKnot(
                upper, Vector.flat(RIGHT), UP, ends.bunch(), ends.taken(), 1, List.of(lead(LEFT), lead(RIGHT))));
    }

    /**
     * Lays the ears under near and far that are drawn in with left and right; the cloth is parted where these would
     * enclose them.
     */
    private void underFlaps(Ear nearRight, Ear nearLeft, Ear farRight, Ear farLeft) {
        for (Ear ear : List.of(farRight, farLeft, nearRight, nearLeft)) {
            facets.addAll(ear.topB());
            facets.addAll(ear.topA());
            facets.addAll(ear.topC());
        }
        facets.addAll(top(NEAR));
        facets.addAll(top(FAR));
        facets.addAll(panels.drawnIn(RIGHT, reach(RIGHT)));
        facets.addAll(panels.drawnIn(LEFT, reach(LEFT)));
    }

    private void errand(Ear nearRight, Ear nearLeft, Ear farRight, Ear farLeft) {
        underFlaps(nearRight, nearLeft, farRight, farLeft);
        Vector at = new Vector(0, 0, height + ends.bunch());
        for (Point way : List.of(RIGHT, LEFT)) {
            facets.addAll(end(way, at, Vector.flat(way), Vector.flat(way.left()), halfL));
        }
        knots.add(new ReefKnot(
                at, Vector.flat(RIGHT), UP, ends.bunch(), ends.taken(), 0, List.of(lead(LEFT), lead(RIGHT))));
    }

    private void flat(Ear nearRight, Ear nearLeft, Ear farRight, Ear farLeft) {
        facets.addAll(top(NEAR));
        facets.addAll(nearRight.topC());
        facets.addAll(nearLeft.topC());
        facets.addAll(nearRight.topB());
        facets.addAll(nearRight.topA());
        facets.addAll(top(RIGHT));
        facets.addAll(nearLeft.topB());
        facets.addAll(nearLeft.topA());
        facets.addAll(top(LEFT));
        for (Ear ear : List.of(farLeft, farRight)) {
            facets.addAll(ear.topC());
        }
        for (Ear ear : List.of(farLeft, farRight)) {
            facets.addAll(ear.topB());
            facets.addAll(ear.topA());
        }
        facets.addAll(top(FAR));
    }

    /** Near and far cross in the middle and turn along the top, near to the right, far to the left. */
    private void knotsOnTheRidge() {
        double out = halfL - halfW;
        double z = height + ends.bunch();
        for (Point way : List.of(NEAR, FAR)) {
            Point toward = way.left();
            Vector along = Vector.flat(toward);
            Point origin = way.times(half(way) + height + reach(way));
            ConvexPolygon rest = beyond(way);
            ConvexPolygon cord = rest.below(way, way.dot(origin) + out);
            FacetPlane plane = new FacetPlane("cord " + way, UP);
            FoldedStrip.Path path =
                    new FoldedStrip.Path(UP.times(height + OFF), 0).on(along, out, Facet.Part.CORD, plane);
            FoldedStrip strip = new FoldedStrip(origin, way, Vector.flat(way), ends.bunch());
            facets.addAll(strip.lay(cord, path.runs()));
            Point knot = origin.plus(way.times(out));
            Vector at = along.times(out).plus(UP.times(z));
            ConvexPolygon end = rest.above(way, way.dot(knot));
            // this end runs back over the whole top before it can hang down
            facets.addAll(ends.lay(end, knot, way, at, along.times(-1), Vector.flat(way), out + halfL));
            facets.addAll(end(toward, at, along, Vector.flat(way), halfW));
            knots.add(new ReefKnot(
                    at, along, UP, ends.bunch(), ends.taken(), 0, List.of(new ReefKnot.Lead(knot, way), lead(toward))));
        }
    }

    private ReefKnot.Lead lead(Point way) {
        return new ReefKnot.Lead(way.times(half(way) + height + reach(way)), way);
    }

    private List<Facet> end(Point way, Vector at, Vector out, Vector side, double edge) {
        Point origin = way.times(half(way) + height + reach(way));
        return ends.lay(beyond(way), origin, way, at, out, side, edge);
    }

    /** The corner's cloth beyond the knot's place, parted from its neighbours' at p = q. */
    private ConvexPolygon beyond(Point way) {
        Point left = way.left();
        ConvexPolygon rest = cloth.above(way, half(way) + height + reach(way));
        double bound = half(left) - half(way);
        return rest.below(left.minus(way), bound).below(left.times(-1).minus(way), bound);
    }
}
