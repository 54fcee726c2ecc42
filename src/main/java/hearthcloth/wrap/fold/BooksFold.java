package hearthcloth.wrap.fold;

import static hearthcloth.wrap.fold.Panels.FAR;
import static hearthcloth.wrap.fold.Panels.LEFT;
import static hearthcloth.wrap.fold.Panels.NEAR;
import static hearthcloth.wrap.fold.Panels.RIGHT;
import static hearthcloth.wrap.fold.Space.UP;

import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import java.util.ArrayList;
import java.util.List;

/**
 * Two books closed on each other, spine away from the maker. The cloth under the near book is the bottom, under the gap
 * the spine, under the far book the top; walls stand round the edges and everything beyond them is folded flat between
 * the books. Left and right corners run in over the ends of the gap, between the books to the other end, and back along
 * the spine to the knot in its middle. What shows is exact and continuous; between the books each corner is parted from
 * its neighbours.
 */
final class BooksFold {

    private static final double FREE = Double.POSITIVE_INFINITY;

    private final double spine;
    private final double wide;
    private final double thick;
    private final Outline cloth;
    private final Ends ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Facet> loose = new ArrayList<>();

    private BooksFold(Gift.Books books, Outline cloth, Ends ends) {
        this.spine = books.height().in(Unit.MILLIMETRE);
        this.wide = books.width().in(Unit.MILLIMETRE);
        this.thick = books.thickness().in(Unit.MILLIMETRE);
        this.cloth = cloth;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        if (!(fit.gift() instanceof Gift.Books books)) {
            throw new IllegalArgumentException(fit.gift() + " is not two books");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        BooksFold fold = new BooksFold(books, laying.whole(), Ends.of(fit.tail().in(Unit.MILLIMETRE)));
        for (Point way : List.of(NEAR, FAR)) {
            fold.book(way);
        }
        fold.spineAndCords();
        fold.facets.addAll(fold.loose);
        return new Fold(fit, laying, fold.facets, List.of(fold.knot()));
    }

    /** Height of the cover under which a book lies: the near book below, the far one above. */
    private double cover(Point way) {
        return way.v() < 0 ? 0 : 2 * thick;
    }

    /** From a book's cover towards the middle of the pair. */
    private Space inwards(Point way) {
        return way.v() < 0 ? UP : UP.times(-1);
    }

    private void book(Point way) {
        Space foreEdge = new Space(0, -1, 0);
        Space in = inwards(way);
        String name = way.v() < 0 ? "near" : "far";
        Outline half = cloth.above(way, thick);
        Space hinge = UP.times(cover(way));
        Plane inner = new Plane(name + " inner face", in);
        double edge = thick + wide;
        double knot = 2 * spine + thick;
        for (Point side : List.of(RIGHT, LEFT)) {
            Space out = Space.flat(side);
            Outline own = half.above(side, spine / 2).below(side, knot);
            Space head = out.times(spine / 2).plus(hinge);
            Sheet.Run over = new Sheet.Run(way, thick, foreEdge, wide);
            Outline rest = own.above(side, spine / 2 + thick);
            Sheet.Run back = new Sheet.Run(side, spine / 2 + thick, out.times(-1), spine);
            facets.addAll(new Sheet(head.plus(in.times(thick)), back, over, inner).inwards(rest, Facet.Part.TUCK));
            Sheet.Run up = new Sheet.Run(side, spine / 2, in, FREE);
            Plane plane = new Plane((side.u() > 0 ? "right" : "left") + " end, " + name + " book", out);
            facets.addAll(
                    new Sheet(head, up, over, plane).inwards(own.below(side, spine / 2 + thick), Facet.Part.WALL));
        }
        Outline middle = half.between(RIGHT, -spine / 2, spine / 2);
        Sheet.Run across = new Sheet.Run(RIGHT, 0, Space.flat(RIGHT), FREE);
        Space far = hinge.plus(foreEdge.times(wide));
        Sheet.Run inside = new Sheet.Run(way, edge + thick, foreEdge.times(-1), wide);
        facets.addAll(new Sheet(far.plus(in.times(thick)), inside, across, inner)
                .inwards(middle.above(way, edge + thick), Facet.Part.TUCK));
        Plane fore = new Plane("fore edge, " + name + " book", foreEdge);
        facets.addAll(new Sheet(far, new Sheet.Run(way, edge, in, FREE), across, fore)
                .inwards(middle.between(way, edge, edge + thick), Facet.Part.WALL));
        Plane outside = new Plane(way.v() < 0 ? "underneath" : "top", in.times(-1));
        facets.addAll(new Sheet(hinge, new Sheet.Run(way, thick, foreEdge, FREE), across, outside)
                .inwards(middle.below(way, edge), way.v() < 0 ? Facet.Part.BASE : Facet.Part.TOP));
    }

    private void spineAndCords() {
        Outline gap = cloth.between(FAR, -thick, thick);
        Plane plane = new Plane("spine", new Space(0, 1, 0));
        Motion flat = Motion.laying(new Point(0, 0), UP.times(thick), RIGHT, Space.flat(RIGHT), FAR, UP);
        facets.add(new Facet(Facet.Part.WALL, gap.between(RIGHT, -spine / 2, spine / 2), flat, plane));
        double knot = 2 * spine + thick;
        for (Point way : List.of(RIGHT, LEFT)) {
            Space out = Space.flat(way);
            Space in = new Space(0, -1, 0);
            Plane along = new Plane("cord along the spine " + way, new Space(0, 1, 0));
            Strip.Path path = new Strip.Path(out.times(spine / 2).plus(UP.times(thick)), spine / 2)
                    .on(in, thick / 2, Facet.Part.CORD, new Plane("cord in " + way, out))
                    .on(out.times(-1), spine, Facet.Part.CORD, along)
                    .on(in.times(-1), thick / 2, Facet.Part.CORD, new Plane("cord out " + way, out))
                    .on(out, spine / 2, Facet.Part.CORD, along);
            Space side = UP.times(way.left().v());
            Strip cord = new Strip(new Point(0, 0), way, side, Math.min(ends.bunch(), thick));
            loose.addAll(cord.lay(gap.between(way, spine / 2, knot), path.runs()));
            Outline end = cloth.above(way, knot);
            loose.addAll(ends.lay(
                    List.of(end),
                    way.times(knot),
                    way,
                    knot().at(),
                    out.times(-1),
                    side,
                    spine / 2,
                    new Space(0, 1, 0)));
        }
    }

    private Knot knot() {
        Space away = new Space(0, 1, 0);
        return new Knot(
                UP.times(thick).plus(away.times(ends.bunch())),
                Space.flat(RIGHT),
                away,
                ends.bunch(),
                ends.taken(),
                0,
                List.of(lead(RIGHT), lead(LEFT)));
    }

    /** The right corner comes back along the spine from the left. */
    private Knot.Lead lead(Point way) {
        return new Knot.Lead(way.times(2 * spine + thick), way);
    }
}
