package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.parameter.SheetParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** {@link Edgels} of small steps of colour, which of a line shows by an {@link EdgelMap}, and long rows by {@link HoughSegments}. */
class EdgelsTest {

    private static final int PALE = 0xe0e0e0;
    private static final int PALER = 0xececec;

    private static List<Edgels.Edgel> in(Painted painted) {
        return Edgels.in(
                painted.coarse().smoothed(1),
                (x, y) -> true,
                SheetParameters.standard().faint().edgels());
    }

    @Test
    void a_small_step_shows_along_all_of_its_edge_and_nowhere_else() {
        List<Edgels.Edgel> edgels = in(new Painted(200, 150, PALE, 0).box(100, 0, 100, 150, PALER));

        assertThat(edgels).hasSize(150 - 2 * 6);
        for (Edgels.Edgel edgel : edgels) {
            assertThat(edgel.x()).isCloseTo(100, within(1.0));
            assertThat(edgel.turned(0)).isLessThan(0.02);
        }
    }

    @Test
    void a_slanted_edge_changes_colour_across_itself() {
        List<Point> half = List.of(new Point(0, 0), new Point(200, 0), new Point(200, 20), new Point(0, 120));
        List<Edgels.Edgel> edgels = in(new Painted(200, 150, PALE, 0).polygon(half, PALER));

        // from (0, 120) to (200, 20): across it is the direction (1, 2)
        Line edge = Line.through(new Point(0, 120), new Point(200, 20));
        assertThat(edgels.size()).isGreaterThan(150);
        long near = edgels.stream()
                .filter(edgel -> Math.abs(edge.off(edgel.spot())) < 1.6 && edgel.turned(Math.atan2(2, 1)) < 0.15)
                .count();
        assertThat(near).isGreaterThan((long) (0.95 * edgels.size()));
    }

    @Test
    void a_slope_is_no_step_and_a_plain_picture_has_none() {
        assertThat(in(new Painted(200, 150, 0xc8c8c8, 0).lit((x, y) -> 0.7 + 0.0012 * x)))
                .isEmpty();
        assertThat(in(new Painted(200, 150, PALE, 2))).isEmpty();
    }

    @Test
    void only_free_pixels_are_looked_at() {
        Painted painted = new Painted(200, 150, PALE, 0).box(100, 0, 100, 150, PALER);

        List<Edgels.Edgel> edgels = Edgels.in(
                painted.coarse().smoothed(1),
                (x, y) -> y < 75,
                SheetParameters.standard().faint().edgels());

        assertThat(edgels).hasSize(75 - 6).allMatch(edgel -> edgel.y() < 75);
    }

    @Test
    void directions_are_told_apart_by_at_most_a_quarter_turn() {
        Edgels.Edgel edgel = new Edgels.Edgel(0, 0, 3.0);

        assertThat(edgel.turned(0.1)).isCloseTo(Math.PI - 2.9, within(1e-12));
        assertThat(edgel.turned(3.0 - Math.PI)).isCloseTo(0, within(1e-12));
        assertThat(edgel.turned(3.0 + Math.PI / 2)).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(edgel.spot()).isEqualTo(new Point(0, 0));
    }

    /** Edgels along a line in steps of a pixel. */
    private static List<Edgels.Edgel> along(Point from, Point to) {
        List<Edgels.Edgel> edgels = new ArrayList<>();
        double angle = Math.atan2(to.x() - from.x(), -(to.y() - from.y()));
        double normal = (angle + 2 * Math.PI) % Math.PI;
        int steps = (int) from.to(to);
        for (int i = 0; i < steps; i++) {
            Point at = from.towards(to, (i + 0.5) / steps);
            edgels.add(new Edgels.Edgel(at.x(), at.y(), normal));
        }
        return edgels;
    }

