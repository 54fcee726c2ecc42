package hearthcloth.photo.plane;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Divides an outline in two along a straight line, where two pieces were taken for one. */
public final class PolygonHalving {

    /** A smaller part is a slip of the hand, in square millimetres. */
    private static final double LEAST_AREA_MM2 = 100;

    /** A place where the line crosses the rim: the side it lies on, and its position along the line. */
    private record Crossing(int side, double along, Point at) {}

    private PolygonHalving() {}

    /**
     * The two parts on either side of the line through two places, cut along the stretch of the line that lies inside
     * and nearest to both places. Together they are the whole; empty where the line leaves no two parts of at least
     * {@link #LEAST_AREA_MM2}.
     *
     * @param floor corners in order round a simple polygon, in millimetres
     */
    public static Optional<List<List<Point>>> along(List<Point> floor, Point a, Point b) {
        List<Crossing> crossings = crossings(floor, Line.through(a, b));
        double middle = 0;
        Optional<List<List<Point>>> best = Optional.empty();
        double nearest = Double.MAX_VALUE;
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            Crossing from = crossings.get(i);
            Crossing to = crossings.get(i + 1);
            double off = Math.max(0, Math.max(from.along - middle, middle - to.along));
            if (off < nearest) {
                nearest = off;
                best = Optional.of(List.of(part(floor, from, to), part(floor, to, from)));
            }
        }
        return best.filter(halves -> halves.stream().allMatch(h -> Math.abs(Polygons.signedArea(h)) >= LEAST_AREA_MM2));
    }

    /**
     * The places where the rim passes from one side of the line to the other, in order along it; always an even number.
     */
    private static List<Crossing> crossings(List<Point> floor, Line line) {
        List<Crossing> found = new ArrayList<>();
        for (int i = 0; i < floor.size(); i++) {
            Point from = floor.get(i);
            Point to = floor.get((i + 1) % floor.size());
            double one = line.off(from);
            double two = line.off(to);
            if ((one >= 0) != (two >= 0)) {
                Point at = from.towards(to, one / (one - two));
                found.add(new Crossing(i, line.along(at), at));
            }
        }
        found.sort(Comparator.comparingDouble(Crossing::along));
        return found;
    }

    /** The part from one crossing round the rim to the other and back along the line. */
    private static List<Point> part(List<Point> floor, Crossing from, Crossing to) {
        List<Point> out = new ArrayList<>();
        add(out, from.at);
        int corner = (from.side + 1) % floor.size();
        for (int i = 0; i < floor.size() && Math.floorMod(corner - 1, floor.size()) != to.side; i++) {
            add(out, floor.get(corner));
            corner = (corner + 1) % floor.size();
        }
        add(out, to.at);
        if (out.size() > 1 && out.get(0).to(out.get(out.size() - 1)) < 1e-9) {
            out.remove(out.size() - 1);
        }
        return List.copyOf(out);
    }

    private static void add(List<Point> out, Point spot) {
        if (out.isEmpty() || out.get(out.size() - 1).to(spot) > 1e-9) {
            out.add(spot);
        }
    }
}
