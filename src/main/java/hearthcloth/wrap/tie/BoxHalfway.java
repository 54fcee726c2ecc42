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
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
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
 * A box on the diagonal half wrapped. The near and far corners are folded over in straight lines across the whole
 * cloth, so that beside the box it stands out as a fin and a roof; left and right, once lifted, stand straight up with
 * the cloth of the corners flat inside them. Both are exact and continuous; only at knots is the cloth parted, as in
 * the finished fold.
 */
final class BoxHalfway {

    private static final double FREE = Double.POSITIVE_INFINITY;

    private final Fold tied;
    private final TyingMoment moment;
    private final ConvexPolygon cloth;
    private final Panels panels;
    private final double halfL;
    private final double halfW;
    private final double height;
    private final KnotEnds ends;
    private final List<Facet> facets = new ArrayList<>();

    BoxHalfway(Fold tied, TyingMoment moment) {
        if (!(tied.fit().gift() instanceof Gift.Box box)) {
            throw new IllegalArgumentException(tied.fit().gift() + " is not a box");
        }
        this.tied = tied;
        this.moment = moment;
        this.cloth = tied.laying().whole();
        this.panels = Panels.of(box, cloth);
        this.halfL = panels.halfL();
        this.halfW = panels.halfW();
        this.height = panels.height();
        this.ends = KnotEnds.of(tied.fit().tail().in(Unit.MILLIMETRE));
    }

    Fold fold() {
        switch (moment) {
            case NEAR_OVER -> nearOver();
            case NEAR_AND_FAR -> nearAndFar();
            case ALL_BUT_FAR -> allButFar();
            case SIDES_UP -> sidesUp();
            case ONE_SIDE -> oneSide();
            case HIDDEN -> hidden();
            default -> throw new IllegalArgumentException(moment + " of a box");
        }
        return new Fold(tied.fit(), tied.laying(), facets, knots());
    }

    private List<ReefKnot> knots() {
        return switch (moment) {
            case NEAR_AND_FAR, SIDES_UP ->
                tied.fit().tie() == Tie.FOUR_CORNER ? tied.knots().subList(0, 1) : List.of();
            // near turns to the right, and is the first of the two
            case ONE_SIDE -> tied.knots().subList(0, 1);
            case HIDDEN -> tied.knots();
            default -> List.of();
        };
    }

    private boolean isKnotted() {
        return tied.fit().tie() == Tie.FOUR_CORNER || tied.fit().tie() == Tie.TWO_KNOT;
    }

    /**
     * How far on the cloth near or far goes before its end begins, from the gift's middle; infinite when it is only
     * laid.
     */
    private double knotted() {
        return isKnotted() ? 2 * halfW + height : FREE;
    }

    private static boolean isBeyond(Facet facet, Point way, double least) {
        return way.dot(facet.cloth().middle()) > least;
    }

    /** The facets of the finished fold that lie on one side, without its loose ends; what is tucked in later lies on top yet. */
    private List<Facet> finished(Point way, double least) {
        return tied.facets().stream()
                .filter(facet -> !facet.isLoose() && isBeyond(facet, way, least))
                .map(facet -> facet.part() == Facet.Part.TUCK ? facet.as(Facet.Part.TOP) : facet)
                .toList();
    }

    /** The finished end of near or far, or the one of right or left in whose sector it lies. */
    private List<Facet> end(Point way) {
        return tied.facets().stream()
                .filter(Facet::isLoose)
                .filter(facet -> beyond(facet.cloth().middle(), way)
                                >= beyond(facet.cloth().middle(), way.left())
                        && beyond(facet.cloth().middle(), way)
                                >= beyond(facet.cloth().middle(), way.left().times(-1))
                        && isBeyond(facet, way, 0))
                .toList();
    }

    private double beyond(Point point, Point way) {
        return way.dot(point) - panels.half(way);
    }

    private void nearOver() {
        facets.add(Halfway.flat(cloth.above(FAR, -halfW)));
        facets.addAll(across(NEAR, cloth));
    }

    private void nearAndFar() {
        facets.add(Halfway.flat(cloth.between(FAR, -halfW, halfW)));
        for (Point way : List.of(NEAR, FAR)) {
            facets.addAll(across(way, cloth));
        }
        for (Point way : isKnotted() ? List.of(NEAR, FAR) : List.<Point>of()) {
            if (tied.fit().tie() == Tie.TWO_KNOT) {
                facets.addAll(turned(way));
            } else {
                facets.addAll(end(way));
            }
        }
    }

