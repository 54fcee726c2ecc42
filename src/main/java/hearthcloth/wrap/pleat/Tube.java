package hearthcloth.wrap.pleat;

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
 * Cloth rolled round a tube whose axis lies along the cloth's u: a prism of {@link #SIDES} flat sides as wide as their
 * arc, so that every length round it is true (the prism stands 0.6 % inside the round). Turns lie in one surface; the
 * cloth's thickness is not drawn.
 *
 * @param foot the tube's end in space, on its axis, nearest the cloth's middle
 * @param along unit vector of the axis, for growing |u|
 * @param down unit vector from the axis to where v = 0 lies
 * @param across unit vector there for growing v
 * @param sense +1 for the part of the cloth with u &gt; 0, −1 for the other
 * @param start |u| at the foot
 */
public record Tube(
        String name, Vector foot, Vector along, Vector down, Vector across, int sense, double start, double radius) {

    public static final int SIDES = 24;

    double side() {
        return 2 * Math.PI * radius / SIDES;
    }

    private double inner() {
        return side() / (2 * Elementary.tan(Math.PI / SIDES));
    }

    private Point axis() {
        return new Point(sense, 0);
    }

    private static final Point ROUND = new Point(0, 1);

    private Vector out(int m) {
        double angle = 2 * Math.PI * m / SIDES;
        return down.times(Elementary.cos(angle)).plus(across.times(Elementary.sin(angle)));
    }

    private Vector going(int m) {
        double angle = 2 * Math.PI * m / SIDES;
        return across.times(Elementary.cos(angle)).plus(down.times(-Elementary.sin(angle)));
    }

    private ConvexPolygon strip(ConvexPolygon region, int m) {
        return region.between(ROUND, (m - 0.5) * side(), (m + 0.5) * side());
    }

    private int most(ConvexPolygon region, int way) {
        double most = 0;
        for (Point corner : region.corners()) {
            most = Math.max(most, way * corner.y());
        }
        return (int) Math.ceil(most / side());
    }

    /** The wall, wound from the near tip inside to the far tip outside. */
    public List<Facet> wall(ConvexPolygon region) {
        List<Facet> facets = new ArrayList<>();
        for (int m = -most(region, -1); m <= most(region, 1); m++) {
            ConvexPolygon piece = strip(region, m);
            if (!piece.isEmpty()) {
                Point from = new Point(sense * start, m * side());
                Vector to = foot.plus(out(m).times(inner()));
                Motion motion = Motion.laying(from, to, axis(), along, ROUND, going(m));
                facets.add(new Facet(Facet.Part.WALL, piece, motion, new FacetPlane(side(m), out(m))));
            }
        }
        return facets;
    }

    private String side(int m) {
        return name + " side " + Math.floorMod(m, SIDES);
    }

    /**
     * The flat end at distance {@code length} from the foot. The outermost full turn that reaches the disc's middle
     * folds in over the rim, each strip pleated as a fan about that middle; what lies within it or beyond it is folded
     * away beneath. It takes the cloth up to a radius beyond the rim.
     */
    public List<Facet> disc(ConvexPolygon spare, double length) {
        double rim = start + length;
        ConvexPolygon region = spare.between(axis(), rim, rim + radius);
        double last = farthest(spare, rim + radius);
        double first = last - 2 * Math.PI * radius;
        Vector middle = foot.plus(along.times(length));
        FacetPlane plane = new FacetPlane(name + " end " + along, along);
        List<Facet> facets = new ArrayList<>(folded(region.below(ROUND, first), rim, middle, plane));
        facets.addAll(folded(region.above(ROUND, last), rim, middle, plane));
        ConvexPolygon turn = region.between(ROUND, first, last);
        facets.addAll(folded(turn.above(axis(), rim + inner()), rim, middle, plane));
        List<Facet> over = new ArrayList<>();
        ConvexPolygon shown = turn.below(axis(), rim + inner());
        for (int m = (int) Math.floor(first / side()); m <= Math.ceil(last / side()); m++) {
            Point tip = axis().times(rim + inner()).plus(ROUND.times(m * side()));
            // seen from the tip the strip lies back towards the rim
            Vector left = going(m).times(-sense);
            Pleating fan = new Pleating.Fan(tip, axis().times(-1), middle, out(m), left, Math.PI / SIDES);
            for (Facet facet : fan.lay(strip(shown, m), Facet.Part.WALL, plane)) {
                (facet.part() == Facet.Part.WALL ? over : facets).add(facet);
            }
        }
        // the turn's first and last strip share a sector, so every tuck goes under every strip
        facets.addAll(over);
        return facets;
    }

    /** Cloth folded to and fro inside a square that fits the disc. */
    private List<Facet> folded(ConvexPolygon rest, double rim, Vector middle, FacetPlane plane) {
        double room = radius * Math.sqrt(2) * 0.98;
        double least = 0;
        for (Point corner : rest.corners()) {
            least = Math.min(least, corner.y());
        }
        Vector corner = middle.plus(out(0).plus(going(0)).times(room / 2));
        FoldedSheet sheet = new FoldedSheet(
                corner,
                new FoldedSheet.Run(axis(), rim, out(0).times(-1), room),
                new FoldedSheet.Run(ROUND, least, going(0).times(-1), room),
                plane);
        return sheet.outwards(rest);
    }

    /** The greatest v of the cloth at this |u|. */
    private double farthest(ConvexPolygon spare, double reach) {
        ConvexPolygon there = spare.above(axis(), reach);
        double most = 0;
        for (Point corner : there.corners()) {
            if (axis().dot(corner) < reach + 1e-6) {
                most = Math.max(most, corner.y());
            }
        }
        return most;
    }

    /**
     * A path round the tube from where v = 0 lies to the middle of a side, in the direction of {@code across} times
     * {@code way}.
     */
    public FoldedStrip.Path arc(Vector from, double gone, int way, int sides) {
        FoldedStrip.Path path = new FoldedStrip.Path(from, gone);
        for (int m = 0; m <= sides; m++) {
            double length = m == 0 || m == sides ? side() / 2 : side();
            FacetPlane plane = new FacetPlane(name + " round " + way + " " + m, out(way * m));
            path.on(going(way * m).times(way), length, Facet.Part.CORD, plane);
        }
        return path;
    }
}
