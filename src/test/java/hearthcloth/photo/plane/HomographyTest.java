package hearthcloth.photo.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link Homography}, {@link Hulls}, {@link OutlineOverlap} and {@link PolygonSimplifier} on figures drawn by hand. */
class HomographyTest {

    private static final List<Point> SHEET =
            List.of(new Point(0, 0), new Point(190, 0), new Point(190, 254), new Point(0, 254));

    /** A camera over a place of the floor, looking down at a slant; the middle of its picture is the origin. */
    private record Pinhole(double focal, double tiltRad, Point foot, double height) {

        Point seen(Point floor) {
            double sin = Math.sin(tiltRad);
            double cos = Math.cos(tiltRad);
            double x = floor.x() - foot.x();
            double y = floor.y() - foot.y();
            double depth = height * cos + y * sin;
            return new Point(focal * x / depth, focal * (y * cos - height * sin) / depth);
        }

        Homography map() {
            return Homography.of(SHEET, SHEET.stream().map(this::seen).toList());
        }
    }

    @Test
    void four_places_go_to_four_places_and_all_others_as_a_camera_sees_them() {
        SplittableRandom chance = new SplittableRandom(33);
        for (int i = 0; i < 20; i++) {
            Pinhole camera = new Pinhole(
                    1_200 + chance.nextInt(900),
                    chance.nextDouble(0, 0.7),
                    new Point(chance.nextDouble(-200, 400), chance.nextDouble(-600, 300)),
                    chance.nextDouble(500, 1_500));
            Homography map = camera.map();
            for (int k = 0; k < 12; k++) {
                Point floor = new Point(chance.nextDouble(-100, 300), chance.nextDouble(-100, 400));

                assertThat(map.map(floor).to(camera.seen(floor))).isLessThan(1e-6);
            }
        }
    }

    @Test
    void it_tells_where_the_camera_is() {
        Pinhole camera = new Pinhole(1_500, 0.4, new Point(120, -300), 900);

        Homography.Eye eye = camera.map().eye(1_500);

        assertThat(eye.foot().to(new Point(120, -300))).isLessThan(1e-3);
        assertThat(eye.height()).isCloseTo(900, within(1e-3));
    }

    @Test
    void a_true_rectangle_has_no_skew_and_a_false_one_has() {
        Pinhole camera = new Pinhole(1_500, 0.4, new Point(120, -300), 900);

        assertThat(camera.map().skew(1_500)).isCloseTo(0, within(1e-6));
        List<Point> seen = SHEET.stream().map(camera::seen).toList();
        List<Point> longer = List.of(new Point(0, 0), new Point(190, 0), new Point(190, 266.7), new Point(0, 266.7));
        // one axis is five percent shorter than is said: the logarithm of 1.05
        assertThat(Homography.of(longer, seen).skew(1_500)).isCloseTo(Math.log(1.05), within(5e-3));
        assertThat(camera.map().skew(1_000)).isGreaterThan(0.02);
    }

    private static final List<Point> ELL = List.of(
            new Point(0, 0),
            new Point(60, 0),
            new Point(60, 20),
            new Point(20, 20),
            new Point(20, 60),
            new Point(0, 60));

    @Test
    void a_hull_spans_the_notch_of_an_ell() {
        assertThat(Hulls.hullArea(ELL)).isCloseTo(60 * 60 - 40 * 40 / 2.0, within(1e-9));
    }

    @Test
    void an_inner_place_lies_inside_even_where_the_middle_does_not() {
        Point inner = Hulls.inner(ELL);

        assertThat(Polygons.inside(ELL, inner.x(), inner.y())).isTrue();
        assertThat(Polygons.toRim(inner, ELL)).isGreaterThan(5);
        List<Point> two = List.of(new Point(3, 4), new Point(9, 9));
        assertThat(Hulls.inner(two)).isEqualTo(new Point(3, 4));
    }