    /** Near or far taken up and over in straight lines, in this part of the cloth: wall and fins, top and roof. */
    private List<Facet> across(Point way, ConvexPolygon part) {
        ConvexPolygon slab = part.above(way, halfW);
        Vector foot = Vector.flat(way).times(halfW);
        FoldedSheet.Run aside = new FoldedSheet.Run(RIGHT, 0, Vector.flat(RIGHT), FREE);
        FacetPlane wall = Panels.Sides.BOX.wall(way);
        List<Facet> across =
                new ArrayList<>(new FoldedSheet(foot, new FoldedSheet.Run(way, halfW, UP, FREE), aside, wall)
                        .inwards(slab.below(way, halfW + height), Facet.Part.WALL));
        FoldedSheet.Run over =
                new FoldedSheet.Run(way, halfW + height, Vector.flat(way).times(-1), 2 * halfW);
        FoldedSheet top = new FoldedSheet(foot.plus(UP.times(height)), over, aside, Panels.Sides.BOX.top());
        ConvexPolygon roof = slab.above(way, halfW + height);
        if (isKnotted()) {
            across.addAll(shown(top, roof.below(way, knotted())));
            for (Point side : List.of(RIGHT, LEFT)) {
                // beyond the knot's place what lies nearer the side corner waits with it
                ConvexPolygon waits = roof.above(way, knotted()).above(side.minus(way), panels.half(side) - halfW);
                across.addAll(shown(top, waits));
            }
        } else {
            across.addAll(shown(top, roof));
        }
        return across;
    }

    private static List<Facet> shown(FoldedSheet sheet, ConvexPolygon region) {
        return sheet.inwards(region, Facet.Part.TOP).stream()
                .map(facet -> facet.as(Facet.Part.TOP))
                .toList();
    }

    /** The end of near or far beyond the crossing: turned along the top and not tied yet. */
    private List<Facet> turned(Point way) {
        Point toward = way.left();
        Vector along = Vector.flat(toward);
        double out = halfL - halfW;
        ConvexPolygon rest = sector(way).above(way, knotted());
        Point origin = way.times(knotted());
        Vector middle = UP.times(height + BoxFold.OFF);
        FoldedStrip.Path path =
                new FoldedStrip.Path(middle, 0).on(along, out, Facet.Part.CORD, new FacetPlane("cord " + way, UP));
        List<Facet> laid = new ArrayList<>(new FoldedStrip(origin, way, Vector.flat(way), ends.bunch())
                .lay(rest.below(way, knotted() + out), path.runs()));
        double length = rest.corners().stream().mapToDouble(way::dot).max().orElse(0) - knotted() - out;
        FreeEnd free = new FreeEnd(origin.plus(way.times(out)), way, path.at(), along, Vector.flat(way), UP);
        laid.addAll(free.lay(rest.above(way, knotted() + out), length, halfL - out));
        return laid;
    }

    /** The cloth that is nearer to this corner's side of the box than to its neighbours'. */
    private ConvexPolygon sector(Point way) {
        Point left = way.left();
        double bound = panels.half(left) - panels.half(way);
        return cloth.below(left.minus(way), bound).below(left.times(-1).minus(way), bound);
    }

    private void allButFar() {
        facets.add(Halfway.flat(cloth.above(FAR, halfW).between(RIGHT, -halfL, halfL)));
        facets.addAll(finished(NEAR, -halfW));
        for (Point side : List.of(RIGHT, LEFT)) {
            ConvexPolygon slab = cloth.above(FAR, halfW).above(side, halfL);
            Vector foot = Vector.flat(side).times(halfL);
            FoldedSheet.Run away = new FoldedSheet.Run(FAR, 0, Vector.flat(FAR), FREE);
            FacetPlane wall = Panels.Sides.BOX.wall(side);
            facets.addAll(new FoldedSheet(foot, new FoldedSheet.Run(side, halfL, UP, FREE), away, wall)
                    .inwards(slab.below(side, halfL + height), Facet.Part.WALL));
            FoldedSheet.Run over =
                    new FoldedSheet.Run(side, halfL + height, Vector.flat(side).times(-1), 2 * halfL);
            FoldedSheet top = new FoldedSheet(foot.plus(UP.times(height)), over, away, Panels.Sides.BOX.top());
            facets.addAll(shown(top, slab.above(side, halfL + height)));
        }
    }

