package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays what a corner has left at a knot: the knot takes {@link #DIAMETERS} bunch diameters of it, laid as a small pack of
 * that many folds where the knot sits, and the rest is the free end, coming out beside its own standing part as in a reef
 * knot: {@link Free}.
 *
 * @param bunch diameter of the gathered cloth, millimetres
 */
record Ends(double bunch) {

    /** Half a reef knot's rope length, in diameters: a guess of both derivations; see {@link hearthcloth.wrap.Tail}. */
    static final int DIAMETERS = 7;

    /** Thickness of light cotton, millimetres: from memory; the pleats and knots drawn do not need it nearer. */
    private static final double THIN = 0.25;

    /** A 90° corner gathered {@code tail} from its tip: D = √(16 τ t/π). */
    static Ends of(double tail) {
        return new Ends(Math.max(4, Math.sqrt(16 * THIN * tail / Math.PI)));
    }

    double taken() {
        return DIAMETERS * bunch;
    }

    /**
     * One end in pieces; as the other, at a knot that stands up.
     *
     * @param regions the end's cloth; what lies short of {@code origin} is gathered into the knot as well
     * @param origin where the path reaches the knot
     * @param axis the corner's way on the cloth
     * @param knot the knot's middle
     * @param out unit way of the free end
     * @param side unit way to which the axis's left turns
     * @param edge how far the free end runs before it hangs down
     */
    List<Facet> lay(List<Outline> regions, Point origin, Point axis, Space knot, Space out, Space side, double edge) {
        return lay(regions, origin, axis, knot, out, side, edge, Space.UP);
    }

    /** An end in one piece. */
    List<Facet> lay(Outline region, Point origin, Point axis, Space knot, Space out, Space side, double edge) {
        return lay(List.of(region), origin, axis, knot, out, side, edge, Space.UP);
    }

    /** The same at a knot that stands off the gift by another way than up. */
    List<Facet> lay(
            List<Outline> regions, Point origin, Point axis, Space knot, Space out, Space side, double edge, Space up) {
        double length = 0;
        double lack = 0;
        for (Outline region : regions) {
            for (Point corner : region.corners()) {
                double on = axis.dot(corner.minus(origin));
                length = Math.max(length, on);
                lack = Math.max(lack, -on);
            }
        }
        List<Facet> facets = new ArrayList<>();
        Plane pack = new Plane("knot " + axis + knot, up);
        // what lies short of the knot is packed with it, in folds by twos so that the end still leaves from its middle
        int before = 2 * (int) Math.ceil(lack / (2 * bunch) - 1e-9);
        Strip.Path path = new Strip.Path(knot, -before * bunch);
        double knotted = Math.min(taken(), length);
        for (int i = 0; i < before + DIAMETERS; i++) {
            Space way = i % 2 == 0 ? out : out.times(-1);
            path.on(way, Math.min(bunch, knotted - path.gone()), Facet.Part.KNOT, pack);
        }
        Strip strip = new Strip(origin, axis, side, Math.max(bunch / 2, length / 8));
        for (Outline region : regions) {
            facets.addAll(strip.lay(region.below(axis, axis.dot(origin) + knotted), path.runs()));
        }
        Space exit = Reef.exit(knot, out, up, taken());
        double room = edge - exit.minus(knot).dot(out);
        Free free = new Free(origin.plus(axis.times(knotted)), axis, exit, out, side, up);
        double beyond = axis.dot(free.from());
        for (Outline region : regions) {
            facets.addAll(free.lay(region.above(axis, beyond), length - knotted, room));
        }
        return facets;
    }

    /** What lies short of where an end begins, as a small pack of folds there. */
    List<Facet> pack(List<Outline> regions, Point origin, Point axis, Space at, Space out, Space side) {
        double zero = axis.dot(origin);
        double lack = 0;
        for (Outline region : regions) {
            for (Point corner : region.corners()) {
                lack = Math.max(lack, zero - axis.dot(corner));
            }
        }
        int folds = 2 * (int) Math.ceil(lack / (2 * bunch) - 1e-9);
        Strip.Path path = new Strip.Path(at, -folds * bunch);
        for (int i = 0; i < folds; i++) {
            path.on(out.times(i % 2 == 0 ? 1 : -1), bunch, Facet.Part.KNOT, new Plane("pack " + axis + at, Space.UP));
        }
        List<Facet> facets = new ArrayList<>();
        for (Outline region : folds == 0 ? List.<Outline>of() : regions) {
            facets.addAll(new Strip(origin, axis, side, bunch / 2).lay(region.below(axis, zero), path.runs()));
        }
        return facets;
    }
}
