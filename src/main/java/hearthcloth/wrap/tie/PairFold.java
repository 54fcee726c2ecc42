package hearthcloth.wrap.tie;

import static hearthcloth.geometry.Vector.UP;
import static hearthcloth.wrap.pleat.Panels.LEFT;
import static hearthcloth.wrap.pleat.Panels.RIGHT;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.pleat.FoldedSheet;
import hearthcloth.wrap.pleat.FoldedStrip;
import hearthcloth.wrap.pleat.KnotEnds;
import hearthcloth.wrap.pleat.Tube;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two bottles rolled in base to base and stood up: a bridge of cloth under both bases, each bottle in a tube of cloth
 * as wide as its body up to the height of the mouth, closed over it, and the two ends tied together between the tops.
 * Real cloth is drawn in about the necks; here it is drawn as rolled, with every length along and round it true.
 */
final class PairFold {

    private PairFold() {}

    static Fold of(Fit fit) {
        return at(TyingMoment.TIED, fit);
    }

    /** The fold when the bottles are stood up and the tubes of cloth are still open above the mouths. */
    static Fold at(TyingMoment moment, Fit fit) {
        if (!(fit.gift() instanceof Gift.TwoBottles two)) {
            throw new IllegalArgumentException(fit.gift() + " is not two bottles");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        KnotEnds ends = KnotEnds.of(fit.tail().in(Unit.MILLIMETRE));
        double radius = two.each().diameter().in(Unit.MILLIMETRE) / 2;
        double height = two.each().height().in(Unit.MILLIMETRE);
        double start = two.apart().in(Unit.MILLIMETRE);
        ConvexPolygon cloth = laying.whole();
        List<Facet> facets = new ArrayList<>(bridge(cloth, radius, start));
        List<Facet> loose = new ArrayList<>();
        Vector knot = UP.times(height + ends.bunch());
        for (Point way : List.of(LEFT, RIGHT)) {
            Vector out = Vector.flat(way);
            int sense = way.x() < 0 ? -1 : 1;
            Vector foot = out.times(radius);
            Tube tube =
                    new Tube(sense < 0 ? "left" : "right", foot, UP, out, new Vector(0, 1, 0), sense, start, radius);
            ConvexPolygon half = cloth.above(way, start);
            if (moment == TyingMoment.STOOD) {
                facets.addAll(tube.wall(half));
                continue;
            }
            facets.addAll(tube.wall(half.below(way, start + height)));
            facets.addAll(tube.disc(half, height));
            double gone = start + height + radius;
            ConvexPolygon rest = half.above(way, gone);
            FoldedStrip cord = new FoldedStrip(new Point(0, 0), way, Vector.flat(way.left()), ends.bunch());
            FoldedStrip.Path path = new FoldedStrip.Path(foot.plus(UP.times(height)), gone)
                    .on(out.times(-1), radius, Facet.Part.CORD, new FacetPlane("cord " + way, UP));
            loose.addAll(cord.lay(rest.below(way, gone + radius), path.runs()));
            loose.addAll(ends.lay(
                    rest.above(way, gone + radius),
                    way.times(gone + radius),
                    way,
                    knot,
                    out,
                    Vector.flat(way.left()),
                    2 * radius));
        }
        facets.addAll(loose);
        List<ReefKnot.Lead> leads = Stream.of(LEFT, RIGHT)
                .map(way -> new ReefKnot.Lead(way.times(start + height + 2 * radius), way))
                .toList();
        ReefKnot tied = new ReefKnot(knot, Vector.flat(RIGHT), UP, ends.bunch(), ends.taken(), 0, leads);
        return new Fold(fit, laying, facets, moment == TyingMoment.STOOD ? List.of() : List.of(tied));
    }

    /**
     * The cloth under the bases, pressed flat from the roll: as long as both are wide, folded to and fro to their
     * depth.
     */
    private static List<Facet> bridge(ConvexPolygon cloth, double radius, double start) {
        ConvexPolygon region = cloth.between(RIGHT, -start, start);
        double least = 0;
        for (Point corner : region.corners()) {
            least = Math.min(least, corner.y());
        }
        FacetPlane plane = new FacetPlane("underneath", UP.times(-1));
        FoldedSheet.Run deep = new FoldedSheet.Run(new Point(0, 1), least, new Vector(0, 1, 0), 2 * radius);
        Vector near = new Vector(0, -radius, 0);
        List<Facet> facets = new ArrayList<>();
        for (Point way : List.of(LEFT, RIGHT)) {
            // a gap wider than the bottles leaves slack in the middle, tucked away
            double slack = start - 2 * radius;
            FoldedSheet.Run shown = new FoldedSheet.Run(way, slack, Vector.flat(way), Double.POSITIVE_INFINITY);
            FoldedSheet.Run tucked = new FoldedSheet.Run(way, 0, Vector.flat(way), 2 * radius);
            ConvexPolygon half = region.above(way, 0);
            facets.addAll(new FoldedSheet(near, tucked, deep, plane).inwards(half.below(way, slack), Facet.Part.TUCK));
            for (Facet facet : new FoldedSheet(near, shown, deep, plane).outwards(half.above(way, slack))) {
                facets.add(facet.as(Facet.Part.BASE));
            }
        }
        return facets;
    }
}
