package hearthcloth.wrap;

import static hearthcloth.wrap.BoxDemands.tip;
import static hearthcloth.wrap.Outward.mm;

import hearthcloth.number.Elementary;
import java.util.List;

/**
 * What the ties of bottles, balls, books and rolls need of the cloth. Two derivations were made apart from each other
 * and assume different paths here (docs/sources.md#two-derivations); which one is taken, and why, stands at each.
 */
final class CurvedDemands {

    private CurvedDemands() {}

    /**
     * One bottle, upright in the middle: body radius r, shoulder at height s, mouth of radius n at height H. One pair
     * of corners is tied over the mouth and needs r + s + √((r − n)² + (H − s)²) + n + t. The other pair goes three
     * quarters round, crosses behind and is knotted in front at half the shoulder's height z; on the unrolled body that
     * is a straight line, r + √(z² + (1.5 π r)²) + t.
     *
     * <p>Taken: pulled cloth bridges the hollow of the neck in a straight line from shoulder to mouth (first
     * derivation); following the neck inwards (second derivation) would leave it slack. Cover is taken as the cloth
     * falls, without easing it sideways, so that every drawn strip is true cloth (the rule of the second derivation
     * with the path of the first): the middle of each edge reaches the mouth, S/2 ≥ r + s + √(…). That gives 67.9 cm
     * for a wine bottle, which is sold a 68 cm cloth (docs/sources.md#bottle-cloths); easing would allow 50 cm, less
     * than the knot needs. The near and far flaps cover half the body each, a quarter round to either side at the
     * mouth's height: r + s + √(…) + π r/2, which decides for squat bottles.
     */
    static List<Demand> bottle(Gift.Bottle bottle, double tail) {
        double r = mm(bottle.diameter()) / 2;
        double mouth = mm(bottle.neck()) / 2;
        double up = r + mm(bottle.shoulder()) + taut(bottle);
        double round = r + Elementary.hypot(mm(bottle.shoulder()) / 2, 1.5 * Math.PI * r);
        return List.of(
                ray(Corner.NEAR, up + mouth, tail),
                ray(Corner.FAR, up + mouth, tail),
                ray(Corner.RIGHT, round, tail),
                ray(Corner.LEFT, round, tail),
                asItFalls(up),
                new Demand(Reason.COVER, new Reach.Band(), up + QUARTER * r, 0));
    }

    /** A quarter of the way round for a radius of one: π/2, and a little more for the flat strips of the drawing. */
    private static final double QUARTER = 1.58;

    /** The straight distance from the edge of the shoulder to the edge of the mouth, in millimetres. */
    static double taut(Gift.Bottle bottle) {
        return Elementary.hypot(
                mm(bottle.diameter()) / 2 - mm(bottle.neck()) / 2, mm(bottle.height()) - mm(bottle.shoulder()));
    }

    /**
     * Two bottles, bases facing on the left–right diagonal, rolled up and stood on end. The bases come to stand side by
     * side on a bridge of cloth: each starts max(gap/2, 2 r) from the middle, goes H along the bottle, r over its mouth:
     * d ≥ max(gap/2, 2 r) + H + r + t. One full turn must cover shoulder and mouth: d ≥ max(gap/2, 2 r) + max(s + π r, H +
     * π n).
     *
     * <p>Taken: the first derivation. Standing up, two bottles side by side span 4 r of cloth whatever the gap was (the
     * second counts half the gap, 4.5 cm against 7.5 for wine), and the rolled cloth runs level with the axis, so H counts
     * and not the profile.
     */
    static List<Demand> twoBottles(Gift.TwoBottles two, double tail) {
        Gift.Bottle bottle = two.each();
        double r = mm(bottle.diameter()) / 2;
        double start = mm(two.apart());
        double path = start + mm(bottle.height()) + r;
        double girth =
                Math.max(mm(bottle.shoulder()) + Math.PI * r, mm(bottle.height()) + Math.PI * mm(bottle.neck()) / 2);
        return List.of(
                tip(Corner.RIGHT, path, tail),
                tip(Corner.LEFT, path, tail),
                new Demand(Reason.COVER, new Reach.Band(), start + girth, 0));
    }

