package hearthcloth.wrap.settle;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.ReefKnot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Cuts pieces of cloth along one grid on the flat cloth, so that pieces that hang together share their points. What is
 * one place on the cloth and in space becomes one point.
 */
final class Snipping {

    /** Places on the flat cloth nearer than this are one, in millimetres. */
    private static final double SAME = 0.02;

    /** And in space, since loose layers are drawn a little apart. */
    private static final double NEAR = 0.2;

    /** Within so many diameters of a gathered end round a knot the grid is twice as fine. */
    private static final double FINE = 6;

    private final double cell;
    private final List<ReefKnot> knots;
    private final List<Vector> places = new ArrayList<>();
    private final List<Point> cloth = new ArrayList<>();
    private final List<List<Vector>> outs = new ArrayList<>();
    private final Map<Long, List<Integer>> found = new HashMap<>();

    /** For each point the number of the loose piece it belongs to, which shares its points with none; 0 on closed cloth. */
    private final List<Integer> owners = new ArrayList<>();

    private int owner;
    private int added;

    /** The polygons' points, anticlockwise on the cloth. */
    private final List<List<Integer>> polygons = new ArrayList<>();

    Snipping(double cell, List<ReefKnot> knots) {
        this.cell = cell;
        this.knots = List.copyOf(knots);
    }

    private final List<ClosedPiece> pieces = new ArrayList<>();

    /** The points of free ends, and of gathered ends on their way to a knot. */
    private final Set<Integer> free = new HashSet<>();

    private final Set<Integer> cords = new HashSet<>();

    /** Adds a piece, this far off its plane. */
    void add(Facet facet, ConvexPolygon outline, double lift) {
        added++;
        owner = facet.isLoose() ? added : 0;
        if (!facet.isLoose()) {
            pieces.add(new ClosedPiece(facet, outline));
        }
        int i0 = whole(outline, true, false);
        int i1 = whole(outline, true, true);
        int j0 = whole(outline, false, false);
        int j1 = whole(outline, false, true);
        for (int i = i0; i <= i1; i++) {
            for (int j = j0; j <= j1; j++) {
                cell(facet, outline, lift, i, j);
            }
        }
    }

    /**
     * Adds a piece that lies under others and is seen at most where these part: whole, this far inside its plane, and it
     * stays there.
     */
    void under(Facet facet, ConvexPolygon outline, double deep) {
        added++;
        owner = added;
        List<Integer> polygon = new ArrayList<>();
        for (Point corner : outline.corners()) {
            int point = point(
                    corner, facet.motion().at(corner).minus(facet.plane().out().times(deep)));
            if (!polygon.contains(point)) {
                polygon.add(point);
                free.add(point);
                outs.get(point).add(facet.plane().out());
            }
        }
        if (polygon.size() > 2) {
            polygons.add(polygon);
        }
    }

    private int whole(ConvexPolygon outline, boolean across, boolean most) {
        double at = most ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (Point corner : outline.corners()) {
            double here = across ? corner.x() : corner.y();
            at = most ? Math.max(at, here) : Math.min(at, here);
        }
        return (int) Math.floor(at / cell);
    }

    private void cell(Facet facet, ConvexPolygon outline, double lift, int i, int j) {
        Point middle = new Point((i + 0.5) * cell, (j + 0.5) * cell);
        int parts = isNearKnot(middle) ? 2 : 1;
        double size = cell / parts;
        for (int a = 0; a < parts; a++) {
            for (int b = 0; b < parts; b++) {
                Point low = new Point(i * cell + a * size, j * cell + b * size);
                Point right = low.plus(size, 0);
                Point high = low.plus(size, size);
                Point up = low.plus(0, size);
                boolean rising = (i * parts + a + j * parts + b) % 2 == 0;
                part(facet, outline, lift, List.of(low, right, rising ? high : up));
                part(facet, outline, lift, List.of(rising ? low : right, high, up));
            }
        }
    }

    private boolean isNearKnot(Point middle) {
        return knots.stream()
                .anyMatch(knot ->
                        knot.leads().stream().anyMatch(lead -> lead.from().to(middle) < FINE * knot.bunch()));
    }

    private void part(Facet facet, ConvexPolygon outline, double lift, List<Point> triangle) {
        ConvexPolygon part = outline.and(new ConvexPolygon(triangle));
        if (part.isEmpty() || part.area() < SAME) {
            return;
        }
        List<Integer> polygon = new ArrayList<>();
        for (Point corner : part.corners()) {
            int point = point(
                    corner, facet.motion().at(corner).plus(facet.plane().out().times(lift)));
            if (facet.isLoose()) {
                (facet.part() == Facet.Part.CORD ? cords : free).add(point);
            }
            if (!polygon.contains(point)) {
                polygon.add(point);
                List<Vector> ways = outs.get(point);
                if (!ways.contains(facet.plane().out())) {
                    ways.add(facet.plane().out());
                }
            }
        }
        if (polygon.size() > 2) {
            polygons.add(polygon);
        }
    }

