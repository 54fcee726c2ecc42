package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies along a side: {@link TappedRims} near where somebody tapped, {@link EdgeFringe} of threads beyond it. */
class TappedRimsTest {

    private static final int FLOOR = 0x6a5a48;
    private static final int PAPER = 0xf2f2f0;
    private static final int REACH = 10;
    private static final int PLACES = 60;
    private static final double[] STRAIGHT = {0, 0};

    private static final List<Point> SHEET =
            List.of(new Point(130, 90), new Point(380, 102), new Point(372, 290), new Point(118, 276));

    private static List<Point> off(double... by) {
        List<Point> taps = new ArrayList<>();
        for (int i = 0; i < SHEET.size(); i++) {
            taps.add(SHEET.get(i).plus(by[2 * i], by[2 * i + 1]));
        }
        return taps;
    }

    @Test
    void the_corners_are_where_the_rims_cross_and_not_where_a_finger_came_down() {
        Painted painted = new Painted(520, 400, FLOOR, 3).soft(SHEET, PAPER);

        List<Point> found = TappedRims.of(painted.coarse().smoothed(1.2), off(6, -5, -4, 7, 5, 4, -7, -3));

        for (int i = 0; i < 4; i++) {
            assertThat(found.get(i).to(SHEET.get(i))).as("corner %d", i).isLessThan(1.6);
        }
    }

    @Test
    void the_order_of_the_taps_is_kept_whichever_way_round_they_go() {
        Painted painted = new Painted(520, 400, FLOOR, 3).soft(SHEET, PAPER);
        List<Point> back = List.of(SHEET.get(3), SHEET.get(2), SHEET.get(1), SHEET.get(0));

        List<Point> found = TappedRims.of(painted.coarse().smoothed(1.2), back);

        for (int i = 0; i < 4; i++) {
            assertThat(found.get(i).to(back.get(i))).as("corner %d", i).isLessThan(1.6);
        }
    }

    @Test
    void where_no_rim_shows_the_taps_hold() {
        List<Point> found = TappedRims.of(new Painted(520, 400, FLOOR, 0).coarse(), SHEET);

        for (int i = 0; i < 4; i++) {
            assertThat(found.get(i).to(SHEET.get(i))).as("corner %d", i).isLessThan(1e-6);
        }
    }

    /** A strip whose places have cloth up to the line, and beyond it up to {@code far} what {@code beyond} says of each place. */
    private static EdgeFringe fringe(int far, java.util.function.IntToDoubleFunction beyond) {
        List<double[]> levels = new ArrayList<>();
        List<float[]> colours = new ArrayList<>();
        double[] shares = new double[PLACES];
        for (int s = 0; s < PLACES; s++) {
            double[] level = new double[2 * REACH + 1];
            float[] colour = new float[3 * level.length];
            for (int t = 0; t < level.length; t++) {
                level[t] = t <= REACH ? 1 : t <= REACH + far ? beyond.applyAsDouble(s) : 0;
                Arrays.fill(colour, 3 * t, 3 * t + 3, (float) (60 + 140 * level[t]));
            }
            levels.add(level);
            colours.add(colour);
            shares[s] = s / (PLACES - 1.0);
        }
        return new EdgeFringe(
                REACH,
                levels,
                colours,
                shares,
                EdgeParameters.standard().placing().threads());
    }

    @Test
    void threads_stand_out_place_by_place_and_end_where_they_end() {
        EdgeFringe threads = fringe(5, s -> s % 4 < 2 ? 1 : 0);

        assertThat(threads.threads(STRAIGHT)).isCloseTo(5, within(1.0));
        assertThat(threads.isThreaded(STRAIGHT, REACH + 5)).isTrue();
    }

    @Test
    void a_shade_as_long_as_they_is_none() {
        EdgeFringe shade = fringe(5, s -> 0.5);

        assertThat(shade.threads(STRAIGHT)).isZero();
        assertThat(shade.isThreaded(STRAIGHT, REACH + 5)).isFalse();
    }

    @Test
    void a_shade_that_grows_along_the_side_is_none_either() {
        EdgeFringe shade = fringe(5, s -> s / (PLACES - 1.0));

        assertThat(shade.threads(STRAIGHT)).isZero();
        assertThat(shade.isThreaded(STRAIGHT, REACH + 5)).isFalse();
    }
}
