package hearthcloth.wrap.fold;

import hearthcloth.geometry.Point;

import static hearthcloth.wrap.fold.Space.UP;

import hearthcloth.measure.Unit;
import hearthcloth.wrap.Gift;
import java.util.List;

/**
 * The cloth right under, beside and over a box, without the spare corners: base, four walls, four flaps over the top.
 *
 * @param halfL half the long side, left to right; {@code halfW} half the short one, near to far
 */
record Panels(double halfL, double halfW, double height, Outline cloth) {

    static final Point RIGHT = new Point(1, 0);
    static final Point LEFT = new Point(-1, 0);
    static final Point FAR = new Point(0, 1);
    static final Point NEAR = new Point(0, -1);

    private static final double FREE = Double.POSITIVE_INFINITY;

    /** The sides of a box. */
    record Sides(Plane top, Plane base) {
        static final Sides BOX = new Sides(new Plane("top", UP), new Plane("underneath", UP.times(-1)));

        Plane wall(Point way) {
            String across = way.x() > 0 ? "right wall" : "left wall";
            String along = way.y() > 0 ? "far wall" : "near wall";
            return new Plane(way.y() == 0 ? across : along, Space.flat(way));
        }
    }

    static Panels of(Gift.Box box, Outline cloth) {
        return new Panels(
                box.along().in(Unit.MILLIMETRE) / 2,
                box.across().in(Unit.MILLIMETRE) / 2,
                box.height().in(Unit.MILLIMETRE),
                cloth);
    }

    double half(Point way) {
        return way.y() == 0 ? halfL : halfW;
    }

    /** Where the flap's cloth reaches the rim. */
    double start(Point way) {
        return half(way) + height;
    }

    Facet base() {
        Outline region = cloth.between(RIGHT, -halfL, halfL).between(FAR, -halfW, halfW);
        Motion flat = new Motion(new Point(0, 0), new Space(0, 0, 0), new Space(1, 0, 0), new Space(0, 1, 0));
        return new Facet(Facet.Part.BASE, region, flat, Sides.BOX.base());
    }

    List<Facet> wall(Point way) {
        Outline region = flap(way).between(way, half(way), start(way));
        Space foot = Space.flat(way).times(half(way));
        return sheet(way, foot, half(way), UP, FREE, Sides.BOX.wall(way)).inwards(region, Facet.Part.WALL);
    }

    /** The flap over the top as far as its knot, flat. */
    List<Facet> top(Point way, double reach) {
        return over(way, FREE).inwards(flap(way).between(way, start(way), start(way) + reach), Facet.Part.TOP);
    }

    /** The whole flap over the top, its tip folded under to and fro where it would hang over. */
    List<Facet> laid(Point way) {
        return over(way, 2 * half(way)).inwards(flap(way).above(way, start(way)), Facet.Part.TOP);
    }

    /** What the flap has beyond {@code reach}, laid flat and folded away. */
    List<Facet> rest(Point way, double reach) {
        return over(way, 2 * half(way)).inwards(flap(way).above(way, start(way) + reach), Facet.Part.TUCK);
    }

    /** The flap over the top, pleated as a fan about its knot so that only the triangle from its own edge shows. */
    List<Facet> drawnIn(Point way, double reach) {
        Space out = Space.flat(way);
        Pleating fan = new Pleating.Fan(
                way.times(start(way) + reach),
                way.times(-1),
                rim(way).minus(out.times(reach)),
                out,
                Space.flat(way.left()).times(-1),
                Math.atan(half(way.left()) / reach));
        Outline region = flap(way).between(way, start(way), start(way) + reach);
        return fan.lay(region, Facet.Part.TOP, Sides.BOX.top());
    }

    private Sheet over(Point way, double room) {
        return sheet(way, rim(way), start(way), Space.flat(way).times(-1), room, Sides.BOX.top());
    }

    private Space rim(Point way) {
        return Space.flat(way).times(half(way)).plus(UP.times(height));
    }

    private static Sheet sheet(Point way, Space base, double start, Space going, double room, Plane plane) {
        Point left = way.left();
        return new Sheet(
                base, new Sheet.Run(way, start, going, room), new Sheet.Run(left, 0, Space.flat(left), FREE), plane);
    }

    private Outline flap(Point way) {
        double beside = half(way.left());
        return cloth.between(way.left(), -beside, beside);
    }
}
