package hearthcloth.draw.tied;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import java.util.ArrayList;
import java.util.List;

/**
 * A flat convex polygon in space. Of panes in one plane, later ones lie farther along {@code out}.
 *
 * @param corners in order round the edge
 * @param out unit vector square to it; of a closed body, outwards
 * @param oneSided true for the surface of a closed body, which is never seen from behind
 */
record Pane(List<Vector> corners, Vector out, boolean oneSided, Skin skin) {

    /** What a pane is made of. */
    sealed interface Skin {
        /** Cloth, laid as its facet says; {@code creases} are those of its edges that are drawn. */
        record Cloth(Facet facet, List<Crease> creases) implements Skin {
            public Cloth {
                creases = List.copyOf(creases);
            }
        }

        /** A stretch of gathered cloth whose middle line is here on the flat cloth; {@code light} from 0 to 1. */
        record Bunch(Point middle, double light) implements Skin {}

        /** Something that is not cloth. */
        record Plain(Colour colour) implements Skin {}
    }

    /** Millimetres within which a corner lies on a plane. */
    private static final double ON = 1e-6;

    Pane {
        corners = List.copyOf(corners);
    }

    /** The position of a pane relative to a plane. */
    enum Side {
        ON,
        BEFORE,
        BEHIND,
        ACROSS
    }

    /** The side of the plane {@code normal · place = at} on which the pane lies; the normal points to the front. */
    Side side(Vector normal, double at) {
        boolean before = false;
        boolean behind = false;
        for (Vector corner : corners) {
            double over = normal.dot(corner) - at;
            before |= over > ON;
            behind |= over < -ON;
        }
        if (before && behind) {
            return Side.ACROSS;
        }
        return before ? Side.BEFORE : behind ? Side.BEHIND : Side.ON;
    }

    /** The part in front of the plane; with the plane reversed, the part behind it. */
    Pane before(Vector normal, double at) {
        List<Vector> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vector a = corners.get(i);
            Vector b = corners.get((i + 1) % corners.size());
            double da = normal.dot(a) - at;
            double db = normal.dot(b) - at;
            if (da >= -ON) {
                kept.add(a);
            }
            if ((da < -ON && db > ON) || (da > ON && db < -ON)) {
                kept.add(a.plus(b.minus(a).times(da / (da - db))));
            }
        }
        return new Pane(kept, out, oneSided, skin);
    }
}
