package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;

import static hearthcloth.wrap.fold.Panels.LEFT;
import static hearthcloth.wrap.fold.Panels.RIGHT;
import static hearthcloth.wrap.fold.Space.UP;

import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two bottles rolled in base to base and stood up: a bridge of cloth under both bases, each bottle in a tube of cloth as
 * wide as its body up to the height of the mouth, closed over it, and the two ends tied together between the tops. Real
 * cloth draws in about the necks; drawn as rolled, every length along and round is true.
 */
final class PairFold {

    private PairFold() {}

    static Fold of(Fit fit) {
        return at(Moment.TIED, fit);
    }

    /** Stood up, the tubes of cloth are still open above the mouths. */
    static Fold at(Moment moment, Fit fit) {
        if (!(fit.gift() instanceof Gift.TwoBottles two)) {
            throw new IllegalArgumentException(fit.gift() + " is not two bottles");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        Ends ends = Ends.of(fit.tail().in(Unit.MILLIMETRE));
        double radius = two.each().diameter().in(Unit.MILLIMETRE) / 2;
        double height = two.each().height().in(Unit.MILLIMETRE);
        double start = two.apart().in(Unit.MILLIMETRE);
        Outline cloth = laying.whole();
        List<Facet> facets = new ArrayList<>(bridge(cloth, radius, start));
        List<Facet> loose = new ArrayList<>();
        Space knot = UP.times(height + ends.bunch());
        for (Point way : List.of(LEFT, RIGHT)) {
            Space out = Space.flat(way);
            int sense = way.x() < 0 ? -1 : 1;
            Space foot = out.times(radius);
            Tube tube = new Tube(sense < 0 ? "left" : "right", foot, UP, out, new Space(0, 1, 0), sense, start, radius);
            Outline half = cloth.above(way, start);
            if (moment == Moment.STOOD) {
                facets.addAll(tube.wall(half));
                continue;
            }
            facets.addAll(tube.wall(half.below(way, start + height)));
            facets.addAll(tube.disc(half, height));
            double gone = start + height + radius;
            Outline rest = half.above(way, gone);
            Strip cord = new Strip(new Point(0, 0), way, Space.flat(way.left()), ends.bunch());
            Strip.Path path = new Strip.Path(foot.plus(UP.times(height)), gone)
                    .on(out.times(-1), radius, Facet.Part.CORD, new Plane("cord " + way, UP));
            loose.addAll(cord.lay(rest.below(way, gone + radius), path.runs()));
            loose.addAll(ends.lay(
                    rest.above(way, gone + radius),
                    way.times(gone + radius),
                    way,
                    knot,
                    out,
                    Space.flat(way.left()),
                    2 * radius));
        }
        facets.addAll(loose);
        List<Knot.Lead> leads = Stream.of(LEFT, RIGHT)
                .map(way -> new Knot.Lead(way.times(start + height + 2 * radius), way))
                .toList();
        Knot tied = new Knot(knot, Space.flat(RIGHT), UP, ends.bunch(), ends.taken(), 0, leads);
        return new Fold(fit, laying, facets, moment == Moment.STOOD ? List.of() : List.of(tied));
    }

    /** Under the bases, pressed flat from the roll: as long as both are wide, folded to and fro to their depth. */
    private static List<Facet> bridge(Outline cloth, double radius, double start) {
        Outline region = cloth.between(RIGHT, -start, start);
        double least = 0;
        for (Point corner : region.corners()) {
            least = Math.min(least, corner.y());
        }
        Plane plane = new Plane("underneath", UP.times(-1));
        Sheet.Run deep = new Sheet.Run(new Point(0, 1), least, new Space(0, 1, 0), 2 * radius);
        Space near = new Space(0, -radius, 0);
        List<Facet> facets = new ArrayList<>();
        for (Point way : List.of(LEFT, RIGHT)) {
            // a gap wider than the bottles leaves slack in the middle, tucked away
            double slack = start - 2 * radius;
            Sheet.Run shown = new Sheet.Run(way, slack, Space.flat(way), Double.POSITIVE_INFINITY);
            Sheet.Run tucked = new Sheet.Run(way, 0, Space.flat(way), 2 * radius);
            Outline half = region.above(way, 0);
            facets.addAll(new Sheet(near, tucked, deep, plane).inwards(half.below(way, slack), Facet.Part.TUCK));
            for (Facet facet : new Sheet(near, shown, deep, plane).outwards(half.above(way, slack))) {
                facets.add(facet.as(Facet.Part.BASE));
            }
        }
        return facets;
    }
}
