package hearthcloth.photo.plane;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The largest rectangle, by area, that lies wholly inside a simple polygon.
 *
 * <p>For one direction the polygon is turned upright and cut at its corners into trapezoids between vertical lines; a
 * rectangle from x0 to x1 may be as high as the space that all trapezoids on its way leave free, which is exact. All
 * pairs of a grid of x are tried, for the direction of every side of the polygon and every five degrees between; the
 * best few are then improved by a pattern search over x0, x1 and the direction. The result lies inside by construction.
 * Optimality is not proven; against exhaustive search it has stayed above 99 % of the best (see the tests).
 */
public final class LargestRectangle {

    /** Equal columns of the grid of x, beside the polygon's own corners. */
    private static final int COLUMNS = 16;
    /** The step between the directions tried. */
    private static final double TURN_RAD = Math.toRadians(5);
    /** The number of best tries that are improved. */
    private static final int POLISHED = 4;

    private final List<Point> polygon;

    private LargestRectangle(List<Point> polygon) {
        this.polygon = polygon;
    }

    /**
     * A rectangle by its middle, its sides and the direction of its width.
     *
     * @param angleRad angle of the width from the x axis towards the y axis, in radians
     */
    public record Box(Point middle, double width, double height, double angleRad) {

        public double area() {
            return width * height;
        }

        /** The four corners, in order round it. */
        public List<Point> corners() {
            double cos = Math.cos(angleRad);
            double sin = Math.sin(angleRad);
            double u = width / 2;
            double v = height / 2;
            return List.of(
                    middle.plus(-u * cos + v * sin, -u * sin - v * cos),
                    middle.plus(u * cos + v * sin, u * sin - v * cos),
                    middle.plus(u * cos - v * sin, u * sin + v * cos),
                    middle.plus(-u * cos - v * sin, -u * sin + v * cos));
        }

        /** The same rectangle about its middle, each side shorter by the amount given, but never below zero. */
        public Box shrunk(double byWidth, double byHeight) {
            return new Box(middle, Math.max(0, width - byWidth), Math.max(0, height - byHeight), angleRad);
        }
    }

    /** One try: a direction and two upright lines, with the height that fits between them. */
    private record Trial(double angle, double x0, double x1, double y0, double y1) {
        double area() {
            return (x1 - x0) * (y1 - y0);
        }
    }

    /** The largest found in any direction. */
    public static Box inside(List<Point> polygon) {
        LargestRectangle search = new LargestRectangle(polygon);
        List<Trial> found = new ArrayList<>();
        for (double angle : search.directions()) {
            found.add(search.scanned(angle));
        }
        found.sort((a, b) -> Double.compare(b.area(), a.area()));
        Trial best = found.get(0);
        for (Trial trial : found.subList(0, Math.min(POLISHED, found.size()))) {
            Trial polished = search.polished(trial, TURN_RAD / 2);
            best = polished.area() > best.area() ? polished : best;
        }
        return box(best);
    }

    /** The largest found whose width runs in a given direction, such as the grain. */
    public static Box inside(List<Point> polygon, double angleRad) {
        LargestRectangle search = new LargestRectangle(polygon);
        return box(search.polished(search.scanned(angleRad), 0));
    }

    private static Box box(Trial trial) {
        double x = (trial.x0 + trial.x1) / 2;
        double y = (trial.y0 + trial.y1) / 2;
        double cos = Math.cos(trial.angle);
        double sin = Math.sin(trial.angle);
        Point middle = new Point(x * cos - y * sin, x * sin + y * cos);
        return new Box(middle, trial.x1 - trial.x0, trial.y1 - trial.y0, trial.angle);
    }

    private List<Double> directions() {
        List<Double> angles = new ArrayList<>();
        Point before = polygon.get(polygon.size() - 1);
        for (Point spot : polygon) {
            double angle = Math.atan2(spot.y() - before.y(), spot.x() - before.x());
            double turned = angle - Math.floor(angle / (Math.PI / 2)) * (Math.PI / 2);
            if (angles.size() < 40 && angles.stream().noneMatch(a -> Math.abs(a - turned) < 1e-3)) {
                angles.add(turned);
            }
            before = spot;
        }
        for (double angle = 0; angle < Math.PI / 2; angle += TURN_RAD) {
            angles.add(angle);
        }
        return angles;
    }

    private List<Point> upright(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        List<Point> out = new ArrayList<>(polygon.size());
        for (Point spot : polygon) {
            out.add(new Point(spot.x() * cos + spot.y() * sin, spot.y() * cos - spot.x() * sin));
        }
        return out;
    }

