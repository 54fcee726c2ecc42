package hearthcloth.photo.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Laws of parting an outline, and of the rectangle along a grain, judged by JTS on random outlines. */
class PolygonHalvingTest {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final List<Point> ELL = List.of(
            new Point(0, 0),
            new Point(100, 0),
            new Point(100, 40),
            new Point(30, 40),
            new Point(30, 90),
            new Point(0, 90));

    private static Geometry polygon(List<Point> spots) {
        List<Coordinate> ring = new ArrayList<>();
        spots.forEach(spot -> ring.add(new Coordinate(spot.x(), spot.y())));
        ring.add(ring.get(0).copy());
        return GEOMETRY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** Round a middle at random distances: simple, mostly hollow somewhere. */
    private static List<Point> star(Random random) {
        int corners = 3 + random.nextInt(9);
        List<Point> star = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double far = 25 + 100 * random.nextDouble();
            star.add(new Point(200 + far * Math.cos(angle), 150 + far * Math.sin(angle)));
        }
        return star;
    }

    @Test
    void halves_add_up_lie_inside_and_do_not_overlap() {
        Random random = new Random(31);
        int parted = 0;
        for (int i = 0; i < 2000; i++) {
            List<Point> whole = star(random);
            Point a = new Point(100 + 200 * random.nextDouble(), 50 + 200 * random.nextDouble());
            Point b = new Point(100 + 200 * random.nextDouble(), 50 + 200 * random.nextDouble());
            Optional<List<List<Point>>> halves = PolygonHalving.along(whole, a, b);
            if (halves.isEmpty() || !polygon(whole).isValid()) {
                continue;
            }
            parted++;
            Geometry one = polygon(halves.get().get(0));
            Geometry two = polygon(halves.get().get(1));
            String which = "outline " + i;
            assertThat(one.isValid() && two.isValid()).as(which).isTrue();
            assertThat(one.getArea() + two.getArea())
                    .as(which)
                    .isCloseTo(polygon(whole).getArea(), within(1e-6));
            assertThat(one.intersection(two).getArea()).as(which).isLessThan(1e-6);
            assertThat(one.difference(polygon(whole)).getArea()).as(which).isLessThan(1e-6);
            assertThat(two.difference(polygon(whole)).getArea()).as(which).isLessThan(1e-6);
        }
        assertThat(parted).isGreaterThan(1200);
    }

    @Test
    void an_ell_comes_apart_in_its_two_arms_although_the_line_runs_on() {
        List<List<Point>> arms =
                PolygonHalving.along(ELL, new Point(0, 40), new Point(28, 40)).orElseThrow();

        assertThat(arms.stream().map(arm -> polygon(arm).getArea()).sorted().toList())
                .satisfies(areas -> {
                    assertThat(areas.get(0)).isCloseTo(1500, within(1e-6));
                    assertThat(areas.get(1)).isCloseTo(4000, within(1e-6));
                });
    }

    @Test
    void a_line_beside_the_outline_parts_nothing() {
        assertThat(PolygonHalving.along(ELL, new Point(0, 200), new Point(100, 200)))
                .isEmpty();
    }

    @Test
    void a_rectangle_along_the_grain_lies_inside_and_has_its_direction() {
        Random random = new Random(32);
        for (int i = 0; i < 300; i++) {
            List<Point> whole = star(random);
            double grain = Math.PI * random.nextDouble();
            LargestRectangle.Box box = LargestRectangle.inside(whole, grain);

            assertThat(box.angleRad()).isEqualTo(grain);
            assertThat(polygon(box.corners())
                            .difference(polygon(whole).buffer(1e-6))
                            .getArea())
                    .as("outline " + i)
                    .isLessThan(1e-6);
        }
    }
}
