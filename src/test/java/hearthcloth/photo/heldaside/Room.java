package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The part of the floor a picture shows, and what may be laid where in it. */
final class Room {

    /** Scraps keep this far from the picture's rim, mm. */
    private static final double FROM_RIM = 12;
    /** A pixel may see this much more floor there than in the picture's middle. */
    private static final double FURTHEST = 1.75;

    private final View view;
    private final Polygon seen;
    private final Geometry inner;
    private final double middleMm;

    Room(View view) {
        this.view = view;
        this.seen = Rim.polygon(rim(view));
        this.inner = seen.buffer(-FROM_RIM);
        this.middleMm = view.pixelMm(view.frame.width() / 2.0, view.frame.height() / 2.0);
    }

    /** Any place that the picture shows near enough. */
    Point anywhere(Random chance) {
        while (true) {
            Point pixel =
                    new Point(chance.nextDouble() * view.frame.width(), chance.nextDouble() * view.frame.height());
            if (isNear(pixel)) {
                return view.floor(pixel);
            }
        }
    }

    /** A place on the picture's rim. */
    Point onRim(Random chance) {
        while (true) {
            List<Point> places = rim(view);
            Point place = places.get(chance.nextInt(places.size()));
            if (isNear(view.picture(place))) {
                return place;
            }
        }
    }

    boolean holds(Rim rim) {
        return inner.covers(rim.polygon()) && rim.corners.stream().allMatch(c -> isNear(view.picture(c)));
    }

    boolean shows(Rim rim) {
        return seen.covers(rim.polygon());
    }

    /** Of the near part, mm². */
    double area() {
        int n = 24;
        double sum = 0;
        double w = (double) view.frame.width() / n;
        double h = (double) view.frame.height() / n;
        for (int k = 0; k < n * n; k++) {
            Point pixel = new Point((k % n + 0.5) * w, (Math.floorDiv(k, n) + 0.5) * h);
            double mm = view.pixelMm(pixel.x(), pixel.y());
            sum += isNear(pixel) ? mm * mm * w * h : 0;
        }
        return sum;
    }

    private boolean isNear(Point pixel) {
        return view.pixelMm(pixel.x(), pixel.y()) <= FURTHEST * middleMm;
    }

    private static List<Point> rim(View view) {
        int n = 30;
        double w = view.frame.width();
        double h = view.frame.height();
        List<Point> spots = new ArrayList<>();
        for (int k = 0; k < 4 * n; k++) {
            double t = (double) (k % n) / n;
            Point pixel = switch (k / n) {
                case 0 -> new Point(t * w, 0);
                case 1 -> new Point(w, t * h);
                case 2 -> new Point(w - t * w, h);
                default -> new Point(0, h - t * h);
            };
            spots.add(view.floor(pixel));
        }
        return spots;
    }
}
