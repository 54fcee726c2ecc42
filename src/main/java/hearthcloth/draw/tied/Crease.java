package hearthcloth.draw.tied;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An edge of a facet where the cloth is folded sharply or ends, so that a line can be seen. */
record Crease(Point from, Point to) {

    /** The cosine of the angle below which cloth counts as continuous; its strips then only serve the drawing. */
    private static final double SOFT = Math.cos(Math.toRadians(60));

    /** Rounding steps in a millimetre: edges that agree to a hundredth of a millimetre are the same. */
    private static final double SAME = 100;

    /** An edge identified by its middle on the flat cloth. */
    private record Where(long u, long v) {
        static Where of(Point a, Point b) {
            return new Where(Math.round((a.x() + b.x()) / 2 * SAME), Math.round((a.y() + b.y()) / 2 * SAME));
        }
    }

    /** The creases of every facet, in their order. */
    static List<List<Crease>> of(List<Facet> facets) {
        Map<Where, List<Facet>> beside = new HashMap<>();
        for (Facet facet : facets) {
            for (Crease edge : edges(facet.cloth())) {
                beside.computeIfAbsent(Where.of(edge.from, edge.to), key -> new ArrayList<>())
                        .add(facet);
            }
        }
        List<List<Crease>> creases = new ArrayList<>();
        for (Facet facet : facets) {
            creases.add(edges(facet.cloth()).stream()
                    .filter(edge -> beside.getOrDefault(Where.of(edge.from, edge.to), List.of()).stream()
                            .noneMatch(other -> !other.equals(facet) && runsOn(facet, other, edge)))
                    .toList());
        }
        return creases;
    }

    private static boolean runsOn(Facet one, Facet other, Crease edge) {
        Vector here = one.motion().at(edge.from);
        Vector there = other.motion().at(edge.from);
        return here.minus(there).length() < 0.1
                && one.motion().inside().dot(other.motion().inside()) > SOFT;
    }

    private static List<Crease> edges(ConvexPolygon outline) {
        List<Crease> edges = new ArrayList<>();
        List<Point> corners = outline.corners();
        for (int i = 0; i < corners.size(); i++) {
            edges.add(new Crease(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return edges;
    }

    /** Whether the line between two points lies along this edge, within a thousandth of a millimetre. */
    boolean holds(Point a, Point b) {
        double du = to.x() - from.x();
        double dv = to.y() - from.y();
        double length = Math.hypot(du, dv);
        return Math.abs((a.x() - from.x()) * dv - (a.y() - from.y()) * du) < 1e-3 * length
                && Math.abs((b.x() - from.x()) * dv - (b.y() - from.y()) * du) < 1e-3 * length;
    }
}
