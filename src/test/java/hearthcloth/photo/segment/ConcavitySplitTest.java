package hearthcloth.photo.segment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.Painted;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One piece or two: by a chord ({@link ConcavitySplit}), or by what a shape fell into ({@link FragmentGrouping}). */
class ConcavitySplitTest {

    private static final int FLOOR = 0x787878;
    private static final int RED = 0x9a3030;
    private static final int BLUE = 0x30409a;

    private static Painted floor() {
        return new Painted(400, 300, FLOOR, 0);
    }

    private static ConcavitySplit split(Painted painted) {
        LabThumbnail coarse = painted.coarse();
        return new ConcavitySplit(
                coarse,
                GroundModel.of(coarse, GroundParameters.standard()),
                SegmentParameters.standard().parting());
    }

    /** Two squares of 80 of which one lies lower: they share so much of an edge. */
    private static List<Point> pair(int shared) {
        int low = 180 - shared;
        return List.of(
                new Point(100, 100),
                new Point(180, 100),
                new Point(180, low),
                new Point(260, low),
                new Point(260, low + 80),
                new Point(180, low + 80),
                new Point(180, 180),
                new Point(100, 180));
    }

    private static List<List<Point>> parts(int shared, int one, int other) {
        return split(floor().box(100, 100, 80, 80, one).box(180, 180 - shared, 80, 80, other))
                .of(pair(shared));
    }

    @Test
    void two_colours_part_along_a_chord_and_one_colour_stays_whole() {
        List<List<Point>> parts = parts(30, RED, BLUE);

        assertThat(parts).hasSize(2);
        for (List<Point> part : parts) {
            assertThat(Math.abs(Polygons.signedArea(part))).isCloseTo(6_400, within(1e-6));
        }
        assertThat(parts(30, RED, RED)).containsExactly(pair(30));
    }

    @Test
    void a_narrow_bridge_parts_even_one_colour() {
        // an eighth of the side of a square of the smaller part's area is 9.6
        assertThat(parts(9, RED, RED)).hasSize(2);
        assertThat(parts(11, RED, RED)).hasSize(1);
    }

    @Test
    void a_long_chord_does_not_part() {
        // six tenths of 80 are 48
        assertThat(parts(46, RED, BLUE)).hasSize(2);
        assertThat(parts(50, RED, BLUE)).hasSize(1);
    }

    @Test
    void how_long_a_chord_may_be_is_told_by_the_smaller_part() {
        List<Point> uneven = new ArrayList<>(pair(50));
        uneven.set(3, new Point(360, 130));
        uneven.set(4, new Point(360, 210));
        Painted painted = floor().box(100, 100, 80, 80, RED).box(180, 130, 180, 80, BLUE);

        // six tenths of the root of 180 x 80 would be 72
        assertThat(split(painted).of(uneven)).hasSize(1);
    }

    @Test
    void a_small_part_is_none() {
        List<Point> tip = List.of(
                new Point(100, 100),
                new Point(180, 100),
                new Point(180, 130),
                new Point(194, 130),
                new Point(194, 150),
                new Point(180, 135),
                new Point(180, 180),
                new Point(100, 180));

        assertThat(split(floor().box(100, 100, 80, 80, RED)).of(tip)).containsExactly(tip);
    }

    @Test
    void three_pieces_in_a_chain_are_three() {
        List<Point> chain = List.of(
                new Point(40, 100),
                new Point(100, 100),
                new Point(100, 140),
                new Point(160, 140),
                new Point(160, 100),
                new Point(220, 100),
                new Point(220, 160),
                new Point(160, 160),
                new Point(160, 200),
                new Point(100, 200),
                new Point(100, 160),
                new Point(40, 160));
        Painted painted =
                floor().box(40, 100, 60, 60, RED).box(100, 140, 60, 60, BLUE).box(160, 100, 60, 60, RED);

        assertThat(split(painted).of(chain))
                .hasSize(3)
                .allSatisfy(
                        part -> assertThat(Math.abs(Polygons.signedArea(part))).isCloseTo(3_600, within(1e-6)));
    }

