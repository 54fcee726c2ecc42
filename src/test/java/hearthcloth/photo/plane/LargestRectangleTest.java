package hearthcloth.photo.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class LargestRectangleTest {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Test
    void a_turned_rectangle_holds_itself() {
        List<Point> polygon = new LargestRectangle.Box(new Point(40, -7), 120, 45, 0.7).corners();

        assertThat(LargestRectangle.inside(polygon).area()).isCloseTo(120 * 45.0, within(1.0));
    }

    @Test
    void a_right_triangle_holds_half_of_itself() {
        List<Point> triangle = List.of(new Point(0, 0), new Point(100, 0), new Point(0, 60));

        assertThat(LargestRectangle.inside(triangle).area()).isCloseTo(1500, within(2.0));
    }

    @Test
    void an_ell_gives_its_better_arm() {
        List<Point> ell = List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 40),
                new Point(30, 40),
                new Point(30, 90),
                new Point(0, 90));

        assertThat(LargestRectangle.inside(ell).area()).isCloseTo(4000, within(2.0));
    }

    @Test
    void along_the_grain_the_direction_is_kept() {
        List<Point> polygon = new LargestRectangle.Box(new Point(0, 0), 100, 100, 0).corners();

        LargestRectangle.Box box = LargestRectangle.inside(polygon, Math.PI / 4);

        assertThat(box.angleRad()).isEqualTo(Math.PI / 4);
        assertThat(box.area()).isCloseTo(5000, within(5.0));
    }

    @Test
    void it_is_always_inside_and_at_least_97_percent_of_an_exhaustive_search() {
        Random chance = new Random(7);
        for (int round = 0; round < 60; round++) {
            List<Point> polygon = star(chance, 4 + round % 6);

            LargestRectangle.Box box = LargestRectangle.inside(polygon);

            assertThat(shape(polygon).buffer(1e-6).covers(shape(box.corners())))
                    .as("inside, round %d", round)
                    .isTrue();
            assertThat(box.area()).as("round %d", round).isGreaterThan(0.97 * exhaustive(polygon));
        }
    }

    /** A polygon whose corners go round a middle at uneven distances: convex and hollow ones. */
    private static List<Point> star(Random chance, int corners) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.6 * chance.nextDouble()) / corners;
            double far = 20 + 60 * chance.nextDouble();
            out.add(new Point(far * Math.cos(angle), far * Math.sin(angle)));
        }
        return out;
    }

    private static Polygon shape(List<Point> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point spot = corners.get(i % corners.size());
            ring[i] = new Coordinate(spot.x(), spot.y());
        }
        return GEOMETRY.createPolygon(ring);
    }

    /** Every direction by two degrees, every pair of cells of a fine grid whose cells lie wholly inside. */
    private static double exhaustive(List<Point> polygon) {
        double best = 0;
        for (int degrees = 0; degrees < 90; degrees += 2) {
            double cos = Math.cos(Math.toRadians(degrees));
            double sin = Math.sin(Math.toRadians(degrees));
            List<Point> turned = polygon.stream()
                    .map(s -> new Point(s.x() * cos + s.y() * sin, s.y() * cos - s.x() * sin))
                    .toList();
            best = Math.max(best, onGrid(turned));
        }
        return best;
    }

    private static double onGrid(List<Point> polygon) {
        int cells = 80;
        double cell = 2.0;
        int[] heights = new int[cells];
        double best = 0;
        for (int y = 0; y < cells; y++) {
            for (int x = 0; x < cells; x++) {
                double left = (x - cells / 2) * cell;
                double top = (y - cells / 2) * cell;
                boolean in = Polygons.inside(polygon, left, top)
                        && Polygons.inside(polygon, left + cell, top)
                        && Polygons.inside(polygon, left, top + cell)
                        && Polygons.inside(polygon, left + cell, top + cell)
                        && polygon.stream()
                                .noneMatch(
                                        s -> s.x() > left && s.x() < left + cell && s.y() > top && s.y() < top + cell);
                heights[x] = in ? heights[x] + 1 : 0;
            }
            for (int from = 0; from < cells; from++) {
                int low = Integer.MAX_VALUE;
                for (int to = from; to < cells && heights[to] > 0; to++) {
                    low = Math.min(low, heights[to]);
                    best = Math.max(best, (to - from + 1.0) * low * cell * cell);
                }
            }
        }
        return best;
    }
}
