package hearthcloth.wrap.tie;

import static hearthcloth.geometry.Vector.UP;
import static hearthcloth.wrap.pleat.Panels.FAR;
import static hearthcloth.wrap.pleat.Panels.LEFT;
import static hearthcloth.wrap.pleat.Panels.NEAR;
import static hearthcloth.wrap.pleat.Panels.RIGHT;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Motion;
import hearthcloth.wrap.pleat.Panels;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The four spare corners of a knotted box as they fall when no hand tucks them in. Left and right are lifted last and
 * take them along: beside the walls each stands off its upright edge, so that both its sides show, and over the top it
 * lies as a band from the box's corner to the knot, as far as there is cloth (docs/sources.md#spare-corners). Every
 * piece is laid without stretch, and beside the walls all hang together; above the rim they are parted, where real cloth
 * puckers. What a corner hides of the wall behind it is not taken off, since from another side that is seen. It is one of
 * the two ends between which real corners lie; the other is the fold itself, which has them inside.
 */
final class SpareCorners {

    private final Fold tucked;
    private final Panels panels;
    private final List<Facet> spare = new ArrayList<>();

    private SpareCorners(Fold tucked, Panels panels) {
        this.tucked = tucked;
        this.panels = panels;
    }

    /** The fold with its spare corners outside; empty where a tie leaves none that hands have not laid. */
    static Optional<Fold> outside(Fold tucked) {
        Tie tie = tucked.fit().tie();
        boolean isLeft = tie == Tie.FOUR_CORNER || tie == Tie.ERRAND || tie == Tie.TWO_KNOT;
        if (!isLeft || !(tucked.fit().gift() instanceof Gift.Box box)) {
            return Optional.empty();
        }
        return Optional.of(
                new SpareCorners(tucked, Panels.of(box, tucked.laying().whole())).fold());
    }

    private Fold fold() {
        for (Point end : List.of(NEAR, FAR)) {
            for (Point side : List.of(RIGHT, LEFT)) {
                lay(end, side);
            }
        }
        List<Facet> facets = new ArrayList<>();
        tucked.facets().forEach(facet -> facets.addAll(left(facet)));
        facets.addAll(spare);
        return new Fold(tucked.fit(), tucked.laying(), facets, tucked.knots());
    }

    /** What is left of a facet without the pieces that lie outside. */
    private List<Facet> left(Facet facet) {
        List<ConvexPolygon> left = List.of(facet.cloth());
        for (Facet piece : facet.part() == Facet.Part.TUCK ? spare : List.<Facet>of()) {
            left = left.stream()
                    .flatMap(outline -> outline.without(piece.cloth()).stream())
                    .toList();
        }
        return left.stream()
                .map(outline -> new Facet(facet.part(), outline, facet.motion(), facet.plane()))
                .toList();
    }

    /** Lays the corner between near or far and a side. */
    private void lay(Point end, Point side) {
        Point foot = end.times(panels.half(end)).plus(side.times(panels.half(side)));
        ConvexPolygon corner = cloth(end, side);
        fin(corner.below(end.minus(side), end.minus(side).dot(foot)), foot, side, end);
        fin(corner.above(end.minus(side), end.minus(side).dot(foot)), foot, end, side);
        band(corner, foot.plus(side.times(panels.height())), end, side);
    }

    /**
     * Lays what goes over the top beside the side's flap: it is drawn with that to the knot, and is as broad at the rim
     * as the corner stands off below.
     */
    private void band(ConvexPolygon corner, Point rim, Point end, Point side) {
        Vector at = Vector.flat(rim.minus(side.times(panels.height()))).plus(UP.times(panels.height()));
        Vector in = Vector.flat(side).times(-1);
        Vector knot = at.plus(in.times(sideways())).minus(Vector.flat(end).times(panels.half(end)));
        Vector way = knot.minus(at).unit();
        Motion over = Motion.laying(
                rim, at, side, way, end, UP.cross(way).times(UP.cross(way).dot(in) < 0 ? -1 : 1));
        Vector along = at.plus(in.times(Math.min(panels.height(), panels.half(side))));
        ConvexPolygon band = ConvexPolygon.anticlockwise(List.of(over.back(at), over.back(along), over.back(knot)));
        add(new Facet(Facet.Part.TOP, corner.and(band), over, Panels.Sides.BOX.top()));
    }

    /** Lays one side of a corner beside a wall, where it stands off the upright edge; it hangs on this panel. */
    private void fin(ConvexPolygon part, Point foot, Point panel, Point other) {
        Vector off = Vector.flat(panel).plus(Vector.flat(other)).unit();
        Motion standing = Motion.laying(foot, Vector.flat(foot), panel, UP, other, off);
        FacetPlane plane =
                new FacetPlane("spare " + panel + other, standing.inside().times(-1));
        add(new Facet(Facet.Part.WALL, part.below(panel, panels.start(panel)), standing, plane));
    }

    private void add(Facet piece) {
        if (!piece.cloth().isEmpty()) {
            spare.add(piece);
        }
    }

    /** The corner's cloth without what goes to a knot. */
    private ConvexPolygon cloth(Point end, Point side) {
        ConvexPolygon corner = panels.cloth().above(end, panels.half(end)).above(side, panels.half(side));
        ConvexPolygon own = corner.below(side, panels.start(side) + sideways());
        return tucked.fit().tie() == Tie.ERRAND ? own : own.below(end, panels.start(end) + panels.halfW());
    }

    /** How far from the box's corner the side's knot lies, along the near or far rim. */
    private double sideways() {
        return tucked.fit().tie() == Tie.TWO_KNOT ? panels.halfW() : panels.halfL();
    }
}
