package hearthcloth.wrap;

import static hearthcloth.wrap.Outward.mm;

import hearthcloth.number.Elementary;
import java.util.List;

/**
 * What each tie of a box needs of the cloth. The box is l × w × h, with l, the longer side of the base, on the
 * left–right diagonal. Both derivations agree (docs/sources.md#two-derivations).
 *
 * <p>Cover, cloth set as a diamond (docs/sources.md#box-cover): a corner flap goes straight up its wall and over the
 * top. A point of the top at distance x from the nearer l-end and y from the nearer w-side, reached by the nearer flap,
 * needs |u| + |v| = (l + w)/2 + h + x − y with x ≤ y. This is greatest on the hip lines x = y, where it is (l + w)/2 +
 * h, the same as at the upper corners of the walls. So a box is covered when d ≥ (l + w)/2 + h, and off the middle by
 * (x, y) when d ≥ (l + w)/2 + h + |x| + |y|.
 */
final class BoxDemands {

    /**
     * Millimetres by which the left and right flaps each pass the middle, and the last tip passes the near edge: 5 cm
     * (docs/sources.md#flap-over).
     */
    static final double FLAP = 50;

    private BoxDemands() {}

    /**
     * Four-corner tie. Each corner goes along half the base, up the wall, over half the top, and then needs its knot
     * and tail: d ≥ l + h + t for left and right, d ≥ w + h + t for near and far. The longer axis decides; the cover
     * then has t + (l − w)/2 to spare.
     */
    static List<Demand> fourCorner(Gift.Box box, double tail) {
        return List.of(
                tip(Corner.RIGHT, along(box), tail),
                tip(Corner.LEFT, along(box), tail),
                tip(Corner.NEAR, across(box), tail),
                tip(Corner.FAR, across(box), tail),
                cover(box));
    }

    /**
     * Edge along edge, corners knotted on top. A corner of the cloth comes up the upright edge of the box, h, and over
     * the top to its middle, √(l² + w²)/2; the cloth between the base's corner and its own is √(a² + b²) with a = (S −
     * l)/2, b = (S − w)/2. Cover: the walls need a, b ≥ h, and one facing pair of flaps must meet on the top, S ≥
     * 2(min(l, w) + h). (Cutting the corner over a wall would be shorter, so the path up the edge is on the safe side.)
     */
    static List<Demand> edgeAlongEdge(Gift.Box box, double tail) {
        double l = mm(box.along());
        double w = mm(box.across());
        double path = mm(box.height()) + Elementary.hypot(l, w) / 2;
        return List.of(
                new Demand(Reason.KNOT, new Reach.FromBase(Corner.FAR_RIGHT, l, w), path, tail),
                new Demand(Reason.KNOT, new Reach.FromBase(Corner.FAR_LEFT, l, w), path, tail),
                new Demand(Reason.KNOT, new Reach.FromBase(Corner.NEAR_LEFT, l, w), path, tail),
                new Demand(Reason.KNOT, new Reach.FromBase(Corner.NEAR_RIGHT, l, w), path, tail),
                new Demand(Reason.COVER, new Reach.Walls(l, w), mm(box.height()), 0),
                new Demand(Reason.COVER, new Reach.Lid(l, w), mm(box.height()), 0));
    }

    /**
     * Errand wrap. The near and far flaps lie over the whole top and their tips reach the opposite edge: d ≥ w/2 + h +
     * w. Left and right are knotted over them: d ≥ l + h + t.
     */
    static List<Demand> errand(Gift.Box box, double tail) {
        double over = mm(box.across()) * 1.5 + mm(box.height());
        return List.of(
                tip(Corner.RIGHT, along(box), tail),
                tip(Corner.LEFT, along(box), tail),
                new Demand(Reason.TUCK, new Reach.Tip(Corner.NEAR), over, 0),
                new Demand(Reason.TUCK, new Reach.Tip(Corner.FAR), over, 0),
                cover(box));
    }

    /**
     * Flat wrap, without a knot. The near flap goes over and its tip back under: to the far edge of the top, w/2 + h +
     * w/2, and {@link #FLAP}. Left and right meet in the middle and overlap: l + h + {@link #FLAP}. The far flap comes
     * over all and its tip is tucked under at the near edge: 1.5 w + h + {@link #FLAP}.
     */
    static List<Demand> flat(Gift.Box box) {
        return List.of(
                new Demand(Reason.OVERLAP, new Reach.Tip(Corner.RIGHT), along(box), FLAP),
                new Demand(Reason.OVERLAP, new Reach.Tip(Corner.LEFT), along(box), FLAP),
                new Demand(Reason.OVERLAP, new Reach.Tip(Corner.NEAR), across(box), FLAP),
                new Demand(Reason.TUCK, new Reach.Tip(Corner.FAR), mm(box.across()) * 1.5 + mm(box.height()), FLAP),
                cover(box));
    }

    /**
     * Two-knot wrap. Near and far cross in the middle of the top and turn along it, to knots at x from the middle: w +
     * h + x. Left and right come l/2 + h + l/2 − x. All four ends are equal at x = (l − w)/2: d ≥ (l + w)/2 + h + t,
     * which saves (l − w)/2 compared with the four-corner tie. The turn at the crossing is not counted.
     */
    static List<Demand> twoKnot(Gift.Box box, double tail) {
        double path = (mm(box.along()) + mm(box.across())) / 2 + mm(box.height());
        return List.of(
                tip(Corner.RIGHT, path, tail),
                tip(Corner.LEFT, path, tail),
                tip(Corner.NEAR, path, tail),
                tip(Corner.FAR, path, tail),
                cover(box));
    }

    /**
     * Two-knot wrap of a roll lying along the left–right diagonal. Near and far meet over it after half a round, π r,
     * and turn along it by x; left and right go L/2, up 2 r and back L/2 − x. They are equal at x = (L + 2 r − π r)/2:
     * d ≥ (L + 2 r + π r)/2 + t; for a roll too stout for that, x = 0. Cover, as the cloth falls: a full turn where the
     * ends are folded in to the middle of the discs, d ≥ L/2 + r + π r. (The first derivation counts the path alone,
     * which would leave the tube bare near its ends.)
     */
    static List<Demand> twoKnot(Gift.Roll roll, double tail) {
        double r = mm(roll.diameter()) / 2;
        double length = mm(roll.length());
        double turn = Math.max(0, (length + 2 * r - Math.PI * r) / 2);
        return List.of(
                tip(Corner.RIGHT, length + 2 * r - turn, tail),
                tip(Corner.LEFT, length + 2 * r - turn, tail),
                tip(Corner.NEAR, Math.PI * r + turn, tail),
                tip(Corner.FAR, Math.PI * r + turn, tail),
                new Demand(Reason.COVER, new Reach.Band(), length / 2 + r + Math.PI * r, 0));
    }

    static Demand tip(Corner corner, double path, double tail) {
        return new Demand(Reason.KNOT, new Reach.Tip(corner), path, tail);
    }

    private static Demand cover(Gift.Box box) {
        double path = (mm(box.along()) + mm(box.across())) / 2 + mm(box.height());
        return new Demand(Reason.COVER, new Reach.Band(), path, 0);
    }

    /** From the left or right corner to the middle of the top. */
    private static double along(Gift.Box box) {
        return mm(box.along()) + mm(box.height());
    }

    /** From the near or far corner to the middle of the top. */
    private static double across(Gift.Box box) {
        return mm(box.across()) + mm(box.height());
    }
}
