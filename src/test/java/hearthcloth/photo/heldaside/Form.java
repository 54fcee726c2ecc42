package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The shapes scraps have. */
public enum Form {
    RECTANGLE,
    STRIP,
    QUADRILATERAL,
    TRIANGLE,
    ELL;

    static Form any(Random chance) {
        double d = chance.nextDouble();
        return d < 0.35 ? RECTANGLE : d < 0.55 ? STRIP : d < 0.73 ? QUADRILATERAL : d < 0.87 ? TRIANGLE : ELL;
    }

    /** Corners about the origin, in order, for a piece of about {@code size} squared. */
    List<Point> corners(double size, Random chance) {
        double stretch = Math.exp(0.5 * (chance.nextDouble() - 0.5) * 2);
        double w = clamped(size * stretch, 30, 330);
        double h = clamped(size / stretch, 30, 330);
        return switch (this) {
            case RECTANGLE -> box(w, h);
            case STRIP -> {
                double narrow = 18 + 35 * chance.nextDouble();
                yield box(clamped(size * size / narrow, 3 * narrow, 430), narrow);
            }
            case QUADRILATERAL -> pushed(box(w, h), 0.17 * Math.min(w, h), chance);
            case TRIANGLE -> triangle(1.25 * w, 1.25 * h, chance);
            case ELL -> ell(1.15 * w, 1.15 * h, chance);
        };
    }

    private static List<Point> box(double w, double h) {
        return List.of(
                new Point(-w / 2, -h / 2), new Point(w / 2, -h / 2), new Point(w / 2, h / 2), new Point(-w / 2, h / 2));
    }

    private static List<Point> pushed(List<Point> corners, double by, Random chance) {
        List<Point> moved = new ArrayList<>();
        for (Point c : corners) {
            moved.add(
                    new Point(c.x() + by * (2 * chance.nextDouble() - 1), c.y() + by * (2 * chance.nextDouble() - 1)));
        }
        return moved;
    }

    private static List<Point> triangle(double w, double h, Random chance) {
        double tip = chance.nextBoolean() ? 0 : w * (0.25 + 0.5 * chance.nextDouble());
        return List.of(new Point(-w / 2, -h / 3), new Point(w / 2, -h / 3), new Point(-w / 2 + tip, 2 * h / 3));
    }

    private static List<Point> ell(double w, double h, Random chance) {
        double a = w * (0.35 + 0.3 * chance.nextDouble());
        double b = h * (0.35 + 0.3 * chance.nextDouble());
        return List.of(
                new Point(-w / 2, -h / 2),
                new Point(w / 2, -h / 2),
                new Point(w / 2, -h / 2 + b),
                new Point(-w / 2 + a, -h / 2 + b),
                new Point(-w / 2 + a, h / 2),
                new Point(-w / 2, h / 2));
    }

    private static double clamped(double x, double least, double most) {
        return Math.max(least, Math.min(most, x));
    }
}