    private static PieceOutline box(double left, double top, double width, double height) {
        return outline(List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height)));
    }

    private static PieceOutline outline(List<Point> corners) {
        return new PieceOutline(corners, List.of(), List.of());
    }

    @Test
    void outlines_lie_over_each_other_from_six_percent_of_the_smaller_one_on() {
        PieceOutline large = box(0, 0, 200, 100);

        assertThat(OutlineOverlap.isOver(large, box(195, 0, 100, 100))).isFalse();
        assertThat(OutlineOverlap.isOver(large, box(193, 0, 100, 100))).isTrue();
        assertThat(OutlineOverlap.isOver(box(193, 0, 100, 100), large)).isTrue();
        assertThat(OutlineOverlap.isOver(large, box(40, 40, 10, 10))).isTrue();
        assertThat(OutlineOverlap.isOver(large, box(300, 0, 100, 100))).isFalse();
    }

    @Test
    void an_outline_that_crosses_itself_is_compared_all_the_same() {
        PieceOutline bow = outline(List.of(new Point(0, 0), new Point(100, 100), new Point(100, 0), new Point(0, 100)));

        assertThat(OutlineOverlap.isOver(bow, box(60, 20, 40, 60))).isTrue();
        assertThat(OutlineOverlap.isOver(bow, box(200, 20, 40, 60))).isFalse();
    }

    /** The rim of a polygon in steps of about one, each off by up to so much. */
    private static List<Point> rim(List<Point> corners, double noise, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            int steps = (int) Math.round(from.to(to));
            for (int s = 0; s < steps; s++) {
                rim.add(from.towards(to, (double) s / steps)
                        .plus(noise * chance.nextDouble(-1, 1), noise * chance.nextDouble(-1, 1)));
            }
        }
        return rim;
    }

    private static void sameCorners(List<Point> found, List<Point> corners, double near) {
        assertThat(found).hasSameSizeAs(corners);
        for (Point corner : corners) {
            assertThat(found).as("%s", corner).anyMatch(one -> one.to(corner) < near);
        }
    }

    @Test
    void a_noisy_rim_has_the_corners_of_its_polygon() {
        List<Point> slanted = List.of(new Point(10, 20), new Point(150, 45), new Point(130, 160), new Point(-5, 130));
        for (int seed = 0; seed < 10; seed++) {
            sameCorners(PolygonSimplifier.of(rim(slanted, 0.7, seed), 3), slanted, 0.8);
            sameCorners(PolygonSimplifier.of(rim(ELL, 0.5, seed), 3), ELL, 0.8);
        }
    }

    @Test
    void a_corner_is_where_the_sides_cross_though_the_rim_there_is_worn_off() {
        List<Point> worn = List.of(
                new Point(2, 0),
                new Point(98, 0),
                new Point(100, 2),
                new Point(100, 78),
                new Point(98, 80),
                new Point(2, 80),
                new Point(0, 78),
                new Point(0, 2));

        sameCorners(
                PolygonSimplifier.of(rim(worn, 0, 1), 3),
                List.of(new Point(0, 0), new Point(100, 0), new Point(100, 80), new Point(0, 80)),
                0.5);
    }

    @Test
    void corners_that_hardly_turn_are_dropped_and_true_ones_kept() {
        List<Point> square = List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100));
        List<Point> more = new ArrayList<>(square);
        more.add(1, new Point(50, 2));

        assertThat(PolygonSimplifier.tidied(more, 3)).isEqualTo(square);
        // 26 degrees and 12 off the line between its neighbours: a corner
        more.set(1, new Point(50, -12));
        assertThat(PolygonSimplifier.tidied(more, 3)).hasSize(5);
        List<Point> triangle = List.of(new Point(0, 0), new Point(100, 1), new Point(200, 0));
        assertThat(PolygonSimplifier.tidied(triangle, 3)).isEqualTo(triangle);
    }

    @Test
    void a_short_side_is_bridged_by_its_neighbours() {
        List<Point> cut =
                List.of(new Point(0, 0), new Point(96, 0), new Point(100, 4), new Point(100, 100), new Point(0, 100));

        sameCorners(
                PolygonSimplifier.tidied(cut, 3),
                List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100)),
                1e-6);
        // eight areas of the tolerance would be added: too much for a bridge
        List<Point> slanted =
                List.of(new Point(0, 0), new Point(80, 0), new Point(100, 20), new Point(100, 100), new Point(0, 100));
        assertThat(PolygonSimplifier.tidied(slanted, 3)).hasSize(5);
    }
}
