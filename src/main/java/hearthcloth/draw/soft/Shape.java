package hearthcloth.draw.soft;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A surface of triangles with its normals, to be drawn. */
public final class Shape {

    /** Places nearer than this, in millimetres, are one. */
    private static final double SAME = 0.08;

    /** Pieces that meet at less than this angle are one round surface; its cosine. */
    private static final double SOFT = 0.6;

    /** Three numbers a point, in millimetres. */
    final double[] places;

    /** Three numbers a point, of unit length. */
    final double[] normals;

    /** Two numbers a point: where it lies on the cloth's front, as shares of its width and height. */
    final double[] shares;

    /** Three points a triangle, anticlockwise seen from the side that the normals point to. */
    final int[] corners;

    private Shape(double[] places, double[] shares, int[] corners) {
        this.places = places;
        this.shares = shares;
        this.corners = corners;
        this.normals = new double[places.length];
        ownNormals();
        roundOff();
    }

    /**
     * A surface.
     *
     * @param shares where each point lies on the cloth's front, as shares of its width and height
     * @param corners three points a triangle
     */
    public static Shape of(List<Vector> places, List<Point> shares, List<Integer> corners) {
        double[] at = new double[3 * places.size()];
        double[] cloth = new double[2 * places.size()];
        for (int k = 0; k < places.size(); k++) {
            at[3 * k] = places.get(k).x();
            at[3 * k + 1] = places.get(k).y();
            at[3 * k + 2] = places.get(k).z();
            cloth[2 * k] = shares.get(k).x();
            cloth[2 * k + 1] = shares.get(k).y();
        }
        return new Shape(at, cloth, corners.stream().mapToInt(corner -> corner).toArray());
    }

    int points() {
        return places.length / 3;
    }

    Vector place(int k) {
        return new Vector(places[3 * k], places[3 * k + 1], places[3 * k + 2]);
    }

    private Vector normal(int k) {
        return new Vector(normals[3 * k], normals[3 * k + 1], normals[3 * k + 2]);
    }

    /** Of the triangles that share a point, larger ones counting more. */
    private void ownNormals() {
        for (int t = 0; t < corners.length; t += 3) {
            Vector from = place(corners[t]);
            Vector square = place(corners[t + 1])
                    .minus(from)
                    .cross(place(corners[t + 2]).minus(from));
            for (int c = 0; c < 3; c++) {
                add(corners[t + c], square);
            }
        }
        for (int k = 0; k < points(); k++) {
            put(k, unit(normal(k)));
        }
    }

    private void add(int k, Vector by) {
        put(k, normal(k).plus(by));
    }

    private void put(int k, Vector normal) {
        normals[3 * k] = normal.x();
        normals[3 * k + 1] = normal.y();
        normals[3 * k + 2] = normal.z();
    }

    private static Vector unit(Vector some) {
        double length = some.length();
        return length < 1e-12 ? Vector.UP : some.times(1 / length);
    }

    private record Spot(long x, long y, long z) {}

    /** Pieces that meet in one line with little turn between them are shaded as one round surface. */
    private void roundOff() {
        Map<Spot, List<Integer>> meeting = new HashMap<>();
        List<Vector> own = new ArrayList<>();
        for (int k = 0; k < points(); k++) {
            own.add(normal(k));
            Spot spot = new Spot(
                    Math.round(places[3 * k] / SAME),
                    Math.round(places[3 * k + 1] / SAME),
                    Math.round(places[3 * k + 2] / SAME));
            meeting.computeIfAbsent(spot, none -> new ArrayList<>()).add(k);
        }
        // each point is in one list, so the order of the lists does not matter
        for (List<Integer> points : meeting.values()) {
            for (int k : points) {
                Vector sum = new Vector(0, 0, 0);
                for (int other : points) {
                    if (own.get(k).dot(own.get(other)) > SOFT) {
                        sum = sum.plus(own.get(other));
                    }
                }
                put(k, unit(sum));
            }
        }
    }
}