    /**
     * Something round, diameter D: every corner from the bottom to the top along a meridian, π D/2, then knot and tail
     * (the knots sit a little short of the top, so this is on the safe side). Cover as the cloth falls: the middle of an
     * edge reaches the top, S ≥ π D.
     *
     * <p>Taken: cover as it falls (the second derivation), not spread evenly (the first): an opening at the free edges
     * closes only if the cloth is pulled sideways, and a tie that may leave the gift bare is better refused.
     */
    static List<Demand> round(Gift.Round round, double tail) {
        double half = Math.PI * mm(round.diameter()) / 2;
        return List.of(
                ray(Corner.RIGHT, half, tail),
                ray(Corner.FAR, half, tail),
                ray(Corner.LEFT, half, tail),
                ray(Corner.NEAR, half, tail),
                asItFalls(half));
    }

    /**
     * How far the tips of the near and far flaps of the book wrap reach into the gap, in millimetres: 2 cm, from the
     * first derivation.
     */
    private static final double HOLD = 20;

    /**
     * Two books, each a along the spine, b wide and c thick, at the near and far side of a gap of 2 c that lies on the
     * left–right diagonal. The near and far corners come in over the books into the gap: c + b + c + b + 2 cm. The left
     * and right corners go under the gap to its end, a/2, in over that end and along between the books, c + a, and,
     * when the books are closed, back along the spine to a knot in its middle, a/2: d ≥ 2 a + c + t. Cover, with the
     * open pair as one box: d ≥ a/2 + b + c + c.
     *
     * <p>Taken: the first derivation, because its ends meet in a knot; in the second they leave the gap at opposite
     * ends and would need a/2 more each. It also gives 71 cm for two books of 188 × 127 × 25 mm with 10 cm tails, where
     * a tutorial says 70 cm (docs/sources.md#book-cloth). No measure of the path has been published, so this size and
     * the roll's are the least certain.
     */
    static List<Demand> books(Gift.Books books, double tail) {
        double a = mm(books.height());
        double b = mm(books.width());
        double c = mm(books.thickness());
        double path = 2 * a + c;
        return List.of(
                tip(Corner.RIGHT, path, tail),
                tip(Corner.LEFT, path, tail),
                new Demand(Reason.TUCK, new Reach.Tip(Corner.NEAR), 2 * b + 2 * c, HOLD),
                new Demand(Reason.TUCK, new Reach.Tip(Corner.FAR), 2 * b + 2 * c, HOLD),
                new Demand(Reason.COVER, new Reach.Band(), a / 2 + b + 2 * c, 0));
    }

    /**
     * A roll of radius r and length L on the left–right diagonal. Each end: half the length, up across the disc 2 r, back
     * to the middle, there crossed and taken half a round to the other side, π r: d ≥ L + 2 r + π r + t. One full turn at
     * the ends: d ≥ L/2 + π r. Both derivations agree. (Knotted where the ends meet, without the half round, it needs π r
     * less, but holds less well.)
     */
    static List<Demand> roll(Gift.Roll roll, double tail) {
        double r = mm(roll.diameter()) / 2;
        double path = mm(roll.length()) + 2 * r + Math.PI * r;
        return List.of(
                tip(Corner.RIGHT, path, tail),
                tip(Corner.LEFT, path, tail),
                new Demand(Reason.COVER, new Reach.Band(), mm(roll.length()) / 2 + Math.PI * r, 0));
    }

    private static Demand ray(Corner corner, double path, double tail) {
        return new Demand(Reason.KNOT, new Reach.Ray(corner), path, tail);
    }

    /** The nearest points of the cloth's edge lie half a side from the middle: in the band's measure, √2 times that. */
    private static Demand asItFalls(double path) {
        return new Demand(Reason.COVER, new Reach.Band(), Math.sqrt(2) * path, 0);
    }
}
