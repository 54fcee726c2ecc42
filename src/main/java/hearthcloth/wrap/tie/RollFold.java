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
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.pleat.FoldedStrip;
import hearthcloth.wrap.pleat.FreeEnd;
import hearthcloth.wrap.pleat.KnotEnds;
import hearthcloth.wrap.pleat.Tube;
import java.util.ArrayList;
import java.util.List;

/**
 * A roll on the left–right diagonal. In the roll wrap the cloth is wound from the near tip to the far one. The ends are
 * folded in over the discs and brought back along the roll as cords to its middle, crossed there and taken half a round
 * to the knot; it is drawn turned over, as it ends, with the knot on top. In the two-knot wrap near and far meet on top
 * after half a round each and turn along the roll to the two knots. The tube's wall is one exact, continuous sheet; the
 * ends are parted from it at the rim, where real cloth is gathered.
 */
final class RollFold {

    /** The distance of cords from what they lie on, in millimetres, for the drawing. */
    private static final double OFF = 0.6;

    /** The slope at which a hand holds an end that is not tied yet, in degrees; chosen for the drawing. */
    private static final double HELD = 62;

    private final TyingMoment moment;
    private final double radius;
    private final double length;
    private final ConvexPolygon cloth;
    private final KnotEnds ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Facet> loose = new ArrayList<>();
    private final List<ReefKnot> knots = new ArrayList<>();

    private RollFold(TyingMoment moment, Gift.Roll roll, ConvexPolygon cloth, KnotEnds ends) {
        this.moment = moment;
        this.radius = roll.diameter().in(Unit.MILLIMETRE) / 2;
        this.length = roll.length().in(Unit.MILLIMETRE);
        this.cloth = cloth;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        return at(TyingMoment.TIED, fit);
    }

