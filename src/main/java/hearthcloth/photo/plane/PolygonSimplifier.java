package hearthcloth.photo.plane;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns a rim of many places into the few corners of a polygon, after Douglas and Peucker
 * (docs/sources.md#edges-and-lines). Then each corner is moved to where the straight lines fitted to the rim on its two
 * sides cross, and corners that hardly turn are dropped.
 */
public final class PolygonSimplifier {

    /** A corner that turns by less than this is none. */
    private static final double LEAST_TURN_RAD = Math.toRadians(14);
    /** A side shorter than this many tolerances may be bridged by lengthening its neighbours. */
    private static final double STUB = 4;
    /** Bridging a side may change no more area than this many squared tolerances. */
    private static final double STUB_AREA = 4;

    private final List<Point> rim;
    private final double tolerance;

    private PolygonSimplifier(List<Point> rim, double tolerance) {
        this.rim = rim;
        this.tolerance = tolerance;
    }

    /**
     * The corners of a rim.
     *
     * @param tolerance how far the rim may be from the polygon, in the rim's unit
     */
    public static List<Point> of(List<Point> rim, double tolerance) {
        PolygonSimplifier corners = new PolygonSimplifier(rim, tolerance);
        List<Integer> at = corners.split();
        List<Point> spots = corners.crossed(at);
        return tidied(spots, tolerance);
    }

    private List<Integer> split() {
        int first = 0;
        for (int i = 0; i < rim.size(); i++) {
            if (rim.get(i).to(rim.get(rim.size() / 2)) > rim.get(first).to(rim.get(rim.size() / 2))) {
                first = i;
            }
        }
        int far = first;
        for (int i = 0; i < rim.size(); i++) {
            if (rim.get(i).to(rim.get(first)) > rim.get(far).to(rim.get(first))) {
                far = i;
            }
        }
        List<Integer> out = new ArrayList<>();
        int low = Math.min(first, far);
        int high = Math.max(first, far);
        out.add(low);
        split(low, high, out);
        out.add(high);
        split(high, low + rim.size(), out);
        return out;
    }

    private void split(int from, int to, List<Integer> out) {
        double worst = tolerance;
        int at = -1;
        for (int i = from + 1; i < to; i++) {
            double off = Polygons.off(spot(i), spot(from), spot(to));
            if (off > worst) {
                worst = off;
                at = i;
            }
        }
        if (at >= 0) {
            split(from, at, out);
            out.add(at);
            split(at, to, out);
        }
    }

    private Point spot(int i) {
        return rim.get(Math.floorMod(i, rim.size()));
    }

    private List<Point> crossed(List<Integer> at) {
        int n = at.size();
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point corner = spot(at.get(i));
            Line before = line(at.get(Math.floorMod(i - 1, n)), at.get(i));
            Line after = line(at.get(i), at.get((i + 1) % n));
            Point cross = before.crossing(after);
            out.add(cross.to(corner) < 3 * tolerance ? cross : corner);
        }
        return out;
    }

    private Line line(int from, int to0) {
        int to = to0 <= from ? to0 + rim.size() : to0;
        int trim = (to - from) / 8;
        List<Point> spots = new ArrayList<>();
        for (int i = from + trim; i <= to - trim; i++) {
            spots.add(spot(i));
        }
        return spots.size() < 3 ? Line.through(spot(from), spot(to)) : Line.fitted(spots);
    }

    /**
     * Drops corners that hardly turn, and short sides that are better bridged by lengthening their neighbours.
     *
     * @param tolerance as for {@link #of}
     */
    public static List<Point> tidied(List<Point> spots, double tolerance) {
        List<Point> out = new ArrayList<>(spots);
        while (out.size() > 3) {
            int best = -1;
            double least = 1;
            boolean bridge = false;
            for (int i = 0; i < out.size(); i++) {
                double drop = flatness(out, i, tolerance);
                double join = out.size() > 4 || drop > 1 ? stub(out, i, tolerance) : 1;
                if (Math.min(drop, join) < least) {
                    least = Math.min(drop, join);
                    best = i;
                    bridge = join < drop;
                }
            }
            if (best < 0) {
                break;
            }
            if (bridge) {
                int next = (best + 1) % out.size();
                out.set(best, bridged(out, best));
                out.remove(next);
            } else {
                out.remove(best);
            }
        }
        return out;
    }

    /** Below one when corner i is no corner: it hardly turns, or hardly leaves the line between its neighbours. */
    private static double flatness(List<Point> spots, int i, double tolerance) {
        int n = spots.size();
        Point a = spots.get(Math.floorMod(i - 1, n));
        Point b = spots.get(i);
        Point c = spots.get((i + 1) % n);
        double turn = Math.abs(Math.atan2(
                (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x()),
                (b.x() - a.x()) * (c.x() - b.x()) + (b.y() - a.y()) * (c.y() - b.y())));
        return Math.min(turn / LEAST_TURN_RAD, Polygons.off(b, a, c) / tolerance);
    }

    /** Below one when side i is so short that letting its neighbours meet changes hardly any area. */
    private static double stub(List<Point> spots, int i, double tolerance) {
        Point a = spots.get(i);
        Point b = spots.get((i + 1) % spots.size());
        double length = a.to(b);
        if (length > STUB * tolerance) {
            return 1;
        }
        Point meet = bridged(spots, i);
        double area = Math.abs((b.x() - a.x()) * (meet.y() - a.y()) - (b.y() - a.y()) * (meet.x() - a.x())) / 2;
        double moved = Math.max(meet.to(a), meet.to(b));
        return Math.max(area / (STUB_AREA * tolerance * tolerance), moved / (1.5 * STUB * tolerance));
    }

    private static Point bridged(List<Point> spots, int i) {
        int n = spots.size();
        Line before = Line.through(spots.get(Math.floorMod(i - 1, n)), spots.get(i));
        Line after = Line.through(spots.get((i + 1) % n), spots.get((i + 2) % n));
        return before.crossing(after);
    }
}
