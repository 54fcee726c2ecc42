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
import hearthcloth.number.Elementary;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.Motion;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.pleat.Band;
import hearthcloth.wrap.pleat.FoldedSheet;
import hearthcloth.wrap.pleat.FreeEnd;
import hearthcloth.wrap.pleat.HandleLoop;
import hearthcloth.wrap.pleat.KnotEnds;
import hearthcloth.wrap.pleat.Pleating;
import hearthcloth.wrap.pleat.Winding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A bottle standing in the middle. The near flap wraps the near half of it and the far flap the far half, each straight
 * up from the base as a sheet rolled round the body, so that the two cover it; they narrow to the mouth and are knotted
 * over it. What lies to the left and right of them is gathered, taken round the body behind, where the two ends cross,
 * and knotted in front: a straight line on the unrolled body, as {@link Fit} measures it. Body and cords are each exact
 * and continuous; they are parted from each other and, at its rim, from the base, where real cloth is drawn in.
 *
 * <p>The cords lie a little off the body, so their way round is a little longer; they rise less by as much, so that
 * their length is true.
 */
final class BottleFold {

    /** The distance of cords from what they lie on, in millimetres, for the drawing. */
    private static final double OFF = 0.6;

    /** Free ends stand out to both sides of a knot; nothing lies under them over which they could hang. */
    private static final double FLAT = Double.POSITIVE_INFINITY;

    private static final int QUARTER = Band.SIDES / 4;

    private final double radius;
    private final double shoulder;
    private final List<Band> bands;
    private final ConvexPolygon cloth;
    private final KnotEnds ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Facet> loose = new ArrayList<>();

    private BottleFold(Gift.Bottle bottle, ConvexPolygon cloth, KnotEnds ends) {
        this.radius = bottle.diameter().in(Unit.MILLIMETRE) / 2;
        this.shoulder = bottle.shoulder().in(Unit.MILLIMETRE);
        double neck = bottle.neck().in(Unit.MILLIMETRE) / 2;
        double height = bottle.height().in(Unit.MILLIMETRE);
        this.bands =
                Band.profile(new double[][] {{0, 0}, {radius, 0}, {radius, shoulder}, {neck, height}, {0, height}});
        this.cloth = cloth;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        return at(TyingMoment.TIED, fit);
    }