    /** The finished middle, with right and left standing straight up and their ears inside. */
    private void sidesUp() {
        finished(NEAR, Double.NEGATIVE_INFINITY).stream()
                .filter(facet -> Math.abs(facet.cloth().middle().x()) < halfL)
                .forEach(facets::add);
        for (Point side : List.of(RIGHT, LEFT)) {
            for (Point end : List.of(NEAR, FAR)) {
                ear(side, end);
            }
            FoldedSheet up = new FoldedSheet(
                    Vector.flat(side).times(halfL),
                    new FoldedSheet.Run(side, halfL, UP, FREE),
                    new FoldedSheet.Run(FAR, 0, Vector.flat(FAR), FREE),
                    Panels.Sides.BOX.wall(side));
            facets.addAll(shown(up, cloth.above(side, halfL).between(FAR, -halfW, halfW)));
        }
        if (isKnotted()) {
            facets.addAll(end(NEAR));
            facets.addAll(end(FAR));
        }
    }

    /** An {@link Ear} whose upper part goes straight up instead of over the top. */
    private void ear(Point a, Point b) {
        ConvexPolygon spare = cloth.above(a, halfL).above(b, halfW);
        double pleat = isKnotted() ? halfW : 2 * halfW;
        Vector foot = Vector.flat(a).times(halfL).plus(Vector.flat(b).times(halfW));
        Vector in = Vector.flat(b).times(-1);
        FacetPlane wall = Panels.Sides.BOX.wall(a);
        Point across = b.minus(a);
        double zero = halfW - halfL;
        ConvexPolygon joined = spare.above(across, zero).below(b, knotted());
        FoldedSheet upper = new FoldedSheet(
                foot.plus(UP.times(height)),
                new FoldedSheet.Run(a, halfL, UP, FREE),
                new FoldedSheet.Run(b, halfW + height, in, 2 * halfW),
                wall);
        facets.addAll(shown(upper, joined.above(across, zero + height)));
        FoldedSheet between = new FoldedSheet(
                foot, new FoldedSheet.Run(b, halfW, UP, FREE), new FoldedSheet.Run(a, halfL, in, pleat), wall);
        facets.addAll(between.outwards(joined.below(across, zero + height)).stream()
                .map(facet -> facet.as(Facet.Part.TOP))
                .toList());
        FoldedSheet hung = new FoldedSheet(
                foot, new FoldedSheet.Run(a, halfL, UP, FREE), new FoldedSheet.Run(b, halfW, in, pleat), wall);
        facets.addAll(shown(hung, spare.below(across, zero)));
    }

    /** The state in which right is tied and left waits. */
    private void oneSide() {
        ConvexPolygon waits = cloth.above(LEFT, halfL);
        facets.add(Halfway.flat(waits.between(FAR, -halfW, halfW)));
        for (Point way : List.of(NEAR, FAR)) {
            facets.addAll(across(way, waits));
        }
        facets.addAll(finished(RIGHT, -halfL));
        facets.addAll(turned(FAR));
        facets.addAll(end(NEAR));
        facets.addAll(end(RIGHT));
    }

    /** The state in which the far tip is drawn out on the near side of the knot and laid back over it. */
    private void hidden() {
        double before = 2.6 * ends.bunch();
        double drawn = 2 * halfW + height + before;
        for (Facet facet : tied.facets()) {
            ConvexPolygon rest = isFar(facet) ? facet.cloth().below(FAR, drawn) : facet.cloth();
            if (!rest.isEmpty()) {
                facets.add(new Facet(facet.part(), rest, facet.motion(), facet.plane()));
            }
        }
        ConvexPolygon tip = cloth.above(FAR, drawn);
        double clear = 2.2 * ends.bunch();
        Vector at = new Vector(0, -before, height + BoxFold.OFF);
        FreeEnd cover = new FreeEnd(FAR.times(drawn), FAR, at, Vector.flat(FAR), new Vector(-1, 0, 0), UP, Math.PI / 3);
        facets.addAll(cover.over(tip, new double[] {clear * 1.25, 1.2 * before, clear * 1.4}, halfW + before));
    }

    private boolean isFar(Facet facet) {
        return !facet.isLoose() && isBeyond(facet, FAR, halfW);
    }
}
