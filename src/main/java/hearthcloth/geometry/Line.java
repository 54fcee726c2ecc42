package hearthcloth.geometry;

import hearthcloth.number.Elementary;
import java.util.List;

/** A straight line, as a place on it and its direction (a unit vector). */
public record Line(Point at, double dx, double dy) {

    public static Line through(Point a, Point b) {
        double length = Math.max(1e-9, a.to(b));
        return new Line(a.towards(b, 0.5), (b.x() - a.x()) / length, (b.y() - a.y()) / length);
    }

    /** The line with the least sum of squared distances to some places. */
    public static Line fitted(List<Point> spots) {
        double[] even = new double[spots.size()];
        java.util.Arrays.fill(even, 1);
        return fitted(spots, even);
    }

    public static Line fitted(List<Point> spots, double[] weights) {
        double sum = 0;
        double mx = 0;
        double my = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i];
            mx += weights[i] * spots.get(i).x();
            my += weights[i] * spots.get(i).y();
        }
        mx /= sum;
        my /= sum;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < weights.length; i++) {
            double x = spots.get(i).x() - mx;
            double y = spots.get(i).y() - my;
            xx += weights[i] * x * x;
            xy += weights[i] * x * y;
            yy += weights[i] * y * y;
        }
        double angle = 0.5 * Elementary.atan2(2 * xy, xx - yy);
        return new Line(new Point(mx, my), Elementary.cos(angle), Elementary.sin(angle));
    }

    /** The signed distance of a place from the line; positive to the right of the direction, with y down. */
    public double off(Point spot) {
        return dx * (spot.y() - at.y()) - dy * (spot.x() - at.x());
    }

    public double[] offs(List<Point> spots) {
        return spots.stream().mapToDouble(this::off).toArray();
    }

    /** The line parallel to this one at a distance, on the side where {@link #off} is positive. */
    public Line moved(double by) {
        return new Line(at.plus(-dy * by, dx * by), dx, dy);
    }

    public double along(Point spot) {
        return dx * (spot.x() - at.x()) + dy * (spot.y() - at.y());
    }

    /** The sine of the angle between the two lines. */
    public double sine(Line other) {
        return dx * other.dy - dy * other.dx;
    }

    /** The place where the two lines cross; very far away when they are nearly parallel. */
    public Point crossing(Line other) {
        double sine = sine(other);
        double safe = Math.abs(sine) < 1e-6 ? Math.copySign(1e-6, sine) : sine;
        double t = ((other.at.x() - at.x()) * other.dy - (other.at.y() - at.y()) * other.dx) / safe;
        return at.plus(t * dx, t * dy);
    }
}
