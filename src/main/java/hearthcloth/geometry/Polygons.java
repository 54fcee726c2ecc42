package hearthcloth.geometry;

import hearthcloth.number.Elementary;
import java.util.ArrayList;
import java.util.List;

/** Measures of polygons given by their corners in order: area, perimeter, what lies inside, how far off a rim a place is. */
public final class Polygons {

    private Polygons() {}

    /** The signed area; positive when the corners go round clockwise as seen with y down. */
    public static double signedArea(List<Point> corners) {
        double twice = 0;
        Point before = corners.get(corners.size() - 1);
        for (Point spot : corners) {
            twice += before.x() * spot.y() - spot.x() * before.y();
            before = spot;
        }
        return twice / 2;
    }

    public static double perimeter(List<Point> corners) {
        double sum = 0;
        Point before = corners.get(corners.size() - 1);
        for (Point spot : corners) {
            sum += before.to(spot);
            before = spot;
        }
        return sum;
    }

    public static boolean inside(List<Point> corners, double x, double y) {
        boolean in = false;
        Point b = corners.get(corners.size() - 1);
        for (Point a : corners) {
            if ((a.y() > y) != (b.y() > y) && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
            b = a;
        }
        return in;
    }

    /** Whether a place and the four places at this distance from it, left, right, above and below, are all inside. */
    public static boolean wellInside(List<Point> corners, double x, double y, double inset) {
        return inside(corners, x, y)
                && inside(corners, x - inset, y)
                && inside(corners, x + inset, y)
                && inside(corners, x, y - inset)
                && inside(corners, x, y + inset);
    }

    /** Distance from a place to the line through two others. */
    public static double off(Point place, Point a, Point b) {
        double length = a.to(b);
        if (length < 1e-9) {
            return place.to(a);
        }
        return Math.abs((b.x() - a.x()) * (place.y() - a.y()) - (b.y() - a.y()) * (place.x() - a.x())) / length;
    }

    /** Distance from a place to the nearest side of a polygon. */
    public static double toRim(Point place, List<Point> corners) {
        double least = Double.MAX_VALUE;
        Point a = corners.get(corners.size() - 1);
        for (Point b : corners) {
            double along = (place.x() - a.x()) * (b.x() - a.x()) + (place.y() - a.y()) * (b.y() - a.y());
            double length = a.to(b);
            double share = length < 1e-9 ? 0 : Math.max(0, Math.min(1, along / (length * length)));
            least = Math.min(least, a.towards(b, share).to(place));
            a = b;
        }
        return least;
    }

    /** A convex outline with every edge moved outwards, inwards where {@code by} is below zero; a sharp corner does not run off. */
    public static List<Point> grown(List<Point> outline, double by) {
        int n = outline.size();
        double turn = 0;
        for (int i = 0; i < n; i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % n);
            turn += a.x() * b.y() - b.x() * a.y();
        }
        double out = turn < 0 ? -by : by;
        List<Point> grown = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point here = outline.get(i);
            Point in = way(outline.get((i + n - 1) % n), here);
            Point on = way(here, outline.get((i + 1) % n));
            // the corner moves along the middle of the two edges' outward ways
            double share = out / Math.max(0.5, 1 + in.x() * on.x() + in.y() * on.y());
            grown.add(here.plus((in.y() + on.y()) * share, -(in.x() + on.x()) * share));
        }
        return grown;
    }

    private static Point way(Point from, Point to) {
        double length = Elementary.hypot(to.x() - from.x(), to.y() - from.y());
        return length < 1e-9 ? new Point(0, 0) : new Point((to.x() - from.x()) / length, (to.y() - from.y()) / length);
    }
}
