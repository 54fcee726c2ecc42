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
import hearthcloth.wrap.pleat.FoldedSheet;
import hearthcloth.wrap.pleat.FoldedStrip;
import hearthcloth.wrap.pleat.FreeEnd;
import hearthcloth.wrap.pleat.KnotEnds;
import hearthcloth.wrap.pleat.Panels;
import java.util.ArrayList;
import java.util.List;

/**
 * A box set edge along edge. Up to the rim the cloth is exact and continuous: panels on the walls, and each spare
 * corner fan-folded about the base's corner into an even number of plies, so that the way to the cloth's own corner
 * runs up the upright edge (docs/sources.md#corner-fan). Above the rim the plies fold over the top beneath the flaps, a
 * gathered cord runs from the rim's corner to the knots in the middle, and what is left is the end; there the corner is
 * parted from its plies, where real cloth puckers. The pair of flaps that meets lies flat, its tips turned under; the
 * other pair is drawn in over it.
 */
final class EdgeFold {

    private final TyingMoment moment;
    private final Panels panels;
    private final KnotEnds ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Facet> cords = new ArrayList<>();
    private final List<List<ReefKnot.Lead>> leads = List.of(new ArrayList<>(), new ArrayList<>());

    /** How far a flap leans outwards before it is folded over, in radians; chosen for the drawing. */
    private static final double LEAN = 28 * Elementary.DEGREE;

    private EdgeFold(TyingMoment moment, Panels panels, KnotEnds ends) {
        this.moment = moment;
        this.panels = panels;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        return at(TyingMoment.TIED, fit);
    }

