package hearthcloth.wrap.pleat;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Motion;
import java.util.ArrayList;
import java.util.List;

/**
 * Cloth laid flat in one plane and folded to and fro where it would run out of room: the image of a point is base +
 * way₁ · zig(x₁) + way₂ · zig(x₂), where zig is the triangle wave between zero and a room. It is continuous, and an
 * isometry band by band.
 *
 * @param base where x₁ = x₂ = 0 lies in space
 */
public record FoldedSheet(Vector base, Run first, Run second, FacetPlane plane) {

    /**
     * One of the two directions at right angles.
     *
     * @param axis unit vector on the cloth; x = axis · point − start
     * @param way unit vector in space
     * @param room width before the cloth folds back; infinite for none
     */
    public record Run(Point axis, double start, Vector way, double room) {

        ConvexPolygon band(ConvexPolygon region, int k) {
            return Double.isInfinite(room) ? region : region.between(axis, start + k * room, start + (k + 1) * room);
        }

        int bands(ConvexPolygon region) {
            double most = 0;
            for (Point corner : region.corners()) {
                most = Math.max(most, axis.dot(corner) - start);
            }
            return Double.isInfinite(room) ? 1 : Math.max(1, (int) Math.ceil(most / room - 1e-9));
        }

        /** The beginning of band k on the cloth, and how far along the direction in space that lies. */
        double begin(int k) {
            return start + (k == 0 ? 0 : k * room);
        }

        double zig(int k) {
            return k % 2 == 0 ? 0 : room;
        }

        Vector going(int k) {
            return k % 2 == 0 ? way : way.times(-1);
        }
    }

    /** The facets with band (0, 0) outermost, as part {@code shown}, and the others under it as tucks. */
    public List<Facet> inwards(ConvexPolygon region, Facet.Part shown) {
        List<Facet> facets = new ArrayList<>();
        for (int i = first.bands(region) - 1; i >= 0; i--) {
            for (int j = second.bands(region) - 1; j >= 0; j--) {
                add(region, i, j, i + j == 0 ? shown : Facet.Part.TUCK, facets);
            }
        }
        return facets;
    }

    /** All bands as tucks, band (0, 0) innermost. */
    public List<Facet> outwards(ConvexPolygon region) {
        List<Facet> facets = new ArrayList<>();
        for (int i = 0; i < first.bands(region); i++) {
            for (int j = 0; j < second.bands(region); j++) {
                add(region, i, j, Facet.Part.TUCK, facets);
            }
        }
        return facets;
    }

    private void add(ConvexPolygon region, int i, int j, Facet.Part part, List<Facet> facets) {
        ConvexPolygon piece = second.band(first.band(region, i), j);
        if (piece.isEmpty()) {
            return;
        }
        Point from = first.axis.times(first.begin(i)).plus(second.axis.times(second.begin(j)));
        Vector to = base.plus(first.way.times(first.zig(i))).plus(second.way.times(second.zig(j)));
        Motion motion = Motion.laying(from, to, first.axis, first.going(i), second.axis, second.going(j));
        facets.add(new Facet(part, piece, motion, plane));
    }
}
