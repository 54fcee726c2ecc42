package hearthcloth.wrap.pleat;

import static hearthcloth.geometry.Vector.UP;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Unit;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Motion;
import java.util.List;

/**
 * The cloth under, beside and over a box, without the spare corners: base, four walls, four flaps over the top.
 *
 * @param halfL half the long side, left to right; {@code halfW} half the short one, near to far
 */
public record Panels(double halfL, double halfW, double height, ConvexPolygon cloth) {

    public static final Point RIGHT = new Point(1, 0);
    public static final Point LEFT = new Point(-1, 0);
    public static final Point FAR = new Point(0, 1);
    public static final Point NEAR = new Point(0, -1);

    private static final double FREE = Double.POSITIVE_INFINITY;

    /** The sides of a box. */
    public record Sides(FacetPlane top, FacetPlane base) {
        public static final Sides BOX =
                new Sides(new FacetPlane("top", UP), new FacetPlane("underneath", UP.times(-1)));

        public FacetPlane wall(Point way) {
            String across = way.x() > 0 ? "right-wall" : "left-wall";
            String along = way.y() > 0 ? "far-wall" : "near-wall";
            return new FacetPlane(way.y() == 0 ? across : along, Vector.flat(way));
        }
    }

    public static Panels of(Gift.Box box, ConvexPolygon cloth) {
        return new Panels(
                box.along().in(Unit.MILLIMETRE) / 2,
                box.across().in(Unit.MILLIMETRE) / 2,
                box.height().in(Unit.MILLIMETRE),
                cloth);
    }

    public double half(Point way) {
        return way.y() == 0 ? halfL : halfW;
    }

    /** The distance on the cloth at which a flap reaches the rim. */
    public double start(Point way) {
        return half(way) + height;
    }

    public Facet base() {
        ConvexPolygon region = cloth.between(RIGHT, -halfL, halfL).between(FAR, -halfW, halfW);
        Motion flat = new Motion(new Point(0, 0), new Vector(0, 0, 0), new Vector(1, 0, 0), new Vector(0, 1, 0));
        return new Facet(Facet.Part.BASE, region, flat, Sides.BOX.base());
    }

    public List<Facet> wall(Point way) {
        ConvexPolygon region = flap(way).between(way, half(way), start(way));
        Vector foot = Vector.flat(way).times(half(way));
        return sheet(way, foot, half(way), UP, FREE, Sides.BOX.wall(way)).inwards(region, Facet.Part.WALL);
    }

    /** The flap over the top as far as its knot, flat. */
    public List<Facet> top(Point way, double reach) {
        return over(way, FREE).inwards(flap(way).between(way, start(way), start(way) + reach), Facet.Part.TOP);
    }

    /** The whole flap over the top, its tip folded under to and fro where it would hang over. */
    public List<Facet> laid(Point way) {
        return over(way, 2 * half(way)).inwards(flap(way).above(way, start(way)), Facet.Part.TOP);
    }

    /** What the flap has beyond {@code reach}, laid flat and folded away. */
    public List<Facet> rest(Point way, double reach) {
        return over(way, 2 * half(way)).inwards(flap(way).above(way, start(way) + reach), Facet.Part.TUCK);
    }

    /** The flap over the top, pleated as a fan about its knot so that only the triangle from its own edge shows. */
    public List<Facet> drawnIn(Point way, double reach) {
        Vector out = Vector.flat(way);
        Pleating fan = new Pleating.Fan(
                way.times(start(way) + reach),
                way.times(-1),
                rim(way).minus(out.times(reach)),
                out,
                Vector.flat(way.left()).times(-1),
                Elementary.atan(half(way.left()) / reach));
        ConvexPolygon region = flap(way).between(way, start(way), start(way) + reach);
        return fan.lay(region, Facet.Part.TOP, Sides.BOX.top());
    }

    private FoldedSheet over(Point way, double room) {
        return sheet(way, rim(way), start(way), Vector.flat(way).times(-1), room, Sides.BOX.top());
    }

    private Vector rim(Point way) {
        return Vector.flat(way).times(half(way)).plus(UP.times(height));
    }

    private static FoldedSheet sheet(
            Point way, Vector base, double start, Vector going, double room, FacetPlane plane) {
        Point left = way.left();
        return new FoldedSheet(
                base,
                new FoldedSheet.Run(way, start, going, room),
                new FoldedSheet.Run(left, 0, Vector.flat(left), FREE),
                plane);
    }

    private ConvexPolygon flap(Point way) {
        double beside = half(way.left());
        return cloth.between(way.left(), -beside, beside);
    }
}