    /** The fold with the second pair only crossed behind, or with the handle made from the first pair. */
    static Fold at(TyingMoment moment, Fit fit) {
        if (!(fit.gift() instanceof Gift.Bottle bottle)) {
            throw new IllegalArgumentException(fit.gift() + " is not a bottle");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        BottleFold fold =
                new BottleFold(bottle, laying.whole(), KnotEnds.of(fit.tail().in(Unit.MILLIMETRE)));
        fold.base();
        List<ConvexPolygon> near = fold.flap(NEAR, 3 * QUARTER);
        List<ConvexPolygon> far = fold.flap(FAR, QUARTER);
        // the outermost strips are shared by both flaps, so every tuck goes under every strip
        fold.facets.sort(Comparator.comparing(facet -> facet.part() != Facet.Part.TUCK));
        List<ReefKnot> knots = new ArrayList<>();
        if (moment == TyingMoment.HANDLE) {
            knots.add(fold.handle(near, far));
        } else {
            fold.end(NEAR, near);
            fold.end(FAR, far);
            knots.add(fold.top());
        }
        if (moment == TyingMoment.CROSSED) {
            fold.behind();
        } else {
            knots.add(fold.round());
        }
        fold.facets.addAll(fold.loose);
        return new Fold(fit, laying, fold.facets, knots);
    }

    /** The cloth to the left or right of the two flaps: beside the base, and beyond each flap's edge. */
    static List<ConvexPolygon> beside(Gift.Bottle bottle, ConvexPolygon cloth, Point way) {
        double r = bottle.diameter().in(Unit.MILLIMETRE) / 2;
        double edge = edge(r);
        return Stream.of(
                        cloth.above(way, r).between(way.left(), -r, r),
                        cloth.above(way, edge).above(way.left(), r),
                        cloth.above(way, edge).below(way.left(), -r))
                .filter(outline -> !outline.isEmpty())
                .toList();
    }

    /**
     * The distance from its middle line at which a flap ends and the cloth that goes round begins: a quarter of the way
     * round the body.
     */
    static double edge(double radius) {
        return strip(radius) * QUARTER;
    }

    /** The width of a strip. */
    private static double strip(double radius) {
        return 2 * radius * Elementary.tan(Band.HALF_ANGLE);
    }

    /** Lays the base, with the corners of the square round it folded away beneath. */
    private void base() {
        ConvexPolygon square = cloth.and(ConvexPolygon.rectangle(-radius, -radius, radius, radius));
        ConvexPolygon base = square;
        for (int i = 0; i < Band.SIDES; i++) {
            base = base.below(Band.way(i), radius);
        }
        FacetPlane plane = new FacetPlane("underneath", UP.times(-1));
        double room = radius * 1.4;
        Vector corner = new Vector(-room / 2, -room / 2, 0);
        FoldedSheet away = new FoldedSheet(
                corner,
                new FoldedSheet.Run(RIGHT, -radius, new Vector(1, 0, 0), room),
                new FoldedSheet.Run(FAR, -radius, new Vector(0, 1, 0), room),
                plane);
        for (ConvexPolygon piece : square.without(base)) {
            facets.addAll(away.outwards(piece));
        }
        Motion flat = new Motion(new Point(0, 0), new Vector(0, 0, 0), new Vector(1, 0, 0), new Vector(0, 1, 0));
        facets.add(new Facet(Facet.Part.BASE, base, flat, plane));
    }

    /**
     * Lays half the bottle, strip by strip; the outermost strips are shared with the other half. Returns what is left
     * over.
     */
    private List<ConvexPolygon> flap(Point way, int middle) {
        double edge = edge(radius);
        ConvexPolygon half = cloth.above(way, radius).between(way.left(), -edge, edge);
        List<ConvexPolygon> spare = new ArrayList<>();
        Band mouth = mouth();
        for (int m = -QUARTER; m <= QUARTER; m++) {
            double beside = m * strip(radius);
            ConvexPolygon own = half.between(way.left(), beside - strip(radius) / 2, beside + strip(radius) / 2);
            int i = Math.floorMod(middle + m, Band.SIDES);
            for (Band band : bands.subList(1, bands.size())) {
                Point from = way.times(band.s0()).plus(way.left().times(beside));
                ConvexPolygon ring = own.between(way, band.s0(), band.s1());
                Pleating pleating = band.pleating(from, way, i);
                if (band.equals(mouth)) {
                    ConvexPolygon shown = pleating.within(ring, 0);
                    add(band.part(), shown, pleating.motion(0), band.plane(i));
                    spare.addAll(shown.isEmpty() ? List.of(ring) : ring.without(shown));
                } else {
                    facets.addAll(pleating.lay(ring, band.part(), band.plane(i)));
                }
            }
            spare.add(own.above(way, mouth.s1()));
        }
        spare.removeIf(ConvexPolygon::isEmpty);
        return spare;
    }

    private Band mouth() {
        return bands.get(bands.size() - 1);
    }

    private void end(Point way, List<ConvexPolygon> spare) {
        Vector out = Vector.flat(way);
        loose.addAll(ends.lay(spare, way.times(mouth().s1()), way, top().at(), out, UP.cross(out), FLAT));
    }

    /** The top knot half undone, its ends gone to each other's side and tied at their tips. */
    private ReefKnot handle(List<ConvexPolygon> near, List<ConvexPolygon> far) {
        HandleLoop loop = new HandleLoop(UP.times(mouth().z1() + OFF), Vector.flat(FAR), ends.bunch(), true);
        HandleLoop.End ahead = new HandleLoop.End(near, NEAR.times(mouth().s1()), NEAR, 1);
        HandleLoop.End behind = new HandleLoop.End(far, FAR.times(mouth().s1()), FAR, -1);
        return loop.lay(behind, ahead, loose);
    }

    private void add(Facet.Part part, ConvexPolygon outline, Motion motion, FacetPlane plane) {
        if (!outline.isEmpty()) {
            facets.add(new Facet(part, outline, motion, plane));
        }
    }

    private ReefKnot top() {
        List<ReefKnot.Lead> leads = Stream.of(NEAR, FAR)
                .map(way -> new ReefKnot.Lead(way.times(mouth().s1()), way))
                .toList();
        Vector at = UP.times(mouth().z1() + ends.bunch());
        return new ReefKnot(at, Vector.flat(FAR), UP, ends.bunch(), ends.taken(), 0, leads);
    }

    /** The course of a cord: a straight line on the unrolled body. */
    private Winding.Line line() {
        double length = Elementary.hypot(shoulder / 2, 1.5 * Math.PI * radius);
        double across = 3 * QUARTER * strip(radius + OFF);
        double rise = Math.sqrt(Math.max(length * length - across * across, shoulder * shoulder / 16));
        return new Winding.Line(Elementary.atan2(rise, across), Elementary.hypot(rise, across));
    }

    private Winding winding(Point way, Winding.Line line) {
        return new Winding(way, radius, radius + OFF, line, 1.2 * ends.bunch());
    }

    /** Gathers a corner and lays it along its line as far as {@code gone} on the cloth. */
    private void wind(Point way, Winding winding, double gone) {
        loose.addAll(winding.lay(cloth.between(way, radius, edge(radius)).between(way.left(), -radius, radius)));
        loose.addAll(winding.lay(cloth.between(way, edge(radius), gone)));
    }

    /** Lays the second pair: gathered, taken round behind the body and knotted in front. */
    private ReefKnot round() {
        Winding.Line line = line();
        Vector front = new Vector(0, -1, 0);
        Vector at =
                front.times(radius + OFF + ends.bunch()).plus(UP.times(line.length() * Elementary.sin(line.angle())));
        List<ReefKnot.Lead> leads = new ArrayList<>();
        for (Point way : List.of(RIGHT, LEFT)) {
            double gone = radius + line.length();
            wind(way, winding(way, line), gone);
            ConvexPolygon rest = cloth.above(way, gone);
            // each end comes out beside its own standing part, which arrives from the other side
            Vector out = Vector.flat(way).times(-1);
            loose.addAll(ends.lay(List.of(rest), way.times(gone), way, at, out, front.cross(out), FLAT, front));
            leads.add(new ReefKnot.Lead(way.times(gone), way));
        }
        return new ReefKnot(at, Vector.flat(RIGHT), front, ends.bunch(), ends.taken(), 0, leads);
    }

    /** Lays the second pair crossed behind the body and held there. */
    private void behind() {
        Winding.Line whole = line();
        Winding.Line line = new Winding.Line(whole.angle(), whole.length() * (QUARTER + 1) / (3 * QUARTER));
        for (Point way : List.of(RIGHT, LEFT)) {
            Winding winding = winding(way, line);
            double gone = radius + line.length();
            wind(way, winding, gone);
            Motion last = winding.motion(QUARTER + 1);
            FreeEnd free = new FreeEnd(
                    way.times(gone), way, last.at(way.times(gone)), last.way(way), last.way(way.left()), last.inside());
            loose.addAll(free.held(cloth.above(way, gone), 0));
        }
    }
}
