package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The edge of a flat thing on the floor: true corners, the line between them, and how far threads reach beyond each side. */
final class Rim {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    final List<Point> corners;
    final List<Point> line;
    final double reach;
    private final double[] xs;
    private final double[] ys;
    private final double[] dxs;
    private final double[] dys;
    private final double[] inverse;
    private final double[] fringe;
    private final int seed;
    private final double turn;

    private Rim(List<Point> corners, List<Point> line, double[] fringe, int seed) {
        this.corners = List.copyOf(corners);
        this.line = List.copyOf(line);
        this.fringe = fringe;
        this.reach = Arrays.stream(fringe).max().orElse(0);
        this.seed = seed;
        this.xs = line.stream().mapToDouble(Point::x).toArray();
        this.ys = line.stream().mapToDouble(Point::y).toArray();
        this.turn = turnOf(xs, ys);
        int n = xs.length;
        this.dxs = new double[n];
        this.dys = new double[n];
        this.inverse = new double[n];
        for (int i = 0, j = n - 1; i < n; j = i++) {
            dxs[i] = xs[i] - xs[j];
            dys[i] = ys[i] - ys[j];
            inverse[i] = 1 / (dxs[i] * dxs[i] + dys[i] * dys[i]);
        }
    }

    static Rim straight(List<Point> corners) {
        return new Rim(corners, corners, new double[corners.size()], 0);
    }

    /** With corners rounded, as a card's. */
    static Rim rounded(List<Point> corners, double radius) {
        List<Point> line = new ArrayList<>();
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Point c = corners.get(i);
            Point a = along(c, corners.get((i + n - 1) % n), radius);
            Point b = along(c, corners.get((i + 1) % n), radius);
            Point middle = new Point(a.x() + b.x() - c.x(), a.y() + b.y() - c.y());
            double from = Math.atan2(a.y() - middle.y(), a.x() - middle.x());
            double by = Math.IEEEremainder(Math.atan2(b.y() - middle.y(), b.x() - middle.x()) - from, 2 * Math.PI);
            for (int k = 0; k <= 10; k++) {
                double t = from + by * k / 10;
                line.add(new Point(middle.x() + radius * Math.cos(t), middle.y() + radius * Math.sin(t)));
            }
        }
        return new Rim(corners, line, new double[line.size()], 0);
    }

    static Rim cut(List<Point> corners, Edge edge, Random chance) {
        int n = corners.size();
        int seed = chance.nextInt();
        if (edge == Edge.WAVY) {
            List<Point> line = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                line.addAll(wandering(corners.get(i), corners.get((i + 1) % n), chance));
            }
            return new Rim(corners, line, new double[line.size()], seed);
        }
        double[] fringe = new double[n];
        if (edge == Edge.FRAYED) {
            int sure = chance.nextInt(n);
            for (int i = 0; i < n; i++) {
                fringe[i] = i == sure || chance.nextInt(3) > 0 ? 1 + 4 * chance.nextDouble() : 0;
            }
        }
        return new Rim(corners, corners, fringe, seed);
    }

    /** From {@code a} up to but without {@code b}, up to about 1.5 mm off the straight line. */
    private static List<Point> wandering(Point a, Point b, Random chance) {
        double length = a.to(b);
        int n = Math.max(8, (int) (length / 7));
        int seed = chance.nextInt();
        double far = 0.5 + 1.2 * chance.nextDouble();
        double wave = 35 + 60 * chance.nextDouble();
        double nx = -(b.y() - a.y()) / length;
        double ny = (b.x() - a.x()) / length;
        List<Point> line = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            double t = (double) k / n;
            double pinned = Math.min(1, 4 * Math.min(t, 1 - t));
            double off = far
                    * pinned
                    * (Grain.smooth(seed, t * length / wave, 0.5)
                            + 0.25 * Grain.smooth(seed + 1, 3 * t * length / wave, 0.5));
            Point at = new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
            line.add(new Point(at.x() + nx * off, at.y() + ny * off));
        }
        return line;
    }

    /** How deep inside a place is; negative outside. */
    double inside(double x, double y) {
        int n = xs.length;
        double nearest = Double.MAX_VALUE;
        boolean in = false;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double px = x - xs[j];
            double py = y - ys[j];
            double t = (px * dxs[i] + py * dys[i]) * inverse[i];
            t = t < 0 ? 0 : Math.min(t, 1);
            double ex = px - t * dxs[i];
            double ey = py - t * dys[i];
            nearest = Math.min(nearest, ex * ex + ey * ey);
            if ((ys[i] > y) != (ys[j] > y) && px < py * dxs[i] / dys[i]) {
                in = !in;
            }
        }
        double d = Math.sqrt(nearest);
        return in ? d : -d;
    }

    /** How much of a small sample outside is covered by loose threads. */
    double threads(double x, double y, double footprint) {
        double covered = 0;
        for (int i = 0; i < fringe.length; i++) {
            if (fringe[i] > 0) {
                covered = Math.max(covered, threads(i, x, y, footprint));
            }
        }
        return covered;
    }

    private double threads(int side, double x, double y, double footprint) {
        int next = (side + 1) % xs.length;
        double length = Math.hypot(xs[next] - xs[side], ys[next] - ys[side]);
        double ux = (xs[next] - xs[side]) / length;
        double uy = (ys[next] - ys[side]) / length;
        double s = (x - xs[side]) * ux + (y - ys[side]) * uy;
        double d = -turn * ((x - xs[side]) * -uy + (y - ys[side]) * ux);
        if (d < 0 || d > 1.6 * fringe[side] || s < -1 || s > length + 1) {
            return 0;
        }
        double pitch = 0.55;
        double bent =
                s + 0.35 * d * Grain.smooth(seed + side, s / 5, d / 4) + 0.4 * Grain.smooth(seed + 3, s / 2, d / 3);
        long k = (long) Math.floor(bent / pitch);
        double own = Grain.share(seed + side, k, 0);
        double strand = Grain.share(seed + side, k, 1) < 0.06 ? 1.6 : 0.25 + 0.75 * own;
        double on = Grain.step(0, Math.max(0.3, footprint), strand * fringe[side] - d);
        double off = Math.abs(bent / pitch - k - 0.5) * pitch;
        double thin = Grain.share(seed + side, k, 2) < 0.25 ? 0 : 0.16;
        return on * Math.min(1, 2 * thin / footprint) * Grain.cover(thin - off, footprint) * 0.9;
    }

    /** 1 when the inside lies to the left of the line as drawn with y up, else -1. */
    private static double turnOf(double[] xs, double[] ys) {
        double twice = 0;
        for (int i = 0, j = xs.length - 1; i < xs.length; j = i++) {
            twice += xs[j] * ys[i] - xs[i] * ys[j];
        }
        return Math.signum(twice);
    }

    Polygon polygon() {
        return polygon(line);
    }

    static Polygon polygon(List<Point> spots) {
        List<Coordinate> ring = new ArrayList<>();
        spots.forEach(s -> ring.add(new Coordinate(s.x(), s.y())));
        ring.add(ring.get(0).copy());
        return GEOMETRY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static Point along(Point from, Point to, double by) {
        double share = by / from.to(to);
        return new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }
}
