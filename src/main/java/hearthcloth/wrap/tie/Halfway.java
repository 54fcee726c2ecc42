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
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Motion;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.pleat.Band;
import hearthcloth.wrap.pleat.FoldedSheet;
import hearthcloth.wrap.pleat.Tube;
import java.util.ArrayList;
import java.util.List;

/** Makes the fold of a {@link TyingMoment} from the finished fold. */
record Halfway(Fold tied, TyingMoment moment) {

    private static final FacetPlane TABLE = new FacetPlane("table", UP);

    private static final Motion ON_THE_TABLE =
            new Motion(new Point(0, 0), new Vector(0, 0, 0), new Vector(1, 0, 0), new Vector(0, 1, 0));

    private static final double FREE = Double.POSITIVE_INFINITY;

    Fold fold() {
        List<Facet> facets = moment == TyingMoment.WOUND ? wound() : waiting();
        return new Fold(tied.fit(), tied.laying(), facets, knots());
    }

    private ConvexPolygon cloth() {
        return tied.laying().whole();
    }

    /** The facets that wait, followed by those of the finished fold that are not among them. */
    private List<Facet> waiting() {
        List<Facet> still = secondPair();
        List<Facet> facets = new ArrayList<>(still);
        for (Facet facet : tied.facets()) {
            Facet.Part part = facet.part() == Facet.Part.TUCK ? Facet.Part.TOP : facet.part();
            List<ConvexPolygon> folded = List.of(facet.cloth());
            for (Facet waits : still) {
                folded = folded.stream()
                        .flatMap(outline -> outline.without(waits.cloth()).stream())
                        .toList();
            }
            folded.forEach(outline -> facets.add(new Facet(part, outline, facet.motion(), facet.plane())));
        }
        return facets;
    }

    /** A part of the cloth as it lies on the table. */
    static Facet flat(ConvexPolygon outline) {
        return new Facet(Facet.Part.BASE, outline, ON_THE_TABLE, TABLE);
    }

    /**
     * The two corners that are tied last: on the table for a ball, otherwise lifted like wings, folded in half and held
     * straight out from where they hang on the cloth that is tied.
     */
    private List<Facet> secondPair() {
        Gift gift = tied.fit().gift();
        List<Facet> facets = new ArrayList<>();
        if (gift instanceof Gift.Bottle bottle) {
            bottleWing(bottle, LEFT, facets);
            bottleWing(bottle, RIGHT, facets);
        } else {
            // near and right are tied first; the other half lies flat
            facets.add(flat(cloth().above(Band.way(3 * Band.SIDES / 8), 0)));
        }
        return facets;
    }

    /** How far a wing's two halves stand from its middle, so that each is seen from its own side, in millimetres. */
    private static final double APART = 0.3;

    /**
     * A wing beside a bottle: both halves hang on the flaps' upright edges; the strip beside the base lies folded
     * between them.
     */
    private void bottleWing(Gift.Bottle bottle, Point way, List<Facet> facets) {
        List<ConvexPolygon> parts = BottleFold.beside(bottle, cloth(), way);
        double radius = bottle.diameter().in(Unit.MILLIMETRE) / 2;
        Vector out = Vector.flat(way);
        for (Point side : List.of(NEAR, FAR)) {
            Vector foot = out.times(radius).plus(Vector.flat(side).times(APART));
            Point from = way.times(BottleFold.edge(radius)).plus(side.times(radius));
            FacetPlane plane = new FacetPlane("wing " + way + side, Vector.flat(side));
            for (ConvexPolygon part : parts) {
                ConvexPolygon beyond = part.above(side, radius);
                ConvexPolygon between = part.between(side, 0, radius);
                if (!beyond.isEmpty()) {
                    facets.add(new Facet(Facet.Part.TOP, beyond, Motion.laying(from, foot, way, out, side, UP), plane));
                } else if (!between.isEmpty()) {
                    Motion back = Motion.laying(from, foot, way, out, side, UP.times(-1));
                    facets.add(new Facet(Facet.Part.TUCK, between, back, plane));
                }
            }
        }
    }

    private List<Facet> wound() {
        Gift gift = tied.fit().gift();
        if (gift instanceof Gift.Books books) {
            return foldedIn(books);
        }
        double across = gift instanceof Gift.TwoBottles two
                ? two.each().diameter().in(Unit.MILLIMETRE)
                : ((Gift.Roll) gift).diameter().in(Unit.MILLIMETRE);
        List<Facet> facets = new ArrayList<>();
        for (Point way : List.of(LEFT, RIGHT)) {
            Vector axis = UP.times(across / 2);
            int sense = way.x() < 0 ? -1 : 1;
            Tube tube =
                    new Tube("tube", axis, Vector.flat(way), UP.times(-1), new Vector(0, 1, 0), sense, 0, across / 2);
            facets.addAll(tube.wall(cloth().above(way, 0)));
        }
        return facets;
    }

    /** Near and far taken up the outer edge of a book, over it, and down into the gap. */
    private List<Facet> foldedIn(Gift.Books books) {
        double wide = books.width().in(Unit.MILLIMETRE);
        double thick = books.thickness().in(Unit.MILLIMETRE);
        double edge = thick + wide;
        List<Facet> facets = new ArrayList<>(List.of(flat(cloth().between(FAR, -edge, edge))));
        for (Point way : List.of(NEAR, FAR)) {
            Vector out = Vector.flat(way);
            Vector in = out.times(-1);
            Vector foot = out.times(edge);
            Vector rim = foot.plus(UP.times(thick));
            Vector lip = rim.plus(in.times(wide));
            fold(way, edge, thick, foot, UP, out, facets);
            fold(way, edge + thick, wide, rim, in, UP, facets);
            fold(way, edge + thick + wide, thick, lip, UP.times(-1), in, facets);
            fold(way, edge + 2 * thick + wide, FREE, lip.minus(UP.times(thick)), in, UP, facets);
        }
        return facets;
    }

    private void fold(
            Point way, double from, double length, Vector base, Vector going, Vector faces, List<Facet> facets) {
        ConvexPolygon slab = cloth().above(way, from);
        FoldedSheet sheet = new FoldedSheet(
                base,
                new FoldedSheet.Run(way, from, going, FREE),
                new FoldedSheet.Run(RIGHT, 0, Vector.flat(RIGHT), FREE),
                new FacetPlane("fold " + way + from, faces));
        facets.addAll(sheet.inwards(length < FREE ? slab.below(way, from + length) : slab, Facet.Part.TOP));
    }

    /** The knots tied at this moment: of several the first, once its corners are over. */
    private List<ReefKnot> knots() {
        return moment == TyingMoment.FIRST_PAIR ? tied.knots().subList(0, 1) : List.of();
    }
}
