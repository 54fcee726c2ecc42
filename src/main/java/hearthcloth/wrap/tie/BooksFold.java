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
import java.util.ArrayList;
import java.util.List;

/**
 * Two books closed on each other, the spine away from the maker. The cloth under the near book is the bottom, under the
 * gap the spine, under the far book the top. Walls stand round the edges, and everything beyond them is folded flat
 * between the books. The left and right corners run in over the ends of the gap, between the books to the other end,
 * and back along the spine to the knot in its middle. What shows is exact and continuous; between the books each corner
 * is parted from its neighbours.
 */
final class BooksFold {

    private static final double FREE = Double.POSITIVE_INFINITY;

    private final TyingMoment moment;
    private final double spine;
    private final double wide;
    private final double thick;
    private final ConvexPolygon cloth;
    private final KnotEnds ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Facet> loose = new ArrayList<>();

    private BooksFold(TyingMoment moment, Gift.Books books, ConvexPolygon cloth, KnotEnds ends) {
        this.moment = moment;
        this.spine = books.height().in(Unit.MILLIMETRE);
        this.wide = books.width().in(Unit.MILLIMETRE);
        this.thick = books.thickness().in(Unit.MILLIMETRE);
        this.cloth = cloth;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        return at(TyingMoment.TIED, fit);
    }

