package hearthcloth.wrap.fold;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Vector;
import java.util.List;

/**
 * One flat piece of the folded cloth.
 *
 * @param part what it is
 * @param cloth its outline on the flat cloth
 * @param motion how it is laid in space
 * @param plane the side of the wrapped gift it lies in
 */
public record Facet(Part part, ConvexPolygon cloth, Motion motion, FacetPlane plane) {

    /** What a piece of the folded cloth is. */
    public enum Part {
        /** Under the gift. */
        BASE,
        /** Up a side. */
        WALL,
        /** Over the top. */
        TOP,
        /** Folded away inside or under another piece; it never shows, so pictures may leave it out. */
        TUCK,
        /** A gathered end on its way to a knot. */
        CORD,
        /** Taken up by the knot; drawn as a small folded pack. */
        KNOT,
        /** The free end beyond a knot. */
        TAIL
    }

    /** The same piece as another part. */
    public Facet as(Part other) {
        return new Facet(other, cloth, motion, plane);
    }

    /** Its corners in space. */
    public List<Vector> corners() {
        return cloth.corners().stream().map(motion::at).toList();
    }

    /** Whether the piece hangs at the knot and shows only in part, from changing sides. */
    public boolean isLoose() {
        return part == Part.CORD || part == Part.KNOT || part == Part.TAIL;
    }
}