    private int point(Point at, Vector place) {
        long i = Math.round(at.x());
        long j = Math.round(at.y());
        for (long di = -1; di <= 1; di++) {
            for (long dj = -1; dj <= 1; dj++) {
                for (int k : found.getOrDefault(key(i + di, j + dj), List.of())) {
                    boolean isOurs = owners.get(k).equals(owner);
                    if (isOurs
                            && cloth.get(k).to(at) < SAME
                            && places.get(k).minus(place).length() < NEAR) {
                        return k;
                    }
                }
            }
        }
        int point = places.size();
        places.add(place);
        cloth.add(at);
        outs.add(new ArrayList<>());
        owners.add(owner);
        found.computeIfAbsent(key(i, j), key -> new ArrayList<>()).add(point);
        return point;
    }

    private static long key(long i, long j) {
        return (i << 32) ^ (j & 0xffffffffL);
    }

    /** All that was added; where a point lies on another polygon's side, that side has it too, so nothing gapes. */
    Web web() {
        List<Integer> triangles = new ArrayList<>();
        for (List<Integer> polygon : polygons) {
            List<Integer> whole = new ArrayList<>();
            for (int i = 0; i < polygon.size(); i++) {
                int a = polygon.get(i);
                int b = polygon.get((i + 1) % polygon.size());
                whole.add(a);
                whole.addAll(between(a, b));
            }
            fan(whole, triangles);
        }
        return new Web(places, cloth, touching(), triangles, new Web.Laid(free, cords));
    }

    /** For each point the ways outwards of all pieces that it touches, also where the cloth itself is folded away. */
    private List<List<Vector>> touching() {
        List<List<Vector>> all = new ArrayList<>();
        for (int k = 0; k < places.size(); k++) {
            Vector place = places.get(k);
            List<Vector> ways = new ArrayList<>(outs.get(k));
            for (ClosedPiece piece : pieces) {
                Vector out = piece.facet().plane().out();
                if (!ways.contains(out) && piece.holds(place)) {
                    ways.add(out);
                }
            }
            all.add(List.copyOf(ways));
        }
        return all;
    }

    /** From the corner at which no triangle is flat, as far as there is one. */
    private void fan(List<Integer> polygon, List<Integer> triangles) {
        int n = polygon.size();
        int best = 0;
        double widest = -1;
        for (int s = 0; s < n; s++) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 2; i < n; i++) {
                least = Math.min(least, area(polygon, s, (s + i - 1) % n, (s + i) % n));
            }
            if (least > widest) {
                widest = least;
                best = s;
            }
        }
        for (int i = 2; i < n; i++) {
            triangles.add(polygon.get(best));
            triangles.add(polygon.get((best + i - 1) % n));
            triangles.add(polygon.get((best + i) % n));
        }
    }

    private double area(List<Integer> polygon, int a, int b, int c) {
        Point from = cloth.get(polygon.get(a));
        return cloth.get(polygon.get(b))
                .minus(from)
                .left()
                .dot(cloth.get(polygon.get(c)).minus(from));
    }

    /** The points on the line between two, from the first on. */
    private List<Integer> between(int a, int b) {
        Point from = cloth.get(a);
        Point way = cloth.get(b).minus(from);
        double length = Math.sqrt(way.dot(way));
        List<Integer> on = new ArrayList<>();
        int steps = (int) Math.ceil(length);
        for (int s = 0; s <= steps; s++) {
            Point near = from.plus(way.times((double) s / steps));
            long i = Math.round(near.x());
            long j = Math.round(near.y());
            for (long di = -1; di <= 1; di++) {
                for (long dj = -1; dj <= 1; dj++) {
                    for (int k : found.getOrDefault(key(i + di, j + dj), List.of())) {
                        if (k != a && k != b && !on.contains(k) && isOn(k, a, b, way, length)) {
                            on.add(k);
                        }
                    }
                }
            }
        }
        on.sort((p, q) -> Double.compare(
                cloth.get(p).minus(from).dot(way), cloth.get(q).minus(from).dot(way)));
        return on;
    }

    private boolean isOn(int k, int a, int b, Point way, double length) {
        if (!owners.get(k).equals(owners.get(a))) {
            return false;
        }
        Point off = cloth.get(k).minus(cloth.get(a));
        double share = off.dot(way) / (length * length);
        if (share * length < SAME || (1 - share) * length < SAME || Math.abs(off.dot(way.left())) > SAME * length) {
            return false;
        }
        Vector there = places.get(a).times(1 - share).plus(places.get(b).times(share));
        return there.minus(places.get(k)).length() < NEAR;
    }
}