    /** The fold at a moment on the way. */
    static Fold at(TyingMoment moment, Fit fit) {
        if (!(fit.gift() instanceof Gift.Roll roll)) {
            throw new IllegalArgumentException(fit.gift() + " is not a roll");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        RollFold fold = new RollFold(
                moment, roll, laying.whole(), KnotEnds.of(fit.tail().in(Unit.MILLIMETRE)));
        if (fit.tie() == Tie.TWO_KNOT) {
            fold.twoKnot();
        } else {
            fold.wound();
        }
        fold.facets.addAll(fold.loose);
        return new Fold(fit, laying, fold.facets, moment == TyingMoment.TIED ? fold.knots : List.of());
    }

    /** Half a cord's width; on a thin roll no wider than can lie on it. */
    private double cord() {
        return Math.min(ends.bunch(), 0.7 * radius);
    }

    private static int sense(Point way) {
        return way.x() < 0 ? -1 : 1;
    }

    /** The half of the roll on one side of the middle. */
    private Tube tube(Point way, Vector down) {
        return new Tube(
                "tube",
                new Vector(0, 0, radius),
                Vector.flat(way),
                down,
                new Vector(0, -down.z(), 0),
                sense(way),
                0,
                radius);
    }

    private ConvexPolygon half(Point way) {
        return cloth.above(way, 0);
    }

    /**
     * Lays the wound cloth. Once it is tied the roll is turned over, so that the knot is on top; before that it lies as
     * it was wound.
     */
    private void wound() {
        boolean tied = moment == TyingMoment.TIED;
        Vector upper = UP.times(tied ? -1 : 1);
        for (Point way : List.of(LEFT, RIGHT)) {
            Tube tube = tube(way, upper.times(-1));
            facets.addAll(tube.wall(half(way).below(way, length / 2)));
            facets.addAll(tube.disc(half(way), length / 2));
            double gone = length / 2 + radius;
            FoldedStrip.Path path = back(way, upper, gone, length / 2);
            double turn = path.gone();
            Vector side = Vector.flat(way.left()).times(tied ? -1 : 1);
            ConvexPolygon rest = half(way).above(way, gone);
            FoldedStrip cord = new FoldedStrip(new Point(0, 0), way, side, cord());
            loose.addAll(cord.lay(rest.below(way, turn), path.runs()));
            ConvexPolygon end = rest.above(way, turn);
            if (moment == TyingMoment.ENDS_IN) {
                FreeEnd free = new FreeEnd(way.times(turn), way, path.at(), Vector.flat(way), side, UP);
                loose.addAll(free.held(end, HELD));
            } else {
                crossed(way, end, turn, upper);
            }
        }
        if (tied) {
            double reach = length + 2 * radius + Math.PI * radius;
            knots.add(knot(
                    top(0),
                    FAR,
                    new ReefKnot.Lead(LEFT.times(reach), LEFT),
                    new ReefKnot.Lead(RIGHT.times(reach), RIGHT)));
        }
    }

    /** Lays the cords that turn square in the middle, the left end one way round and the right end the other. */
    private void crossed(Point way, ConvexPolygon end, double turn, Vector upper) {
        int round = sense(way);
        Vector from = UP.times(radius).plus(upper.times(radius));
        Tube tube = tube(way, upper);
        FoldedStrip strip = new FoldedStrip(new Point(0, 0), way, Vector.flat(RIGHT), cord());
        if (moment == TyingMoment.CROSSED) {
            FoldedStrip.Path path = tube.arc(from, turn, round, Tube.SIDES / 8);
            double gone = path.gone();
            loose.addAll(strip.lay(end.below(way, gone), path.runs()));
            Vector out = new Vector(0, -round, 0);
            FreeEnd free = new FreeEnd(way.times(gone), way, path.at(), out, Vector.flat(RIGHT), UP);
            loose.addAll(free.held(end.above(way, gone), 0));
            return;
        }
        double knot = turn + Math.PI * radius;
        FoldedStrip.Path path = tube.arc(from, turn, round, Tube.SIDES / 2);
        loose.addAll(strip.lay(end.below(way, knot), path.runs()));
        Vector out = new Vector(0, round, 0);
        loose.addAll(ends.lay(end.above(way, knot), way.times(knot), way, top(0), out, Vector.flat(RIGHT), radius));
    }

    /** The middle of a knot above the top line, at this distance to the right. */
    private Vector top(double right) {
        return new Vector(right, 0, 2 * radius + ends.bunch());
    }

    private ReefKnot knot(Vector at, Point along, ReefKnot.Lead first, ReefKnot.Lead second) {
        return new ReefKnot(at, Vector.flat(along), UP, ends.bunch(), ends.taken(), 0, List.of(first, second));
    }

    /**
     * The path from the middle of the end's disc to its rim, in the direction {@code toward}, and back along the roll
     * for {@code run}.
     */
    private FoldedStrip.Path back(Point way, Vector toward, double gone, double run) {
        Vector out = Vector.flat(way);
        Vector middle = out.times(length / 2 + OFF).plus(UP.times(radius)).plus(toward.times(OFF));
        return new FoldedStrip.Path(middle, gone)
                .on(toward, radius, Facet.Part.CORD, new FacetPlane("cord-over-end " + way, out))
                .on(out.times(-1), run, Facet.Part.CORD, new FacetPlane("cord-along " + way, toward));
    }

    private void twoKnot() {
        double around = Math.PI * radius;
        double turn = Math.max(0, (length + 2 * radius - around) / 2);
        for (Point way : List.of(LEFT, RIGHT)) {
            Tube tube = tube(way, UP.times(-1));
            ConvexPolygon body = half(way).between(FAR, -around, around);
            facets.addAll(tube.wall(body.below(way, length / 2)));
            if (moment == TyingMoment.NEAR_AND_FAR) {
                facets.addAll(tube.wall(cloth.above(way, length / 2)));
            } else {
                facets.addAll(tube.disc(body, length / 2));
                end(way, body, turn);
            }
            nearOrFar(way.x() < 0 ? FAR : NEAR, around, turn);
        }
    }

    /**
     * Lays left or right, folded in over its end to where it is knotted, together with its cloth beyond the meeting
     * line.
     */
    private void end(Point way, ConvexPolygon body, double turn) {
        double around = Math.PI * radius;
        double gone = length / 2 + radius;
        FoldedStrip.Path path = back(way, UP, gone, Math.max(0, length / 2 - turn));
        double knot = length + 2 * radius - turn;
        Vector side = Vector.flat(way.left());
        ConvexPolygon end = cloth.above(way, length / 2);
        FoldedStrip cord = new FoldedStrip(new Point(0, 0), way, side, cord());
        loose.addAll(cord.lay(body.between(way, gone, knot), path.runs()));
        for (Point beside : List.of(NEAR, FAR)) {
            loose.addAll(cord.lay(end.above(beside, around).below(way, knot), path.runs()));
        }
        Vector out = Vector.flat(way);
        ConvexPolygon rest = end.above(way, knot);
        if (moment == TyingMoment.ENDS_IN) {
            loose.addAll(new FreeEnd(way.times(knot), way, path.at(), out, side, UP).held(rest, HELD));
            return;
        }
        Vector at = top(sense(way) * turn);
        loose.addAll(ends.lay(rest, way.times(knot), way, at, out, side, length / 2 - turn));
        Point ridge = way.left().times(-1);
        knots.add(knot(
                at,
                way,
                new ReefKnot.Lead(ridge.times(around + turn), ridge),
                new ReefKnot.Lead(way.times(knot), way)));
    }

    /**
     * Lays the near or far end: met on top after half a round, it turns along the roll, near to the right, far to the
     * left.
     */
    private void nearOrFar(Point way, double around, double turn) {
        Point toward = way.left();
        Vector along = Vector.flat(toward);
        ConvexPolygon rest = cloth.between(RIGHT, -length / 2, length / 2).above(way, around);
        FoldedStrip.Path path = new FoldedStrip.Path(UP.times(2 * radius + OFF), around)
                .on(along, turn, Facet.Part.CORD, new FacetPlane("cord-along " + way, UP));
        double knot = around + turn;
        Vector side = Vector.flat(way);
        FoldedStrip cord = new FoldedStrip(new Point(0, 0), way, side, cord());
        loose.addAll(cord.lay(rest.below(way, knot), path.runs()));
        ConvexPolygon end = rest.above(way, knot);
        Point from = way.times(knot);
        if (moment == TyingMoment.NEAR_AND_FAR) {
            double reach = end.corners().stream().mapToDouble(way::dot).max().orElse(knot) - knot;
            loose.addAll(new FreeEnd(from, way, path.at(), along, side, UP).lay(end, reach, length / 2 - turn));
        } else if (moment == TyingMoment.ENDS_IN) {
            loose.addAll(new FreeEnd(from, way, path.at(), along.times(-1), side, UP).held(end, HELD));
        } else {
            Vector at = top(along.x() * turn);
            loose.addAll(ends.lay(end, from, way, at, along.times(-1), side, turn + 1));
        }
    }
}
