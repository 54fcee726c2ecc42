package hearthcloth.draw.tied;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The faint shadow of a gift on the ground: the hull of its places projected along the light. */
final class Shadow {

    static final Colour COLOUR = Colour.of(0xe4e4de);

    /** How far the shadow of a place one millimetre up moves to the right; {@link #AWAY} is how far it moves away. */
    private static final double RIGHT = 0.3;

    private static final double AWAY = 0.22;

    private Shadow() {}

    /** The outline on the picture; empty when nothing stands on the ground. */
    static List<Point> of(List<Vector> places, Eye eye) {
        List<Point> points = new ArrayList<>();
        for (Vector place : places) {
            Vector ground = new Vector(place.x() + RIGHT * place.z(), place.y() + AWAY * place.z(), 0);
            points.add(new Point(eye.x(ground), eye.y(ground)));
        }
        return hull(points);
    }

    /** The convex hull by the monotone chain (docs/sources.md#hull). */
    private static List<Point> hull(List<Point> points) {
        List<Point> sorted = points.stream()
                .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
                .toList();
        List<Point> hull = new ArrayList<>();
        for (int round = 0; round < 2; round++) {
            int start = hull.size();
            for (int i = 0; i < sorted.size(); i++) {
                Point point = sorted.get(round == 0 ? i : sorted.size() - 1 - i);
                while (hull.size() >= start + 2 && turns(hull, point) <= 0) {
                    hull.remove(hull.size() - 1);
                }
                hull.add(point);
            }
            if (!hull.isEmpty()) {
                hull.remove(hull.size() - 1);
            }
        }
        return hull;
    }

    private static double turns(List<Point> hull, Point next) {
        Point a = hull.get(hull.size() - 2);
        Point b = hull.get(hull.size() - 1);
        return (b.x() - a.x()) * (next.y() - a.y()) - (b.y() - a.y()) * (next.x() - a.x());
    }
}
