package hearthcloth.wrap.settle;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Points of a cloth in space with the lines and triangles between them. */
final class Web {

    /** Three numbers a point, in millimetres. */
    final double[] x;

    /** Where they were to begin with. */
    final double[] begun;

    final List<Point> cloth;

    /** The ways outwards of all pieces that meet in a point. */
    final List<List<Vector>> outs;

    final int[] triangles;

    /** Two points each, every line once. */
    final int[] lines;

    /** Their lengths on the flat cloth. */
    final double[] rest;

    /** Whether a line is a side of one triangle only. */
    final boolean[] rim;

    /** Whether a point lies on such a line. */
    final boolean[] edge;

    /** Whether a point stays where the fold laid it, as on a free end, whose pleats lie close over each other. */
    private final boolean[] stays;

    /** Whether a point is only lifted off the gift with what it lies on, as on a gathered end. */
    private final boolean[] laid;

    /** The points of free ends, and those of gathered ends on their way to a knot. */
    record Laid(Set<Integer> free, Set<Integer> cords) {
        Laid {
            free = Set.copyOf(free);
            cords = Set.copyOf(cords);
        }
    }

    Web(List<Vector> places, List<Point> cloth, List<List<Vector>> outs, List<Integer> corners, Laid loose) {
        this.stays = new boolean[places.size()];
        this.laid = new boolean[places.size()];
        loose.free().forEach(point -> stays[point] = true);
        loose.cords().forEach(point -> laid[point] = true);
        this.cloth = List.copyOf(cloth);
        this.outs = List.copyOf(outs);
        this.x = new double[3 * places.size()];
        for (int k = 0; k < places.size(); k++) {
            x[3 * k] = places.get(k).x();
            x[3 * k + 1] = places.get(k).y();
            x[3 * k + 2] = places.get(k).z();
        }
        this.begun = x.clone();
        this.triangles = corners.stream().mapToInt(corner -> corner).toArray();
        Map<Long, Integer> sides = new HashMap<>();
        List<Long> order = new ArrayList<>();
        for (int t = 0; t < triangles.length; t++) {
            int a = triangles[t];
            int b = triangles[t % 3 == 2 ? t - 2 : t + 1];
            long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
            if (sides.merge(key, 1, Integer::sum) == 1) {
                order.add(key);
            }
        }
        this.lines = new int[2 * order.size()];
        this.rest = new double[order.size()];
        this.rim = new boolean[order.size()];
        this.edge = new boolean[places.size()];
        for (int e = 0; e < order.size(); e++) {
            long key = order.get(e);
            lines[2 * e] = (int) (key >>> 32);
            lines[2 * e + 1] = (int) key;
            rest[e] = this.cloth.get(lines[2 * e]).to(this.cloth.get(lines[2 * e + 1]));
            rim[e] = sides.getOrDefault(key, 1) == 1;
            edge[lines[2 * e]] |= rim[e];
            edge[lines[2 * e + 1]] |= rim[e];
        }
    }

    int points() {
        return edge.length;
    }

    Vector place(int k) {
        return new Vector(x[3 * k], x[3 * k + 1], x[3 * k + 2]);
    }

    /** Where the fold laid a point. */
    Vector begun(int k) {
        return new Vector(begun[3 * k], begun[3 * k + 1], begun[3 * k + 2]);
    }

    /** Whether a point is eased. */
    boolean isEased(int k) {
        return !stays[k] && !laid[k];
    }

    void move(int k, Vector by) {
        if (stays[k]) {
            return;
        }
        x[3 * k] += by.x();
        x[3 * k + 1] += by.y();
        x[3 * k + 2] += by.z();
    }

    /** The mean way outwards at a point, of unit length; sideways only where it lies on the table. */
    Vector out(int k) {
        if (laid[k]) {
            // its own piece's; beside a rim it touches walls too, and going out from these would pull it apart
            return outs.get(k).get(0);
        }
        Vector sum = new Vector(0, 0, 0);
        for (Vector out : outs.get(k)) {
            sum = sum.plus(out.z() < UNDER ? new Vector(0, 0, 0) : out);
        }
        double length = sum.length();
        return length < 1e-9 ? sum : sum.times(1 / length);
    }

    /** Whether a point lies under the gift. */
    boolean isUnder(int k) {
        return outs.get(k).stream().anyMatch(out -> out.z() < UNDER);
    }

    private static final double UNDER = -0.7;

    /** Puts every point back where the fold laid it. */
    void asFolded() {
        System.arraycopy(begun, 0, x, 0, x.length);
    }

    /** Brings a point back that has come inside a plane in which it lay. */
    void keepOut(int k) {
        for (Vector out : outs.get(k)) {
            double off = (x[3 * k] - begun[3 * k]) * out.x()
                    + (x[3 * k + 1] - begun[3 * k + 1]) * out.y()
                    + (x[3 * k + 2] - begun[3 * k + 2]) * out.z();
            if (off < 0) {
                move(k, out.times(-off));
            }
        }
    }
}