    /**
     * The fold at a moment. Before the books are closed they lie open, the ends crossed in the gap; before they are
     * tied the ends stand out.
     */
    static Fold at(TyingMoment moment, Fit fit) {
        if (!(fit.gift() instanceof Gift.Books books)) {
            throw new IllegalArgumentException(fit.gift() + " is not two books");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        BooksFold fold = new BooksFold(
                moment, books, laying.whole(), KnotEnds.of(fit.tail().in(Unit.MILLIMETRE)));
        for (Point way : List.of(NEAR, FAR)) {
            fold.book(way);
        }
        fold.spineAndCords();
        fold.facets.addAll(fold.loose);
        return new Fold(fit, laying, fold.facets, moment == TyingMoment.TIED ? List.of(fold.knot()) : List.of());
    }

    /** Height of the cover under which a book lies: the near book below, the far one above, in millimetres. */
    private double cover(Point way) {
        return isOpen() || way.y() < 0 ? 0 : 2 * thick;
    }

    private boolean isOpen() {
        return moment == TyingMoment.ENDS_IN;
    }

    /** The direction from a book's cover towards the middle of the pair. */
    private Vector inwards(Point way) {
        return isOpen() || way.y() < 0 ? UP : UP.times(-1);
    }

    private void book(Point way) {
        Vector foreEdge = isOpen() ? Vector.flat(way) : new Vector(0, -1, 0);
        Vector in = inwards(way);
        String name = way.y() < 0 ? "near" : "far";
        ConvexPolygon half = cloth.above(way, thick);
        Vector hinge = UP.times(cover(way)).plus(isOpen() ? Vector.flat(way).times(thick) : new Vector(0, 0, 0));
        FacetPlane inner = new FacetPlane(name + "-inner", in);
        double edge = thick + wide;
        double knot = 2 * spine + thick;
        ConvexPolygon middle = half.between(RIGHT, -spine / 2, spine / 2);
        FoldedSheet.Run across = new FoldedSheet.Run(RIGHT, 0, Vector.flat(RIGHT), FREE);
        Vector far = hinge.plus(foreEdge.times(wide));
        FoldedSheet.Run inside = new FoldedSheet.Run(way, edge + thick, foreEdge.times(-1), wide);
        facets.addAll(inside(
                new FoldedSheet(far.plus(in.times(thick)), inside, across, inner), middle.above(way, edge + thick)));
        FacetPlane fore = new FacetPlane("fore-edge-" + name, foreEdge);
        facets.addAll(new FoldedSheet(far, new FoldedSheet.Run(way, edge, in, FREE), across, fore)
                .inwards(middle.between(way, edge, edge + thick), Facet.Part.WALL));
        FacetPlane outside = new FacetPlane(way.y() < 0 ? "underneath" : "top", in.times(-1));
        facets.addAll(new FoldedSheet(hinge, new FoldedSheet.Run(way, thick, foreEdge, FREE), across, outside)
                .inwards(middle.below(way, edge), isOpen() || way.y() < 0 ? Facet.Part.BASE : Facet.Part.TOP));
        for (Point side : List.of(RIGHT, LEFT)) {
            Vector out = Vector.flat(side);
            ConvexPolygon own = half.above(side, spine / 2).below(side, knot);
            Vector head = out.times(spine / 2).plus(hinge);
            FoldedSheet.Run over = new FoldedSheet.Run(way, thick, foreEdge, wide);
            ConvexPolygon rest = own.above(side, spine / 2 + thick);
            FoldedSheet.Run back = new FoldedSheet.Run(side, spine / 2 + thick, out.times(-1), spine);
            facets.addAll(inside(new FoldedSheet(head.plus(in.times(thick)), back, over, inner), rest));
            FoldedSheet.Run up = new FoldedSheet.Run(side, spine / 2, in, FREE);
            FacetPlane plane = new FacetPlane((side.x() > 0 ? "right" : "left") + " end, " + name + " book", out);
            ConvexPolygon end = own.below(side, spine / 2 + thick);
            for (Facet facet : new FoldedSheet(head, up, over, plane).inwards(end, Facet.Part.WALL)) {
                facets.add(isOpen() ? facet.as(Facet.Part.WALL) : facet);
            }
        }
    }

    /** Cloth folded flat on the inner face of a book, hidden once the books are closed. */
    private List<Facet> inside(FoldedSheet sheet, ConvexPolygon region) {
        return sheet.inwards(region, Facet.Part.TUCK).stream()
                .map(facet -> isOpen() ? facet.as(Facet.Part.TOP) : facet)
                .toList();
    }

    private void spineAndCords() {
        ConvexPolygon gap = cloth.between(FAR, -thick, thick);
        ConvexPolygon middle = gap.between(RIGHT, -spine / 2, spine / 2);
        if (isOpen()) {
            facets.add(new Facet(
                    Facet.Part.BASE,
                    middle,
                    Motion.laying(
                            new Point(0, 0), new Vector(0, 0, 0), RIGHT, Vector.flat(RIGHT), FAR, Vector.flat(FAR)),
                    new FacetPlane("gap", UP.times(-1))));
        } else {
            FacetPlane plane = new FacetPlane("spine", new Vector(0, 1, 0));
            Motion flat = Motion.laying(new Point(0, 0), UP.times(thick), RIGHT, Vector.flat(RIGHT), FAR, UP);
            facets.add(new Facet(Facet.Part.WALL, middle, flat, plane));
        }
        for (Point way : List.of(RIGHT, LEFT)) {
            Vector out = Vector.flat(way);
            // into the gap at one end, through it to the other
            Vector in = isOpen() ? UP : new Vector(0, -1, 0);
            Vector side =
                    isOpen() ? Vector.flat(way.left()) : UP.times(way.left().y());
            Vector start = out.times(spine / 2).plus(isOpen() ? new Vector(0, 0, 0) : UP.times(thick));
            FacetPlane along = new FacetPlane("cord-along-spine " + way, in.times(isOpen() ? 1 : -1));
            FoldedStrip.Path path = new FoldedStrip.Path(start, spine / 2)
                    .on(in, thick / 2, Facet.Part.CORD, new FacetPlane("cord-in " + way, out))
                    .on(out.times(-1), spine, Facet.Part.CORD, along);
            FoldedStrip cord = new FoldedStrip(new Point(0, 0), way, side, Math.min(ends.bunch(), thick));
            if (moment == TyingMoment.TIED) {
                path.on(in.times(-1), thick / 2, Facet.Part.CORD, new FacetPlane("cord-out " + way, out))
                        .on(out, spine / 2, Facet.Part.CORD, along);
                tied(way, gap, cord, path, side);
            } else {
                held(way, gap, cord, path, side);
            }
        }
    }

    private void tied(Point way, ConvexPolygon gap, FoldedStrip cord, FoldedStrip.Path path, Vector side) {
        double knot = 2 * spine + thick;
        loose.addAll(cord.lay(gap.between(way, spine / 2, knot), path.runs()));
        ConvexPolygon end = cloth.above(way, knot);
        Vector out = Vector.flat(way).times(-1);
        loose.addAll(
                ends.lay(List.of(end), way.times(knot), way, knot().at(), out, side, spine / 2, new Vector(0, 1, 0)));
    }

    /** The part of an end that the gap does not hold stands out at the other end. */
    private void held(Point way, ConvexPolygon gap, FoldedStrip cord, FoldedStrip.Path path, Vector side) {
        double knot = 2 * spine + thick;
        double gone = path.gone();
        loose.addAll(cord.lay(gap.between(way, spine / 2, gone), path.runs()));
        FreeEnd free = new FreeEnd(
                way.times(gone), way, path.at(), Vector.flat(way).times(-1), side, isOpen() ? UP : new Vector(0, 1, 0));
        List<ConvexPolygon> regions = List.of(gap.between(way, gone, knot), cloth.above(way, knot));
        for (ConvexPolygon region : regions) {
            loose.addAll(free.held(region, isOpen() ? 12 : 0));
        }
    }

    private ReefKnot knot() {
        Vector away = new Vector(0, 1, 0);
        return new ReefKnot(
                UP.times(thick).plus(away.times(ends.bunch())),
                Vector.flat(RIGHT),
                away,
                ends.bunch(),
                ends.taken(),
                0,
                List.of(lead(RIGHT), lead(LEFT)));
    }

    /** The lead of an end; the right corner comes back along the spine from the left. */
    private ReefKnot.Lead lead(Point way) {
        return new ReefKnot.Lead(way.times(2 * spine + thick), way);
    }
}
