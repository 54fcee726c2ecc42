package hearthcloth.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Outlines made larger by {@link Polygons#grown}, by hand and by laws. */
class PolygonsTest {

    private static final List<Point> SQUARE =
            List.of(new Point(0, 0), new Point(10, 0), new Point(10, 10), new Point(0, 10));

    @Test
    void a_square_grows_on_all_sides_whichever_way_round_it_is_written() {
        List<Point> larger = List.of(new Point(-1, -1), new Point(11, -1), new Point(11, 11), new Point(-1, 11));
        for (boolean other : new boolean[] {false, true}) {
            List<Point> square = new ArrayList<>(SQUARE);
            List<Point> expected = new ArrayList<>(larger);
            if (other) {
                Collections.reverse(square);
                Collections.reverse(expected);
            }
            List<Point> grown = Polygons.grown(square, 1);
            for (int i = 0; i < 4; i++) {
                assertThat(grown.get(i).to(expected.get(i))).isCloseTo(0, within(1e-9));
            }
        }
    }

    @Test
    void a_square_that_grows_by_less_than_nothing_shrinks() {
        List<Point> smaller = Polygons.grown(SQUARE, -2);
        assertThat(smaller.get(0).to(new Point(2, 2))).isCloseTo(0, within(1e-9));
        assertThat(smaller.get(2).to(new Point(8, 8))).isCloseTo(0, within(1e-9));
    }

    /** Seeds 1 to 30: regular outlines of 4 to 15 corners; every edge moves out by as much as it is told. */
    @Test
    void every_edge_moves_out_evenly() {
        for (int seed = 1; seed <= 30; seed++) {
            Random chance = new Random(seed);
            int corners = 4 + chance.nextInt(12);
            double radius = 5 + 20 * chance.nextDouble();
            double by = 0.1 + 3 * chance.nextDouble();
            List<Point> outline = new ArrayList<>();
            for (int i = 0; i < corners; i++) {
                double angle = 2 * Math.PI * i / corners;
                outline.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
            }
            double before = radius * Math.cos(Math.PI / corners);
            List<Point> grown = Polygons.grown(outline, by);
            for (int i = 0; i < corners; i++) {
                Point middle = grown.get(i).plus(grown.get((i + 1) % corners)).times(0.5);
                assertThat(middle.to(new Point(0, 0))).isCloseTo(before + by, within(1e-9));
            }
        }
    }

    /** A needle a hundred times as long as it is wide: its tip would run off, and does not. */
    @Test
    void a_sharp_corner_does_not_run_off() {
        List<Point> needle = List.of(new Point(0, 0), new Point(100, 0.5), new Point(0, 1));
        assertThat(Polygons.grown(needle, 1).get(1).to(needle.get(1))).isLessThanOrEqualTo(4);
    }
}
