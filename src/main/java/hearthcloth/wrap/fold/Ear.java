package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;

import static hearthcloth.wrap.fold.Space.UP;

import java.util.List;

/**
 * The spare cloth beyond one corner of a box's base, folded away inside: an exact, continuous folding. With p and q the
 * distances beyond the base's two edges, {@code A} (0 ≤ q ≤ p) hangs on the panel it is folded inside of, {@code C} (0 ≤ p
 * ≤ q − h) on the other panel above the rim, and {@code B} joins them; creases run at 45° from the base's corner (p = q)
 * and from the rim's corner (p = q − h). A and B lie against the first panel's wall and over its top, pleated to keep
 * inside.
 *
 * @param a way of the panel inside of which the ear lies, {@code b} of the other
 * @param halfA half the base along a, {@code halfB} along b
 * @param pleat width to which the ear is pleated
 * @param spare cloth of this corner: p ≥ 0, q ≥ 0
 * @param knotA what A has beyond p = this goes with its panel to a knot
 * @param knotB what B and C have beyond q = this goes with the other
 */
record Ear(
        Point a,
        Point b,
        double halfA,
        double halfB,
        double height,
        double pleat,
        Outline spare,
        double knotA,
        double knotB,
        Panels.Sides sides) {

    private Outline areaA() {
        return spare.below(b.minus(a), halfB - halfA).below(a, halfA + knotA);
    }

    /** B and C together: q ≥ p. */
    private Outline areaBC() {
        return spare.above(b.minus(a), halfB - halfA).below(b, halfB + knotB);
    }

    private Space rim(double z) {
        return Space.flat(a).times(halfA).plus(Space.flat(b).times(halfB)).plus(UP.times(z));
    }

    private Sheet.Run inside(Point axis, double start) {
        return new Sheet.Run(axis, start, Space.flat(b).times(-1), pleat);
    }

    private Sheet.Run over(Point axis, double start) {
        return new Sheet.Run(axis, start, Space.flat(a).times(-1), 2 * halfA);
    }

    private static Sheet.Run up(Point axis, double start) {
        return new Sheet.Run(axis, start, UP, Double.POSITIVE_INFINITY);
    }

    /** A on the wall: outermost nearest the panel. */
    List<Facet> wallA() {
        Sheet sheet = new Sheet(rim(0), up(a, halfA), inside(b, halfB), sides.wall(a));
        return sheet.inwards(areaA().below(a, halfA + height), Facet.Part.TUCK);
    }

    List<Facet> wallB() {
        Sheet sheet = new Sheet(rim(0), up(b, halfB), inside(a, halfA), sides.wall(a));
        return sheet.outwards(areaBC().below(b, halfB + height));
    }

    List<Facet> topA() {
        Sheet sheet = new Sheet(rim(height), over(a, halfA + height), inside(b, halfB), sides.top());
        return sheet.inwards(areaA().above(a, halfA + height), Facet.Part.TUCK);
    }

    List<Facet> topB() {
        Sheet sheet = new Sheet(rim(height), over(b, halfB + height), inside(a, halfA), sides.top());
        Outline between = areaBC().above(b, halfB + height).below(b.minus(a), halfB + height - halfA);
        return sheet.outwards(between);
    }

    List<Facet> topC() {
        Sheet.Run along = new Sheet.Run(b, halfB + height, Space.flat(b).times(-1), 2 * halfB);
        Sheet sheet = new Sheet(rim(height), over(a, halfA), along, sides.top());
        return sheet.inwards(areaBC().above(b.minus(a), halfB + height - halfA), Facet.Part.TUCK);
    }
}
