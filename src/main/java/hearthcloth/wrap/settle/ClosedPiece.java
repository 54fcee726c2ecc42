package hearthcloth.wrap.settle;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import java.util.List;

/** A piece of the closed cloth. */
record ClosedPiece(Facet facet, ConvexPolygon outline) {

    /** Pieces touch that are no farther apart than this, in millimetres. */
    private static final double TOUCHES = 0.3;

    /** Whether a place in space lies on it, or at its edge. */
    boolean holds(Vector place) {
        Vector off = place.minus(facet.motion().to());
        if (Math.abs(off.dot(facet.motion().inside())) > TOUCHES) {
            return false;
        }
        Point at = facet.motion().back(place);
        List<Point> corners = outline.corners();
        for (int i = 0; i < corners.size(); i++) {
            Point way = corners.get((i + 1) % corners.size()).minus(corners.get(i));
            if (way.left().dot(at.minus(corners.get(i))) < -TOUCHES * Math.sqrt(way.dot(way))) {
                return false;
            }
        }
        return true;
    }
}
