package hearthcloth.wrap.pleat;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays a stretch of cloth along a path of flat segments one after another. Every fold is square to the axis, and the
 * cloth beyond a given half width is pleated to and fro under the middle. It is an exact isometry piece by piece.
 *
 * @param origin where on the flat cloth the path begins
 * @param axis unit vector of the path on the flat cloth
 * @param side unit vector in space to which the axis's left turns, the same along the whole path
 * @param half half the width that shows; cloth beyond is pleated at this width
 */
public record FoldedStrip(Point origin, Point axis, Vector side, double half) {

    /** A straight segment of a path. */
    record Run(Facet.Part part, Vector from, Vector way, double start, double end, FacetPlane plane) {

        boolean isLoose() {
            return part == Facet.Part.CORD || part == Facet.Part.KNOT || part == Facet.Part.TAIL;
        }
    }

    /** A path through points in space from a distance {@code start} along the axis; each leg is a segment. */
    public static final class Path {
        private final List<Run> runs = new ArrayList<>();
        private Vector at;
        private double gone;

        public Path(Vector at, double start) {
            this.at = at;
            this.gone = start;
        }

        /** Continues straight to {@code to}, in a plane. */
        Path to(Vector to, Facet.Part part, FacetPlane plane) {
            Vector way = to.minus(at);
            double length = way.length();
            if (length > 1e-9) {
                runs.add(new Run(part, at, way.unit(), gone, gone + length, plane));
                at = to;
                gone += length;
            }
            return this;
        }

        /** Continues for {@code length} in a direction. */
        public Path on(Vector way, double length, Facet.Part part, FacetPlane plane) {
            return length <= 0 ? this : to(at.plus(way.times(length)), part, plane);
        }

        public double gone() {
            return gone;
        }

        public Vector at() {
            return at;
        }

        public List<Run> runs() {
            return List.copyOf(runs);
        }
    }

    /**
     * The region laid along the runs, with the first and the last run continued as far as there is cloth. In each run
     * the pleats come first, from the outermost in, then the middle.
     */
    public List<Facet> lay(ConvexPolygon region, List<Run> runs) {
        List<Facet> facets = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            double zero = axis.dot(origin);
            ConvexPolygon slab = i == 0 ? region : region.above(axis, zero + run.start);
            slab = i == runs.size() - 1 ? slab : slab.below(axis, zero + run.end);
            Pleating pleats =
                    new Pleating.Parallel(origin.plus(axis.times(run.start)), axis, run.from, run.way, side, half);
            for (Facet facet : pleats.lay(slab, run.part, run.plane)) {
                // loose ends stay what they are in every pleat
                facets.add(run.isLoose() ? facet.as(run.part) : facet);
            }
        }
        return facets;
    }
}