    /** The best over all pairs of a grid of upright lines, among them those through the polygon's corners. */
    private Trial scanned(double angle) {
        List<Point> turned = upright(angle);
        TreeSet<Double> lines = new TreeSet<>();
        turned.forEach(spot -> lines.add(spot.x()));
        double low = lines.first();
        double high = lines.last();
        for (int i = 1; i < COLUMNS; i++) {
            lines.add(low + (high - low) * i / COLUMNS);
        }
        double[] x = lines.stream().mapToDouble(Double::doubleValue).toArray();
        List<List<double[]>> slabs = new ArrayList<>();
        for (int i = 0; i + 1 < x.length; i++) {
            slabs.add(free(turned, x[i], x[i + 1]));
        }
        Trial best = new Trial(angle, low, low, 0, 0);
        for (int i = 0; i < slabs.size(); i++) {
            List<double[]> free = slabs.get(i);
            for (int j = i; j < slabs.size() && !free.isEmpty(); j++) {
                free = j == i ? free : common(free, slabs.get(j));
                for (double[] span : free) {
                    Trial trial = new Trial(angle, x[i], x[j + 1], span[0], span[1]);
                    best = trial.area() > best.area() ? trial : best;
                }
            }
        }
        return best;
    }

    private Trial polished(Trial start, double turn) {
        Trial best = start;
        double step = Math.max(1e-6, (start.x1 - start.x0) / 4);
        double angleStep = turn;
        while (step > 0.02) {
            Trial better = best;
            for (int move = 0; move < 10; move++) {
                double left = best.x0 + (move == 0 || move == 4 ? step : move == 1 || move == 5 ? -step : 0);
                double right = best.x1 + (move == 2 || move == 4 ? step : move == 3 || move == 5 ? -step : 0);
                double angle =
                        best.angle + (move == 6 || move == 8 ? angleStep : move == 7 || move == 9 ? -angleStep : 0);
                double drift = move >= 8 ? step / 2 : 0;
                Trial trial = move >= 6 && turn == 0 ? best : tried(best, angle, left + drift, right - drift);
                better = trial.area() > better.area() ? trial : better;
            }
            if (better.area() <= best.area() * (1 + 1e-9)) {
                step /= 2;
                angleStep /= 2;
            }
            best = better;
        }
        return best;
    }

    /**
     * The tallest rectangle between two lines; when the direction changes, the lines stay where the old middle comes to
     * lie.
     */
    private Trial tried(Trial from, double angle, double left, double right) {
        double shift = 0;
        if (angle != from.angle) {
            Box box = box(from);
            double now = box.middle().x() * Math.cos(angle) + box.middle().y() * Math.sin(angle);
            shift = now - (from.x0 + from.x1) / 2;
        }
        Trial best = new Trial(angle, left + shift, left + shift, 0, 0);
        if (right - left > 1e-6) {
            for (double[] span : free(upright(angle), left + shift, right + shift)) {
                Trial trial = new Trial(angle, left + shift, right + shift, span[0], span[1]);
                best = trial.area() > best.area() ? trial : best;
            }
        }
        return best;
    }

    /** The spans of y that are inside the polygon all the way from x0 to x1. */
    private static List<double[]> free(List<Point> turned, double x0, double x1) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(x0, x1));
        for (Point spot : turned) {
            if (spot.x() > x0 && spot.x() < x1) {
                cuts.add(spot.x());
            }
        }
        List<double[]> free = List.of(new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY});
        double from = x0;
        for (double to : cuts.tailSet(x0, false)) {
            free = common(free, slab(turned, from, to));
            if (free.isEmpty()) {
                return free;
            }
            from = to;
        }
        return free;
    }

    /** The spans inside the polygon between two lines that have no corner strictly between them. */
    private static List<double[]> slab(List<Point> turned, double from, double to) {
        List<double[]> edges = new ArrayList<>();
        double middle = (from + to) / 2;
        Point b = turned.get(turned.size() - 1);
        for (Point a : turned) {
            if ((a.x() > middle) != (b.x() > middle)) {
                double slope = (b.y() - a.y()) / (b.x() - a.x());
                edges.add(new double[] {
                    a.y() + (middle - a.x()) * slope, a.y() + (from - a.x()) * slope, a.y() + (to - a.x()) * slope
                });
            }
            b = a;
        }
        edges.sort((p, q) -> Double.compare(p[0], q[0]));
        List<double[]> spans = new ArrayList<>();
        for (int i = 0; i + 1 < edges.size(); i += 2) {
            double low = Math.max(edges.get(i)[1], edges.get(i)[2]);
            double high = Math.min(edges.get(i + 1)[1], edges.get(i + 1)[2]);
            if (high > low) {
                spans.add(new double[] {low, high});
            }
        }
        return spans;
    }

    private static List<double[]> common(List<double[]> one, List<double[]> other) {
        List<double[]> out = new ArrayList<>();
        for (double[] a : one) {
            for (double[] b : other) {
                double low = Math.max(a[0], b[0]);
                double high = Math.min(a[1], b[1]);
                if (high > low) {
                    out.add(new double[] {low, high});
                }
            }
        }
        return out;
    }
}
