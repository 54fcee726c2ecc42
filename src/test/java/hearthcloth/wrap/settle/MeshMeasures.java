package hearthcloth.wrap.settle;

import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Fold;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A mesh measured from outside, by its triangles alone: how far threads are stretched, in the gift, through cloth. */
final class MeshMeasures {

    /** Shorter lines than this are not looked at, in millimetres. */
    private static final double SHORTEST = 0.5;

    /** What comes no nearer than this only touches, in millimetres. */
    private static final double TOUCH = 0.05;

    private static final double BUCKET = 12;

    private final Settled mesh;
    private final Fold fold;
    private final List<int[]> lines = new ArrayList<>();

    MeshMeasures(Settled mesh, Fold fold) {
        this.mesh = mesh;
        this.fold = fold;
        Set<Long> seen = new HashSet<>();
        for (int t = 0; t < mesh.triangles().size(); t += 3) {
            for (int i = 0; i < 3; i++) {
                int a = mesh.triangles().get(t + i);
                int b = mesh.triangles().get(t + (i + 1) % 3);
                if (seen.add(((long) Math.min(a, b) << 32) | Math.max(a, b))) {
                    lines.add(new int[] {a, b});
                }
            }
        }
    }

    /** The longest stretch of a line, as a share. */
    double stretch() {
        double most = 0;
        for (int[] line : lines) {
            double flat = mesh.cloth().get(line[0]).to(mesh.cloth().get(line[1]));
            if (flat >= SHORTEST) {
                most = Math.max(most, at(line[0]).minus(at(line[1])).length() / flat - 1);
            }
        }
        return most;
    }

    /** How deep a line's middle lies in a box. */
    double depthMm() {
        Gift.Box box = (Gift.Box) fold.fit().gift();
        double most = 0;
        for (int[] line : lines) {
            Vector middle = at(line[0]).plus(at(line[1])).times(0.5);
            double across = box.along().nm() / 2e6 - Math.abs(middle.x());
            double along = box.across().nm() / 2e6 - Math.abs(middle.y());
            double under = Math.min(box.height().nm() / 1e6 - middle.z(), middle.z());
            most = Math.max(most, Math.min(across, Math.min(along, under)));
        }
        return most;
    }

    /** The share of the lines that pass through a triangle, away from the knots. */
    double piercing() {
        Map<List<Integer>, List<Integer>> grid = new HashMap<>();
        for (int t = 0; t < mesh.triangles().size(); t += 3) {
            for (List<Integer> bucket : buckets(corner(t), corner(t + 1), corner(t + 2))) {
                grid.computeIfAbsent(bucket, key -> new ArrayList<>()).add(t);
            }
        }
        return (double) lines.stream().filter(line -> pierces(line, grid)).count() / lines.size();
    }

    /** The mean square of the angle between neighbouring triangles beside a box's walls, in radians. */
    double bend() {
        Map<Set<Integer>, List<Integer>> sides = new HashMap<>();
        for (int t = 0; t < mesh.triangles().size(); t += 3) {
            for (int i = 0; i < 3; i++) {
                Set<Integer> side =
                        Set.of(mesh.triangles().get(t + i), mesh.triangles().get(t + (i + 1) % 3));
                sides.computeIfAbsent(side, key -> new ArrayList<>()).add(t);
            }
        }
        double sum = 0;
        int count = 0;
        for (List<Integer> both : sides.values()) {
            if (both.size() == 2 && isBesideWall(corner(both.get(0)))) {
                double turn = normal(both.get(0)).dot(normal(both.get(1)));
                double angle = Math.acos(Math.max(-1, Math.min(1, turn)));
                sum += angle * angle;
                count++;
            }
        }
        return sum / count;
    }

    private boolean isBesideWall(Vector place) {
        double high = ((Gift.Box) fold.fit().gift()).height().nm() / 1e6;
        return place.z() > 1 && place.z() < 0.9 * high;
    }

    private Vector normal(int t) {
        Vector across = corner(t + 1).minus(corner(t)).cross(corner(t + 2).minus(corner(t)));
        return across.times(1 / Math.max(1e-12, across.length()));
    }

    private boolean pierces(int[] line, Map<List<Integer>, List<Integer>> grid) {
        Vector middle = at(line[0]).plus(at(line[1])).times(0.5);
        if (fold.knots().stream().anyMatch(knot -> middle.minus(knot.at()).length() < 3 * knot.bunch())) {
            return false;
        }
        for (List<Integer> bucket : buckets(at(line[0]), at(line[1]))) {
            for (int t : grid.getOrDefault(bucket, List.of())) {
                List<Integer> corners = mesh.triangles().subList(t, t + 3);
                if (!corners.contains(line[0]) && !corners.contains(line[1]) && crosses(line, t)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean crosses(int[] line, int t) {
        Vector a = corner(t);
        Vector u = corner(t + 1).minus(a);
        Vector v = corner(t + 2).minus(a);
        Vector normal = u.cross(v);
        double size = normal.length();
        Vector from = at(line[0]).minus(a);
        Vector way = at(line[1]).minus(at(line[0]));
        double begins = size < 1e-6 ? 0 : from.dot(normal) / size;
        double ends = size < 1e-6 ? 0 : from.plus(way).dot(normal) / size;
        if (begins * ends >= 0 || Math.min(Math.abs(begins), Math.abs(ends)) < TOUCH) {
            return false;
        }
        Vector met = from.plus(way.times(begins / (begins - ends)));
        double along = met.cross(v).dot(normal) / (size * size);
        double across = u.cross(met).dot(normal) / (size * size);
        return along > 0.01 && across > 0.01 && along + across < 0.99;
    }

    private static Set<List<Integer>> buckets(Vector... places) {
        int[] low = new int[3];
        int[] high = new int[3];
        for (int d = 0; d < 3; d++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Vector place : places) {
                double here = d == 0 ? place.x() : d == 1 ? place.y() : place.z();
                least = Math.min(least, here);
                most = Math.max(most, here);
            }
            low[d] = (int) Math.floor(least / BUCKET);
            high[d] = (int) Math.floor(most / BUCKET);
        }
        Set<List<Integer>> buckets = new HashSet<>();
        for (int x = low[0]; x <= high[0]; x++) {
            for (int y = low[1]; y <= high[1]; y++) {
                for (int z = low[2]; z <= high[2]; z++) {
                    buckets.add(List.of(x, y, z));
                }
            }
        }
        return buckets;
    }

    private Vector at(int k) {
        return mesh.places().get(k);
    }

    private Vector corner(int number) {
        return at(mesh.triangles().get(number));
    }
}