    @Test
    void the_share_of_a_line_that_shows_is_told() {
        EdgelMap map = new EdgelMap(
                along(new Point(50, 80), new Point(150, 80)),
                200,
                150,
                SheetParameters.standard().faint().edgels());

        assertThat(map.shown(new Point(50, 80), new Point(150, 80))).isCloseTo(1, within(0.01));
        assertThat(map.shown(new Point(50, 81.5), new Point(150, 81.5))).isCloseTo(1, within(0.01));
        assertThat(map.shown(new Point(50, 84), new Point(150, 84))).isZero();
        assertThat(map.shown(new Point(100, 80), new Point(200, 80))).isCloseTo(0.5, within(0.02));
        // a line across it meets it at one place, whose edge runs the other way
        assertThat(map.shown(new Point(100, 30), new Point(100, 130))).isZero();
        assertThat(map.shown(new Point(-50, 80), new Point(50, 80))).isZero();
    }

    @Test
    void what_goes_on_past_a_corner_is_told_apart_from_what_ends_there() {
        EdgelMap map = new EdgelMap(
                along(new Point(20, 80), new Point(150, 80)),
                200,
                150,
                SheetParameters.standard().faint().edgels());

        assertThat(map.beyond(new Point(50, 80), new Point(150, 80))).isLessThan(0.1);
        assertThat(map.beyond(new Point(20, 80), new Point(110, 80))).isCloseTo(1, within(0.1));
        // the first five pixels past a corner are not looked at
        assertThat(map.beyond(new Point(50, 80), new Point(147, 80))).isLessThan(0.1);
    }

    private static boolean isOn(List<Line> lines, Point from, Point to) {
        return lines.stream().anyMatch(line -> Math.abs(line.off(from)) < 1 && Math.abs(line.off(to)) < 1);
    }

    @Test
    void long_rows_are_found_the_longest_first_and_short_ones_are_not() {
        Point[][] rows = {
            {new Point(30, 40), new Point(170, 60)},
            {new Point(40, 130), new Point(60, 30)},
            {new Point(120, 100), new Point(160, 100)}
        };
        List<Edgels.Edgel> edgels = new ArrayList<>();
        for (Point[] row : rows) {
            edgels.addAll(along(row[0], row[1]));
        }

        List<Line> lines =
                HoughSegments.of(edgels, SheetParameters.standard().faint().rows());

        assertThat(lines).hasSize(2);
        assertThat(isOn(lines.subList(0, 1), rows[0][0], rows[0][1])).isTrue();
        assertThat(isOn(lines, rows[1][0], rows[1][1])).isTrue();
        assertThat(isOn(lines, rows[2][0], rows[2][1])).isFalse();
    }

    @Test
    void a_long_gap_ends_a_row_and_scattered_places_are_none() {
        List<Edgels.Edgel> parted = along(new Point(20, 50), new Point(60, 50));
        parted.addAll(along(new Point(90, 50), new Point(130, 50)));
        assertThat(HoughSegments.of(parted, SheetParameters.standard().faint().rows()))
                .isEmpty();
        List<Edgels.Edgel> near = along(new Point(20, 50), new Point(60, 50));
        near.addAll(along(new Point(80, 50), new Point(120, 50)));
        assertThat(HoughSegments.of(near, SheetParameters.standard().faint().rows()))
                .hasSize(1);
        Random chance = new Random(8);
        List<Edgels.Edgel> scattered = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            scattered.add(new Edgels.Edgel(
                    200 * chance.nextDouble(), 150 * chance.nextDouble(), Math.PI * chance.nextDouble()));
        }
        assertThat(HoughSegments.of(
                        scattered, SheetParameters.standard().faint().rows()))
                .isEmpty();
    }

    @Test
    void edgels_that_face_elsewhere_are_not_in_the_row() {
        List<Edgels.Edgel> edgels = along(new Point(20, 50), new Point(180, 50)).stream()
                .map(edgel -> new Edgels.Edgel(edgel.x(), edgel.y(), 0.4))
                .toList();

        assertThat(HoughSegments.of(edgels, SheetParameters.standard().faint().rows()))
                .isEmpty();
    }
}
