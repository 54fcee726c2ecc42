package hearthcloth.wrap.fold;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays a stretch of cloth along a path: flat segments one after another, every fold square to the axis, the cloth beside
 * a given half width pleated to and fro under the middle. An exact isometry piece by piece.
 *
 * @param origin where on the flat cloth the path begins
 * @param axis unit way of the path on the flat cloth
 * @param side unit way in space that the axis's left turns to, the same along the whole path
 * @param half half the width that shows; cloth beyond is pleated at this width
 */
record Strip(Point origin, Point axis, Space side, double half) {

    /** A straight run of a path. */
    record Run(Facet.Part part, Space from, Space way, double start, double end, Plane plane) {}

    /** Follows points in space from a distance {@code start} along the axis; each leg is a run. */
    static final class Path {
        private final List<Run> runs = new ArrayList<>();
        private Space at;
        private double gone;

        Path(Space at, double start) {
            this.at = at;
            this.gone = start;
        }

        /** Straight to {@code to}, in a plane. */
        Path to(Space to, Facet.Part part, Plane plane) {
            Space way = to.minus(at);
            double length = way.length();
            if (length > 1e-9) {
                runs.add(new Run(part, at, way.unit(), gone, gone + length, plane));
                at = to;
                gone += length;
            }
            return this;
        }

        /** For {@code length} in a unit way. */
        Path on(Space way, double length, Facet.Part part, Plane plane) {
            return length <= 0 ? this : to(at.plus(way.times(length)), part, plane);
        }

        double gone() {
            return gone;
        }

        Space at() {
            return at;
        }

        List<Run> runs() {
            return List.copyOf(runs);
        }
    }

    /** The region laid along the runs: in each run the pleats first, from the outermost in, then the middle. */
    List<Facet> lay(Outline region, List<Run> runs) {
        List<Facet> facets = new ArrayList<>();
        Point left = axis.left();
        for (Run run : runs) {
            double from = axis.dot(origin) + run.start;
            Outline slab = region.between(axis, from, axis.dot(origin) + run.end);
            int most = pleats(slab, left);
            for (int far = most; far >= 1; far--) {
                pleat(slab, run, far, facets);
                pleat(slab, run, -far, facets);
            }
            pleat(slab, run, 0, facets);
        }
        return facets;
    }

    private int pleats(Outline slab, Point left) {
        double widest = 0;
        for (Point corner : slab.corners()) {
            widest = Math.max(widest, Math.abs(left.dot(corner.minus(origin))));
        }
        return (int) Math.ceil(Math.max(0, widest - half) / (2 * half));
    }

    /** Pleat k holds the cloth from (2 k − 1) to (2 k + 1) half widths beside the axis; odd ones lie face about. */
    private void pleat(Outline slab, Run run, int k, List<Facet> facets) {
        Point left = axis.left();
        double beside = left.dot(origin);
        Outline piece = slab.between(left, beside + (2 * k - 1) * half, beside + (2 * k + 1) * half);
        if (piece.isEmpty()) {
            return;
        }
        Point from = origin.plus(axis.times(run.start)).plus(left.times(2 * k * half));
        Space across = Math.floorMod(k, 2) == 0 ? side : side.times(-1);
        Motion motion = Motion.along(from, run.from, axis, run.way, across);
        boolean shows =
                k == 0 || run.part == Facet.Part.TAIL || run.part == Facet.Part.KNOT || run.part == Facet.Part.CORD;
        facets.add(new Facet(shows ? run.part : Facet.Part.TUCK, piece, motion, run.plane));
    }
}
