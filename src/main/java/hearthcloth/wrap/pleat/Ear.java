package hearthcloth.wrap.pleat;

import static hearthcloth.geometry.Vector.UP;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import java.util.List;

/**
 * The spare cloth beyond one corner of a box's base, folded away inside (docs/sources.md#box-fold): an exact,
 * continuous folding. With p and q the distances beyond the base's two edges, {@code A} (0 ≤ q ≤ p) hangs on the panel
 * inside of which it is folded, {@code C} (0 ≤ p ≤ q − h) on the other panel above the rim, and {@code B} joins them;
 * creases run at 45° from the base's corner (p = q) and from the rim's corner (p = q − h). A and B lie against the
 * first panel's wall and over its top, pleated so that they stay inside.
 *
 * @param a way of the panel inside of which the ear lies, {@code b} of the other
 * @param halfA half the base along a, {@code halfB} along b
 * @param pleat width to which the ear is pleated
 * @param spare cloth of this corner: p ≥ 0, q ≥ 0
 * @param knotA what A has beyond p = this goes with its panel to a knot
 * @param knotB what B and C have beyond q = this goes with the other
 */
public record Ear(
        Point a,
        Point b,
        double halfA,
        double halfB,
        double height,
        double pleat,
        ConvexPolygon spare,
        double knotA,
        double knotB,
        Panels.Sides sides) {

    private ConvexPolygon areaA() {
        return spare.below(b.minus(a), halfB - halfA).below(a, halfA + knotA);
    }

    /** B and C together: q ≥ p. */
    private ConvexPolygon areaBC() {
        return spare.above(b.minus(a), halfB - halfA).below(b, halfB + knotB);
    }

    private Vector rim(double z) {
        return Vector.flat(a).times(halfA).plus(Vector.flat(b).times(halfB)).plus(UP.times(z));
    }

    private FoldedSheet.Run inside(Point axis, double start) {
        return new FoldedSheet.Run(axis, start, Vector.flat(b).times(-1), pleat);
    }

    private FoldedSheet.Run over(Point axis, double start) {
        return new FoldedSheet.Run(axis, start, Vector.flat(a).times(-1), 2 * halfA);
    }

    private static FoldedSheet.Run up(Point axis, double start) {
        return new FoldedSheet.Run(axis, start, UP, Double.POSITIVE_INFINITY);
    }

    /** The part A on the wall, the outermost facet nearest the panel. */
    public List<Facet> wallA() {
        FoldedSheet sheet = new FoldedSheet(rim(0), up(a, halfA), inside(b, halfB), sides.wall(a));
        return sheet.inwards(areaA().below(a, halfA + height), Facet.Part.TUCK);
    }

    public List<Facet> wallB() {
        FoldedSheet sheet = new FoldedSheet(rim(0), up(b, halfB), inside(a, halfA), sides.wall(a));
        return sheet.outwards(areaBC().below(b, halfB + height));
    }

    public List<Facet> topA() {
        FoldedSheet sheet = new FoldedSheet(rim(height), over(a, halfA + height), inside(b, halfB), sides.top());
        return sheet.inwards(areaA().above(a, halfA + height), Facet.Part.TUCK);
    }

    public List<Facet> topB() {
        FoldedSheet sheet = new FoldedSheet(rim(height), over(b, halfB + height), inside(a, halfA), sides.top());
        ConvexPolygon between = areaBC().above(b, halfB + height).below(b.minus(a), halfB + height - halfA);
        return sheet.outwards(between);
    }

    public List<Facet> topC() {
        FoldedSheet.Run along =
                new FoldedSheet.Run(b, halfB + height, Vector.flat(b).times(-1), 2 * halfB);
        FoldedSheet sheet = new FoldedSheet(rim(height), over(a, halfA), along, sides.top());
        return sheet.inwards(areaBC().above(b.minus(a), halfB + height - halfA), Facet.Part.TUCK);
    }
}
