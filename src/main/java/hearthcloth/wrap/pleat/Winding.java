package hearthcloth.wrap.pleat;

import static hearthcloth.geometry.Vector.UP;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Motion;
import java.util.ArrayList;
import java.util.List;

/**
 * A gathered end of cloth wound round an upright prism in a straight line on its unrolled sides: the left corner one
 * way round, the right corner the other. Only its middle pleat shows, as a flat band; the others lie folded to and fro
 * under it. Where the band would begin below the table it is folded up under the gift. It is an exact isometry, side by
 * side.
 *
 * @param way direction of the corner: left or right
 * @param start where the line begins at the foot of the prism, on the cloth along that direction
 * @param radius of the prism, from its axis square to a side
 * @param half half the width of the band
 */
public record Winding(Point way, double start, double radius, Line line, double half) {

    /** The slope of the line, in radians, and its length to its end. */
    public record Line(double angle, double length) {}

    /** +1 for anticlockwise seen from above, which is the right corner's direction; −1 for the left corner's. */
    private int sense() {
        return way.x() < 0 ? -1 : 1;
    }

    private double side() {
        return 2 * radius * Elementary.tan(Band.HALF_ANGLE);
    }

    /** Lays all of the region from the line's foot to its end. */
    public List<Facet> lay(ConvexPolygon region) {
        List<Facet> facets = new ArrayList<>();
        int most = 0;
        for (Point corner : region.corners()) {
            most = Math.max(most, (int) Math.round(Math.abs(way.left().dot(corner)) / (2 * half)));
        }
        for (int far = most; far >= 0; far--) {
            for (int k = -far; k <= far; k += Math.max(1, 2 * far)) {
                ConvexPolygon pleat = region.between(way.left(), (2 * k - 1) * half, (2 * k + 1) * half);
                if (!pleat.isEmpty()) {
                    lay(pleat, k, facets);
                }
            }
        }
        return facets;
    }

    private void lay(ConvexPolygon pleat, int k, List<Facet> facets) {
        // the way across the band on the cloth, as it then runs on the wall: forwards and up for sign +1
        int sign = -sense() * (k % 2 == 0 ? 1 : -1);
        Point middle = way.times(start).plus(way.left().times(2 * k * half));
        double cos = Elementary.cos(line.angle);
        double sin = Elementary.sin(line.angle);
        Point along = way.times(cos).minus(way.left().times(sign * sin));
        Point up = way.times(sin).plus(way.left().times(sign * cos));
        ConvexPolygon above = pleat.above(up, up.dot(middle));
        ConvexPolygon below = pleat.below(up, up.dot(middle));
        double zero = along.dot(middle);
        int first = (int) Math.floor(-half / side()) - 1;
        int last = (int) Math.ceil((line.length * cos + half) / side()) + 1;
        for (int j = first; j <= last; j++) {
            double from = zero + (j - 0.5) * side();
            add(
                    k == 0 ? Facet.Part.CORD : Facet.Part.TUCK,
                    above.between(along, from, from + side()),
                    j,
                    1,
                    sign,
                    k,
                    facets);
            add(Facet.Part.TUCK, below.between(along, from, from + side()), j, -1, sign, k, facets);
        }
    }

    /** Adds a facet on side j from where the band began; {@code upward} is −1 for what is folded up at the table. */
    private void add(Facet.Part part, ConvexPolygon outline, int j, int upward, int sign, int k, List<Facet> facets) {
        if (!outline.isEmpty()) {
            FacetPlane plane = new FacetPlane("winding " + side(j), Vector.flat(Band.way(side(j))));
            facets.add(new Facet(part, outline, motion(j, upward, sign, k), plane));
        }
    }

    private int side(int j) {
        return Math.floorMod((way.x() < 0 ? Band.SIDES / 2 : 0) + sense() * j, Band.SIDES);
    }

    /** How the middle pleat lies on side j. */
    public Motion motion(int j) {
        return motion(j, 1, -sense(), 0);
    }

    private Motion motion(int j, int upward, int sign, int k) {
        Vector out = Vector.flat(Band.way(side(j)));
        Vector forward = UP.cross(out).times(sense());
        Vector rise = UP.times(upward);
        Vector on = forward.times(Elementary.cos(line.angle)).plus(rise.times(Elementary.sin(line.angle)));
        Vector across = rise.times(Elementary.cos(line.angle))
                .minus(forward.times(Elementary.sin(line.angle)))
                .times(sign);
        Point from = way.times(start).plus(way.left().times(2 * k * half));
        Vector to = out.times(radius).minus(forward.times(j * side()));
        return Motion.laying(from, to, way, on, way.left(), across);
    }
}