    @Test
    void a_part_has_a_rim_in_steps_of_a_pixel_and_knows_when_it_reaches_the_picture_s_edge() {
        ConcavitySplit split = split(floor());

        Blob inner = split.blob(List.of(new Point(10, 10), new Point(60, 10), new Point(60, 40), new Point(10, 40)));
        assertThat(inner.rim()).hasSize(160);
        assertThat(inner.area()).isCloseTo(1_500, within(1e-6));
        assertThat(inner.cutOff()).isFalse();
        for (double[] at : new double[][] {{1, 100}, {100, 1}, {350, 100}, {100, 260}}) {
            Blob cut = split.blob(List.of(
                    new Point(at[0], at[1]),
                    new Point(at[0] + 49, at[1]),
                    new Point(at[0] + 49, at[1] + 39),
                    new Point(at[0], at[1] + 39)));
            assertThat(cut.cutOff()).isTrue();
        }
    }

    private static Blob blob(int left, int top, int width, int height) {
        return split(floor())
                .blob(List.of(
                        new Point(left, top),
                        new Point(left + width, top),
                        new Point(left + width, top + height),
                        new Point(left, top + height)));
    }

    private static FragmentGrouping grouping(Painted painted) {
        LabThumbnail coarse = painted.coarse();
        return new FragmentGrouping(
                coarse,
                GroundModel.of(coarse, GroundParameters.standard()),
                SegmentParameters.standard().parting());
    }

    private static final Blob WHOLE = blob(100, 100, 150, 60);
    private static final Blob LEFT = blob(100, 100, 70, 60);
    private static final Blob RIGHT = blob(180, 100, 70, 60);

    @Test
    void two_compact_parts_that_make_up_a_shape_are_two_pieces() {
        FragmentGrouping grouping = grouping(floor().box(100, 100, 150, 60, RED));

        assertThat(grouping.within(WHOLE, List.of(LEFT, RIGHT))).containsExactly(LEFT, RIGHT);
        assertThat(grouping.within(WHOLE, List.of(LEFT, blob(180, 100, 3, 60), RIGHT)))
                .containsExactly(LEFT, RIGHT);
        assertThat(grouping.ofTwoCloths(WHOLE, List.of(LEFT, RIGHT))).isEmpty();
    }

    @Test
    void one_large_part_or_parts_that_cover_too_little_are_one_piece() {
        FragmentGrouping grouping = grouping(floor().box(100, 100, 150, 60, RED));

        assertThat(grouping.within(WHOLE, List.of(WHOLE))).isEmpty();
        assertThat(grouping.within(WHOLE, List.of(blob(100, 100, 50, 60), blob(200, 100, 50, 60))))
                .isEmpty();
        assertThat(grouping.within(WHOLE, List.of(blob(100, 100, 60, 60), blob(190, 100, 60, 60))))
                .hasSize(2);
    }

    @Test
    void three_parts_of_one_colour_in_a_straight_shape_are_a_figure_and_of_two_colours_are_pieces() {
        List<Blob> three = List.of(blob(100, 100, 45, 60), blob(150, 100, 45, 60), blob(200, 100, 50, 60));

        assertThat(grouping(floor().box(100, 100, 150, 60, RED)).within(WHOLE, three))
                .isEmpty();
        Painted two = floor().box(100, 100, 95, 60, RED).box(195, 100, 60, 60, BLUE);
        assertThat(grouping(two).within(WHOLE, three)).hasSize(3);
        assertThat(grouping(two).ofTwoCloths(WHOLE, three)).isEmpty();
        assertThat(grouping(two).ofTwoCloths(WHOLE, List.of(blob(100, 100, 95, 60), blob(195, 100, 55, 60))))
                .hasSize(2);
    }

    @Test
    void parts_of_a_bent_shape_are_pieces_unless_none_of_them_is_straight() {
        List<Point> bent = new ArrayList<>(pair(40));
        Blob whole = split(floor()).blob(bent);
        FragmentGrouping grouping = grouping(floor().box(100, 100, 150, 60, RED));
        Blob one = blob(100, 100, 80, 80);
        Blob upper = blob(180, 140, 80, 40);
        Blob lower = blob(180, 180, 80, 40);

        assertThat(grouping.within(whole, List.of(one, upper, lower))).hasSize(3);
        Blob notch = split(floor())
                .blob(List.of(
                        new Point(100, 100),
                        new Point(180, 100),
                        new Point(140, 140),
                        new Point(180, 180),
                        new Point(100, 180)));
        assertThat(notch.filled()).isBetween(0.66, 0.9);
        assertThat(grouping.within(whole, List.of(notch, notch))).isEmpty();
        assertThat(grouping.within(whole, List.of(notch, one))).hasSize(2);
    }
}