    /**
     * The fold at a moment. Before the second pair is tied it hangs from the rim; before that the flaps stand out round
     * the rim.
     */
    static Fold at(TyingMoment moment, Fit fit) {
        if (!(fit.gift() instanceof Gift.Box box)) {
            throw new IllegalArgumentException(fit.gift() + " is not a box");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), false);
        EdgeFold fold = new EdgeFold(
                moment, Panels.of(box, laying.whole()), KnotEnds.of(fit.tail().in(Unit.MILLIMETRE)));
        List<Facet> facets = fold.build();
        List<ReefKnot> knots = fold.knots();
        return new Fold(fit, laying, facets, moment == TyingMoment.TIED ? knots : knots.subList(0, 1));
    }

    private List<Facet> build() {
        facets.add(panels.base());
        for (Point side : List.of(LEFT, RIGHT)) {
            corner(side, NEAR, 0);
            corner(side, FAR, 1);
        }
        List.of(NEAR, FAR, LEFT, RIGHT).forEach(way -> facets.addAll(panels.wall(way)));
        if (moment == TyingMoment.FIRST_PAIR) {
            List.of(NEAR, FAR, LEFT, RIGHT).forEach(this::standing);
        } else {
            over();
        }
        facets.addAll(cords);
        return facets;
    }

    /** A flap above the rim that leans outwards. */
    private void standing(Point way) {
        Vector rim = Vector.flat(way).times(panels.half(way)).plus(UP.times(panels.height()));
        FoldedSheet.Run up = new FoldedSheet.Run(way, panels.start(way), leaning(way), Double.POSITIVE_INFINITY);
        FoldedSheet.Run aside = new FoldedSheet.Run(way.left(), 0, Vector.flat(way.left()), Double.POSITIVE_INFINITY);
        double beside = panels.half(way.left());
        ConvexPolygon flap = panels.cloth().between(way.left(), -beside, beside).above(way, panels.start(way));
        facets.addAll(new FoldedSheet(rim, up, aside, standingPlane(way)).inwards(flap, Facet.Part.TOP));
    }

    private static Vector leaning(Point way) {
        return UP.times(Elementary.cos(LEAN)).plus(Vector.flat(way).times(Elementary.sin(LEAN)));
    }

    private static FacetPlane standingPlane(Point way) {
        Vector out = Vector.flat(way).times(Elementary.cos(LEAN)).minus(UP.times(Elementary.sin(LEAN)));
        return new FacetPlane("standing " + way, out);
    }

    private void over() {
        // the pair that overlaps by more lies flat and covers the top
        boolean nearAndFar = overlap(NEAR) >= overlap(RIGHT);
        List<Point> flat = nearAndFar ? List.of(NEAR, FAR) : List.of(LEFT, RIGHT);
        List<Point> drawn = nearAndFar ? List.of(LEFT, RIGHT) : List.of(NEAR, FAR);
        drawn.forEach(way -> facets.addAll(panels.rest(way, panels.half(way))));
        flat.forEach(way -> facets.addAll(panels.rest(way, meeting(way))));
        flat.forEach(way -> facets.addAll(panels.top(way, meeting(way))));
        drawn.forEach(way -> facets.addAll(panels.drawnIn(way, panels.half(way))));
    }

    /** How far over the top a flat flap shows: to the middle, or farther where the facing one ends short of that. */
    private double meeting(Point way) {
        double facing = far(way.times(-1)) - panels.start(way);
        return panels.half(way) + Math.max(0, panels.half(way) - facing);
    }

    private double overlap(Point way) {
        return far(way) + far(way.times(-1)) - 2 * (panels.start(way) + panels.half(way));
    }

    private double far(Point way) {
        return panels.cloth().corners().stream().mapToDouble(way::dot).max().orElse(0);
    }

    private List<ReefKnot> knots() {
        List<ReefKnot> knots = new ArrayList<>();
        for (int over = 0; over < 2; over++) {
            Vector along = new Vector(panels.halfL(), over == 0 ? panels.halfW() : -panels.halfW(), 0).unit();
            List<ReefKnot.Lead> pair = leads.get(over);
            // the first lead comes from behind
            boolean inOrder = along.dot(Vector.flat(pair.get(0).axis())) < 0;
            List<ReefKnot.Lead> ordered = inOrder ? pair : List.of(pair.get(1), pair.get(0));
            knots.add(new ReefKnot(knot(over), along, UP, ends.bunch(), ends.taken(), over, ordered));
        }
        return knots;
    }

    private Vector knot(int over) {
        return UP.times(panels.height() + (1 + 2 * over) * ends.bunch());
    }

    /**
     * Lays a spare corner: plies on both walls and the top, the cord and the end. Near left and far right make one
     * pair.
     */
    private void corner(Point a, Point b, int far) {
        Point foot = a.times(panels.half(a)).plus(b.times(panels.half(b)));
        Point own = a.times(far(a)).plus(b.times(far(b))).minus(foot);
        double length = Math.sqrt(own.dot(own));
        Point ray = own.times(1 / length);
        double path = panels.height() + Elementary.hypot(panels.halfL(), panels.halfW());
        ConvexPolygon spare = panels.cloth().above(a, panels.half(a)).above(b, panels.half(b));
        double zero = ray.dot(foot);
        ConvexPolygon end = spare.above(ray, zero + path);
        ConvexPolygon above = spare.between(ray, zero + panels.height(), zero + path);
        double beside = ray.left().dot(foot);
        double wide = 3 * ends.bunch();
        int over = (a.x() > 0 ? 1 : 0) == far ? 0 : 1;
        if (over == 1 && moment != TyingMoment.TIED) {
            List<ConvexPolygon> below = List.of(spare.below(ray, zero + panels.height()));
            plies(a, b, foot, ray, below, length);
            plies(b, a, foot, ray, below, length);
            hanging(foot, ray, spare.above(ray, zero + panels.height()));
            return;
        }
        List<ConvexPolygon> plies = List.of(
                spare.below(ray, zero + panels.height()),
                above.below(ray.left(), beside - wide),
                above.above(ray.left(), beside + wide));
        plies(a, b, foot, ray, plies, length);
        plies(b, a, foot, ray, plies, length);
        cord(foot, ray, above.between(ray.left(), beside - wide, beside + wide), end, path, over);
    }

    private void cord(Point foot, Point ray, ConvexPolygon cord, ConvexPolygon end, double path, int over) {
        double height = panels.height();
        Vector corner = Vector.flat(foot).plus(UP.times(height));
        Vector in = Vector.flat(foot).times(-1).unit();
        Vector side = UP.cross(in).times(-1);
        FoldedStrip.Path way = new FoldedStrip.Path(corner, height)
                .on(in, path - height, Facet.Part.CORD, new FacetPlane("cord " + foot, UP));
        cords.addAll(new FoldedStrip(foot, ray, side, ends.bunch()).lay(cord, way.runs()));
        Point knot = foot.plus(ray.times(path));
        leads.get(over).add(new ReefKnot.Lead(knot, ray));
        double edge = Elementary.hypot(panels.halfL(), panels.halfW());
        cords.addAll(ends.lay(end, knot, ray, knot(over), in.times(-1), side, edge));
    }

    /** Lays a corner that waits, hanging outwards from the rim. */
    private void hanging(Point foot, Point ray, ConvexPolygon spare) {
        Vector out = Vector.flat(foot).unit();
        Point rim = foot.plus(ray.times(panels.height()));
        Vector corner = Vector.flat(foot).plus(UP.times(panels.height()));
        double length = spare.corners().stream().mapToDouble(ray::dot).max().orElse(0) - ray.dot(rim);
        cords.addAll(new FreeEnd(rim, ray, corner, out, UP.cross(out), UP).lay(spare, length, length / 3));
        leads.get(1).add(new ReefKnot.Lead(rim, ray));
    }

    /**
     * Lays the plies between the ray and panel a on a's wall: the least even number of plies that stays inside the wall
     * and the top.
     */
    private void plies(Point a, Point b, Point foot, Point ray, List<ConvexPolygon> regions, double length) {
        double angle = Elementary.acos(Math.min(1, ray.dot(a)));
        int count = 2;
        while (panels.height() * Elementary.tan(angle / count) > panels.half(b)
                || length * Elementary.sin(angle / count) > 2 * panels.half(b)) {
            count += 2;
        }
        for (int k = count - 1; k >= 0; k--) {
            double from = angle - k * angle / count;
            double to = angle - (k + 1) * angle / count;
            Point outer = turned(a, b, from);
            Point inner = turned(a, b, to);
            for (ConvexPolygon region : regions) {
                ConvexPolygon ply = region.below(
                                across(a, b, from), across(a, b, from).dot(foot))
                        .above(across(a, b, to), across(a, b, to).dot(foot));
                // even plies have the ray's side on the upright edge, odd ones the other
                ply(a, b, foot, k % 2 == 0 ? outer : inner, k % 2 == 0, ply);
            }
        }
    }

    /** The unit vector at an angle from a towards b, and the one across it towards b. */
    private static Point turned(Point a, Point b, double angle) {
        return a.times(Elementary.cos(angle)).plus(b.times(Elementary.sin(angle)));
    }

    private static Point across(Point a, Point b, double angle) {
        return b.times(Elementary.cos(angle)).minus(a.times(Elementary.sin(angle)));
    }

    private void ply(Point a, Point b, Point foot, Point edge, boolean even, ConvexPolygon ply) {
        double angle = Elementary.atan2(edge.dot(b), edge.dot(a));
        Point away = across(a, b, angle).times(even ? -1 : 1);
        double zero = edge.dot(foot);
        double height = panels.height();
        Vector in = Vector.flat(b).times(-1);
        ConvexPolygon wall = ply.below(edge, zero + height);
        if (!wall.isEmpty()) {
            Motion motion = Motion.laying(foot, Vector.flat(foot), edge, UP, away, in);
            facets.add(new Facet(Facet.Part.TUCK, wall, motion, Panels.Sides.BOX.wall(a)));
        }
        Vector rim = Vector.flat(foot).plus(UP.times(height));
        if (moment == TyingMoment.FIRST_PAIR) {
            FoldedSheet.Run up = new FoldedSheet.Run(edge, zero + height, leaning(a), Double.POSITIVE_INFINITY);
            FoldedSheet.Run aside = new FoldedSheet.Run(away, away.dot(foot), in, Double.POSITIVE_INFINITY);
            facets.addAll(new FoldedSheet(rim, up, aside, standingPlane(a))
                    .inwards(ply.above(edge, zero + height), Facet.Part.TOP));
            return;
        }
        double room = 2 * panels.half(a);
        FoldedSheet.Run over =
                new FoldedSheet.Run(edge, zero + height, Vector.flat(a).times(-1), room);
        FoldedSheet.Run aside = new FoldedSheet.Run(away, away.dot(foot), in, Double.POSITIVE_INFINITY);
        facets.addAll(new FoldedSheet(rim, over, aside, Panels.Sides.BOX.top())
                .inwards(ply.above(edge, zero + height), Facet.Part.TUCK));
    }
}
