package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;

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

    private final Moment moment;
    private final double spine;
    private final double wide;
    private final double thick;
    private final Outline cloth;
    private final Ends ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Facet> loose = new ArrayList<>();

    private BooksFold(Moment moment, Gift.Books books, Outline cloth, Ends ends) {
        this.moment = moment;
        this.spine = books.height().in(Unit.MILLIMETRE);
        this.wide = books.width().in(Unit.MILLIMETRE);
        this.thick = books.thickness().in(Unit.MILLIMETRE);
        this.cloth = cloth;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        return at(Moment.TIED, fit);
    }

    /** Before they are closed the books lie open, the ends crossed in the gap; before they are tied the ends stand out. */
    static Fold at(Moment moment, Fit fit) {
        if (!(fit.gift() instanceof Gift.Books books)) {
            throw new IllegalArgumentException(fit.gift() + " is not two books");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        BooksFold fold =
                new BooksFold(moment, books, laying.whole(), Ends.of(fit.tail().in(Unit.MILLIMETRE)));
        for (Point way : List.of(NEAR, FAR)) {
            fold.book(way);
        }
        fold.spineAndCords();
        fold.facets.addAll(fold.loose);
        return new Fold(fit, laying, fold.facets, moment == Moment.TIED ? List.of(fold.knot()) : List.of());
    }

    /** Height of the cover under which a book lies: the near book below, the far one above. */
    private double cover(Point way) {
        return isOpen() || way.y() < 0 ? 0 : 2 * thick;
    }

    private boolean isOpen() {
        return moment == Moment.ENDS_IN;
    }

    /** From a book's cover towards the middle of the pair. */
    private Space inwards(Point way) {
        return isOpen() || way.y() < 0 ? UP : UP.times(-1);
    }

    private void book(Point way) {
        Space foreEdge = isOpen() ? Space.flat(way) : new Space(0, -1, 0);
        Space in = inwards(way);
        String name = way.y() < 0 ? "near" : "far";
        Outline half = cloth.above(way, thick);
        Space hinge = UP.times(cover(way)).plus(isOpen() ? Space.flat(way).times(thick) : new Space(0, 0, 0));
        Plane inner = new Plane(name + " inner face", in);
        double edge = thick + wide;
        double knot = 2 * spine + thick;
        Outline middle = half.between(RIGHT, -spine / 2, spine / 2);
        Sheet.Run across = new Sheet.Run(RIGHT, 0, Space.flat(RIGHT), FREE);
        Space far = hinge.plus(foreEdge.times(wide));
        Sheet.Run inside = new Sheet.Run(way, edge + thick, foreEdge.times(-1), wide);
        facets.addAll(
                inside(new Sheet(far.plus(in.times(thick)), inside, across, inner), middle.above(way, edge + thick)));
        Plane fore = new Plane("fore edge, " + name + " book", foreEdge);
        facets.addAll(new Sheet(far, new Sheet.Run(way, edge, in, FREE), across, fore)
                .inwards(middle.between(way, edge, edge + thick), Facet.Part.WALL));
        Plane outside = new Plane(way.y() < 0 ? "underneath" : "top", in.times(-1));
        facets.addAll(new Sheet(hinge, new Sheet.Run(way, thick, foreEdge, FREE), across, outside)
                .inwards(middle.below(way, edge), isOpen() || way.y() < 0 ? Facet.Part.BASE : Facet.Part.TOP));
        for (Point side : List.of(RIGHT, LEFT)) {
            Space out = Space.flat(side);
            Outline own = half.above(side, spine / 2).below(side, knot);
            Space head = out.times(spine / 2).plus(hinge);
            Sheet.Run over = new Sheet.Run(way, thick, foreEdge, wide);
            Outline rest = own.above(side, spine / 2 + thick);
            Sheet.Run back = new Sheet.Run(side, spine / 2 + thick, out.times(-1), spine);
            facets.addAll(inside(new Sheet(head.plus(in.times(thick)), back, over, inner), rest));
            Sheet.Run up = new Sheet.Run(side, spine / 2, in, FREE);
            Plane plane = new Plane((side.x() > 0 ? "right" : "left") + " end, " + name + " book", out);
            Outline end = own.below(side, spine / 2 + thick);
            for (Facet facet : new Sheet(head, up, over, plane).inwards(end, Facet.Part.WALL)) {
                facets.add(isOpen() ? facet.as(Facet.Part.WALL) : facet);
            }
        }
    }

    /** Folded flat on the inner face of a book: hidden, once they are closed. */
    private List<Facet> inside(Sheet sheet, Outline region) {
        return sheet.inwards(region, Facet.Part.TUCK).stream()
                .map(facet -> isOpen() ? facet.as(Facet.Part.TOP) : facet)
                .toList();
    }

    private void spineAndCords() {
        Outline gap = cloth.between(FAR, -thick, thick);
        Outline middle = gap.between(RIGHT, -spine / 2, spine / 2);
        if (isOpen()) {
            facets.add(new Facet(
                    Facet.Part.BASE,
                    middle,
                    Motion.laying(new Point(0, 0), new Space(0, 0, 0), RIGHT, Space.flat(RIGHT), FAR, Space.flat(FAR)),
                    new Plane("gap", UP.times(-1))));
        } else {
            Plane plane = new Plane("spine", new Space(0, 1, 0));
            Motion flat = Motion.laying(new Point(0, 0), UP.times(thick), RIGHT, Space.flat(RIGHT), FAR, UP);
            facets.add(new Facet(Facet.Part.WALL, middle, flat, plane));
        }
        for (Point way : List.of(RIGHT, LEFT)) {
            Space out = Space.flat(way);
            // into the gap at one end, through it to the other
            Space in = isOpen() ? UP : new Space(0, -1, 0);
            Space side = isOpen() ? Space.flat(way.left()) : UP.times(way.left().y());
            Space start = out.times(spine / 2).plus(isOpen() ? new Space(0, 0, 0) : UP.times(thick));
            Plane along = new Plane("cord along the spine " + way, in.times(isOpen() ? 1 : -1));
            Strip.Path path = new Strip.Path(start, spine / 2)
                    .on(in, thick / 2, Facet.Part.CORD, new Plane("cord in " + way, out))
                    .on(out.times(-1), spine, Facet.Part.CORD, along);
            Strip cord = new Strip(new Point(0, 0), way, side, Math.min(ends.bunch(), thick));
            if (moment == Moment.TIED) {
                path.on(in.times(-1), thick / 2, Facet.Part.CORD, new Plane("cord out " + way, out))
                        .on(out, spine / 2, Facet.Part.CORD, along);
                tied(way, gap, cord, path, side);
            } else {
                held(way, gap, cord, path, side);
            }
        }
    }

    private void tied(Point way, Outline gap, Strip cord, Strip.Path path, Space side) {
        double knot = 2 * spine + thick;
        loose.addAll(cord.lay(gap.between(way, spine / 2, knot), path.runs()));
        Outline end = cloth.above(way, knot);
        Space out = Space.flat(way).times(-1);
        loose.addAll(
                ends.lay(List.of(end), way.times(knot), way, knot().at(), out, side, spine / 2, new Space(0, 1, 0)));
    }

    /** What the gap does not hold stands out at the other end. */
    private void held(Point way, Outline gap, Strip cord, Strip.Path path, Space side) {
        double knot = 2 * spine + thick;
        double gone = path.gone();
        loose.addAll(cord.lay(gap.between(way, spine / 2, gone), path.runs()));
        Free free = new Free(
                way.times(gone), way, path.at(), Space.flat(way).times(-1), side, isOpen() ? UP : new Space(0, 1, 0));
        List<Outline> regions = List.of(gap.between(way, gone, knot), cloth.above(way, knot));
        for (Outline region : regions) {
            loose.addAll(free.held(region, isOpen() ? 12 : 0));
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
