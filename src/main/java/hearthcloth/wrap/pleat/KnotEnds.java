package hearthcloth.wrap.pleat;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays what a corner has left at a knot. The knot takes {@link #DIAMETERS} bunch diameters of it, laid as a small pack
 * of that many folds where the knot sits. The rest is the free end, which comes out beside its own standing part as in
 * a reef knot ({@link FreeEnd}).
 *
 * @param bunch diameter of the gathered cloth, in millimetres
 */
public record KnotEnds(double bunch) {

    /**
     * Cloth that a reef knot takes from each end, in bunch diameters: a guess (docs/sources.md#knot-take-up); see
     * {@link hearthcloth.wrap.Tail}.
     */
    static final int DIAMETERS = 7;

    /**
     * Thickness of light cotton in millimetres (docs/sources.md#ply); the pleats and knots that are drawn need no
     * better value.
     */
    private static final double THIN = 0.25;

    /**
     * The ends of a 90° corner gathered {@code tail} mm from its tip, where D = √(16 τ t/π) (docs/sources.md#bunch).
     */
    public static KnotEnds of(double tail) {
        return new KnotEnds(Math.max(4, Math.sqrt(16 * THIN * tail / Math.PI)));
    }

    public double taken() {
        return DIAMETERS * bunch;
    }

    /**
     * Lays one end given in pieces; as the other method does, at a knot that stands up.
     *
     * @param regions the end's cloth; what lies short of {@code origin} is gathered into the knot as well
     * @param origin where the path reaches the knot
     * @param axis the corner's direction on the cloth
     * @param knot the knot's middle
     * @param out unit vector of the free end
     * @param side unit vector to which the axis's left turns
     * @param edge how far the free end runs before it hangs down
     */
    public List<Facet> lay(
            List<ConvexPolygon> regions, Point origin, Point axis, Vector knot, Vector out, Vector side, double edge) {
        return lay(regions, origin, axis, knot, out, side, edge, Vector.UP);
    }

    /** An end in one piece. */
    public List<Facet> lay(
            ConvexPolygon region, Point origin, Point axis, Vector knot, Vector out, Vector side, double edge) {
        return lay(List.of(region), origin, axis, knot, out, side, edge, Vector.UP);
    }

    /** The same at a knot that stands off the gift in another direction than up. */
    public List<Facet> lay(
            List<ConvexPolygon> regions,
            Point origin,
            Point axis,
            Vector knot,
            Vector out,
            Vector side,
            double edge,
            Vector up) {
        double length = 0;
        double lack = 0;
        for (ConvexPolygon region : regions) {
            for (Point corner : region.corners()) {
                double on = axis.dot(corner.minus(origin));
                length = Math.max(length, on);
                lack = Math.max(lack, -on);
            }
        }
        List<Facet> facets = new ArrayList<>();
        FacetPlane pack = new FacetPlane("knot " + axis + knot, up);
        // what lies short of the knot is packed with it, in folds by twos so that the end still leaves from its middle
        int before = 2 * (int) Math.ceil(lack / (2 * bunch) - 1e-9);
        FoldedStrip.Path path = new FoldedStrip.Path(knot, -before * bunch);
        double knotted = Math.min(taken(), length);
        for (int i = 0; i < before + DIAMETERS; i++) {
            Vector way = i % 2 == 0 ? out : out.times(-1);
            path.on(way, Math.min(bunch, knotted - path.gone()), Facet.Part.KNOT, pack);
        }
        FoldedStrip strip = new FoldedStrip(origin, axis, side, Math.max(bunch / 2, length / 8));
        for (ConvexPolygon region : regions) {
            facets.addAll(strip.lay(region.below(axis, axis.dot(origin) + knotted), path.runs()));
        }
        Vector exit = ReefStrands.exit(knot, out, up, taken());
        double room = edge - exit.minus(knot).dot(out);
        FreeEnd free = new FreeEnd(origin.plus(axis.times(knotted)), axis, exit, out, side, up);
        double beyond = axis.dot(free.from());
        for (ConvexPolygon region : regions) {
            facets.addAll(free.lay(region.above(axis, beyond), length - knotted, room));
        }
        return facets;
    }

    /** Lays what is short of where an end begins, as a small pack of folds there. */
    public List<Facet> pack(List<ConvexPolygon> regions, Point origin, Point axis, Vector at, Vector out, Vector side) {
        double zero = axis.dot(origin);
        double lack = 0;
        for (ConvexPolygon region : regions) {
            for (Point corner : region.corners()) {
                lack = Math.max(lack, zero - axis.dot(corner));
            }
        }
        int folds = 2 * (int) Math.ceil(lack / (2 * bunch) - 1e-9);
        FoldedStrip.Path path = new FoldedStrip.Path(at, -folds * bunch);
        for (int i = 0; i < folds; i++) {
            path.on(
                    out.times(i % 2 == 0 ? 1 : -1),
                    bunch,
                    Facet.Part.KNOT,
                    new FacetPlane("pack " + axis + at, Vector.UP));
        }
        List<Facet> facets = new ArrayList<>();
        for (ConvexPolygon region : folds == 0 ? List.<ConvexPolygon>of() : regions) {
            facets.addAll(new FoldedStrip(origin, axis, side, bunch / 2).lay(region.below(axis, zero), path.runs()));
        }
        return facets;
    }
}
