package hearthcloth.wrap.drape;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import java.util.List;

/**
 * One hand at one corner of a cloth under a box: lifts it, gathers it on the way and brings it along its strand of a
 * knot. The cloth beyond the rim is gathered where it is as long as the way from the rim to the knot, point for point.
 */
final class Grip {

    /** Gives the way over the rim a little more than it needs, as a share of the cloth from base to knot. */
    private static final double SLACK = 0.06;

    /** The pleats of a gathered end are this many gaps of the grid long. */
    private static final double PLEAT = 5;

    /** How a free end stands off its knot while this is tied. */
    private static final double LEAF_OUT = 0.6;

    private static final double LEAF_UP = 0.8;

    private final Sheet sheet;
    private final Point way;
    private final double foot;
    private final double height;
    private final double reach;
    private final double slack;
    private final List<Vector> strand;
    private final double taken;
    private final double bunch;
    private final double[] beyond;
    private final int[] held;
    private final int[] tail;
    private double tip = 1e-9;
    private double widest;

    /**
     * A grip.
     *
     * @param way the unit vector on the cloth to the corner
     * @param foot how far the gift's foot is from the middle that way
     * @param height of the gift
     * @param strand the middle line of its end in the knot
     * @param bunch the diameter of the gathered end
     */
    Grip(Sheet sheet, Point way, double foot, double height, List<Vector> strand, double bunch) {
        this.sheet = sheet;
        this.way = way;
        this.foot = foot;
        this.height = height;
        this.strand = strand;
        this.bunch = bunch;
        Vector first = strand.get(0);
        double in = foot - first.dot(Vector.flat(way));
        this.reach = Math.sqrt(in * in + (first.z() - height) * (first.z() - height));
        this.slack = SLACK * (foot + height + reach);
        double sum = 0;
        for (int i = 1; i < strand.size(); i++) {
            sum += strand.get(i).minus(strand.get(i - 1)).length();
        }
        this.taken = sum;
        this.beyond = new double[sheet.points()];
        Ints inside = new Ints();
        Ints beyondAll = new Ints();
        for (int k = 0; k < beyond.length; k++) {
            double c = aside(k);
            beyond[k] = along(k) - foot - height - Math.sqrt(c * c + reach * reach) - slack;
            if (isTail(k)) {
                beyondAll.add(k);
                tip = Math.max(tip, beyond[k] - taken);
            }
            if (isKnotted(k)) {
                inside.add(k);
                widest = Math.max(widest, Math.abs(c));
            }
        }
        this.held = inside.all();
        this.tail = beyondAll.all();
    }

    private double along(int k) {
        return way.x() * sheet.grid.u[k] + way.y() * sheet.grid.v[k];
    }

    private double aside(int k) {
        return way.left().x() * sheet.grid.u[k] + way.left().y() * sheet.grid.v[k];
    }

    /** How far a point lies beyond where its end is gathered; below zero short of it. */
    double beyond(int k) {
        return beyond[k];
    }

    double taken() {
        return taken;
    }

    boolean isTail(int k) {
        return beyond[k] > taken;
    }

    /** Whether the knot takes a point. */
    boolean isKnotted(int k) {
        return beyond[k] > 0 && beyond[k] <= taken;
    }

    int[] held() {
        return held;
    }

    /**
     * Puts what is held where it is.
     *
     * @param lift the share of the lift that is done, {@code tie} of the tying
     */
    void hold(double lift, double tie) {
        double gather = smooth(lift / 0.55);
        double[] hand = hand(lift);
        Vector out = Vector.flat(way);
        Vector side = Vector.flat(way.left());
        Vector at = out.times(hand[0])
                .plus(side.times(strand.get(0).dot(side) * lift))
                .plus(Vector.UP.times(hand[1]));
        Vector dir = out.times(hand[2]).plus(Vector.UP.times(hand[3])).unit();
        Vector off = side.cross(dir);
        Vector last = strand.get(strand.size() - 1);
        Vector leaf = out.times(LEAF_OUT).plus(Vector.UP.times(LEAF_UP));
        for (int k : held) {
            Vector knot = strandAt(beyond[k]).plus(side.times(packed(k))).plus(off.times(pleat(k)));
            put(k, free(k, at, dir, side, off, gather), knot, tie);
        }
        for (int k : tail) {
            sheet.ease[k] = tie < 1 ? 0 : 1;
            if (tie < 1) {
                Vector knot = last.plus(leaf.times(beyond[k] - taken))
                        .plus(side.times(packed(k)))
                        .plus(side.cross(leaf).times(pleat(k)));
                put(k, free(k, at, dir, side, off, gather), knot, tie);
            }
        }
    }

    private Vector free(int k, Vector at, Vector dir, Vector side, Vector off, double gather) {
        double flat = along(k) - foot - height - reach - slack;
        double across = aside(k) * (1 - gather) + packed(k) * gather;
        double on = flat * (1 - gather) + beyond[k] * gather;
        return at.plus(dir.times(on)).plus(side.times(across)).plus(off.times(pleat(k) * gather));
    }

    private void put(int k, Vector free, Vector knot, double tie) {
        Vector to = free.times(1 - tie).plus(knot.times(tie));
        sheet.ease[k] = 0;
        sheet.p[3 * k] = to.x();
        sheet.p[3 * k + 1] = to.y();
        sheet.p[3 * k + 2] = to.z();
    }

    /** How far to the left of its end's middle line a point is gathered; the free end opens as a leaf. */
    private double packed(int k) {
        double share = 0.5 * bunch / widest;
        return aside(k) * (isTail(k) ? share + (0.5 - share) * (beyond[k] - taken) / tip : share);
    }

    private double pleat(int k) {
        return 0.45 * bunch * StrictMath.sin(2 * Math.PI * aside(k) / (PLEAT * sheet.grid.gap));
    }

    /** Outwards and up where the hand is, and where it points. */
    private double[] hand(double lift) {
        double full = (height + reach) * 0.985;
        if (lift < 0.5) {
            double angle = Math.PI * lift;
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            return new double[] {foot + full * cos, full * sin, cos, sin};
        }
        double q = 2 * lift - 1;
        Vector first = strand.get(0);
        double y = first.dot(Vector.flat(way)) - foot;
        double z = first.z() - height;
        double angle = Math.PI / 2 + (StrictMath.atan2(z, y) - Math.PI / 2) * q;
        double far = (full - height) * (1 - q) + reach * q;
        return new double[] {foot + far * StrictMath.cos(angle), height + far * StrictMath.sin(angle), 0.5 * q, 1};
    }

    private Vector strandAt(double gone) {
        double left = gone;
        for (int i = 1; i < strand.size(); i++) {
            Vector step = strand.get(i).minus(strand.get(i - 1));
            double length = step.length();
            if (left <= length || i == strand.size() - 1) {
                return strand.get(i - 1).plus(step.times(Math.min(1, left / length)));
            }
            left -= length;
        }
        return strand.get(0);
    }

    static double smooth(double share) {
        double t = Math.max(0, Math.min(1, share));
        return t * t * (3 - 2 * t);
    }
}
