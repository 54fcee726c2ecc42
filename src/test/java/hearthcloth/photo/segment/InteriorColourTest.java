package hearthcloth.photo.segment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.GroundParameters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link InteriorColour} by its {@link InteriorSamples}, where shapes lie by an {@link OccupancyMap}, and a {@link RimColourProfile}. */
class InteriorColourTest {

    private static final int FLOOR = 0x787878;
    private static final int RED = 0x9a3030;
    private static final int BLUE = 0x30409a;
    private static final List<Point> BOX = box(100, 100, 120, 100);

    private static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    private static Painted floor() {
        return new Painted(400, 300, FLOOR, 0);
    }

    private static InteriorColour read(Painted painted, List<Point> corners) {
        LabThumbnail coarse = painted.coarse();
        return InteriorColour.of(corners, coarse, GroundModel.of(coarse, GroundParameters.standard()));
    }

    private static Lab lab(int rgb) {
        return Colour.of(rgb).lab();
    }

    @Test
    void plain_cloth_is_read_with_the_ground_and_how_far_it_is_from_it() {
        InteriorColour read = read(floor().box(100, 100, 120, 100, RED), BOX);

        assertThat(read.colour().apart(lab(RED))).isLessThan(0.1);
        assertThat(read.ground().apart(lab(FLOOR))).isLessThan(0.2);
        assertThat(read.contrast()).isCloseTo(lab(RED).apart(lab(FLOOR)), within(0.3));
        assertThat(read.spread()).isLessThan(0.1);
        assertThat(read.figured()).isFalse();
    }

    @Test
    void two_colours_side_by_side_are_two_halves_with_a_short_border() {
        InteriorColour read = read(floor().box(100, 100, 60, 100, RED).box(160, 100, 60, 100, BLUE), BOX);

        InteriorColour.Halves halves = read.halves();
        double apart = lab(RED).apart(lab(BLUE));
        assertThat(Math.min(halves.one().apart(lab(RED)), halves.two().apart(lab(RED))))
                .isLessThan(0.5);
        assertThat(halves.one().apart(halves.two())).isCloseTo(apart, within(1.0));
        assertThat(halves.share()).isCloseTo(0.5, within(0.02));
        // about 96 places high and 116 wide: 96 neighbours differ
        assertThat(halves.border()).isCloseTo(96 / Math.sqrt(96 * 116), within(0.1));
        assertThat(read.spread()).isCloseTo(apart / 2, within(0.5));
        assertThat(read.figured()).isTrue();
    }

    @Test
    void a_quarter_of_another_colour_is_a_quarter() {
        InteriorColour read = read(floor().box(100, 100, 120, 100, RED).box(100, 100, 30, 100, BLUE), BOX);

        assertThat(read.halves().share()).isCloseTo(28.0 / 116, within(0.02));
        assertThat(read.spread()).isCloseTo(lab(RED).apart(lab(BLUE)) * Math.sqrt(0.2414 * 0.7586), within(1.0));
    }

    @Test
    void a_check_has_a_long_border() {
        Painted check = floor();
        for (int i = 0; i < 120; i++) {
            check.box(100 + i % 12 * 10, 100 + i / 12 * 10, 10, 10, (i % 12 + i / 12) % 2 == 0 ? RED : BLUE);
        }

        assertThat(read(check, BOX).halves().border()).isGreaterThan(15);
    }

    @Test
    void light_that_falls_off_over_ground_and_cloth_is_no_figure() {
        Painted lit = floor().box(100, 100, 120, 100, 0xb0a090).lit((x, y) -> 1 - 0.5 * x / 400);

        InteriorColour read = read(lit, BOX);

        assertThat(read.figured()).isFalse();
        assertThat(read.halves().one().apart(read.halves().two())).isLessThan(6);
    }

    @Test
    void a_shape_too_small_to_look_into_tells_nothing() {
        InteriorColour read = read(floor(), box(100, 100, 3, 3));

        assertThat(read.contrast()).isZero();
        assertThat(read.figured()).isFalse();
        assertThat(read.halves().share()).isZero();
        InteriorSamples none = new InteriorSamples(4, 4);
        assertThat(none.interior().colour()).isEqualTo(Lab.BLACK);
    }

    @Test
    void a_shape_that_leaves_the_picture_is_read_where_it_shows() {
        InteriorColour read = read(floor().box(300, 100, 100, 100, RED), box(300, 100, 300, 100));

        assertThat(read.colour().apart(lab(RED))).isLessThan(0.1);
    }

    private static Blob blob(double left, double top, double width, double height) {
        List<Point> rim = new ArrayList<>();
        List<Point> corners = box(left, top, width, height);
        for (int i = 0; i < 4; i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % 4);
            for (int s = 0; s < from.to(to); s++) {
                rim.add(from.towards(to, s / from.to(to)));
            }
        }
        return new Blob(rim, false);
    }

    @Test
    void a_place_is_taken_by_the_shape_that_lies_there_and_a_margin_round_it() {
        OccupancyMap map = new OccupancyMap(floor().coarse(), List.of(blob(50, 40, 60, 30), blob(200, 40, 30, 90)));

        assertThat(map.isFree(80, 50)).isFalse();
        assertThat(map.isFree(80, 120)).isTrue();
        assertThat(map.byOther(80, 50, 0)).isFalse();
        assertThat(map.byOther(80, 50, 1)).isTrue();
        assertThat(map.byOther(215, 100, 0)).isTrue();
        assertThat(map.byOther(80, 120, 0)).isFalse();
        // the shape ends at 110; two more pixels are kept clear
        assertThat(map.isFree(112, 50)).isFalse();
        assertThat(map.isFree(114, 50)).isTrue();
        assertThat(map.isFree(48, 50)).isFalse();
        assertThat(map.isFree(46, 50)).isTrue();
        assertThat(new OccupancyMap(floor().coarse(), List.of(blob(50, 40, 60, 30)), 0).isFree(112, 50))
                .isTrue();
        assertThat(new OccupancyMap(floor().coarse(), List.of(blob(50, 40, 60, 30)), 8).isFree(117, 50))
                .isFalse();
    }

    @Test
    void outside_the_picture_nothing_is_free() {
        OccupancyMap map = new OccupancyMap(floor().coarse(), List.of());

        assertThat(map.isFree(0, 0)).isTrue();
        assertThat(map.isFree(399, 299)).isTrue();
        assertThat(map.isFree(-1, 0) || map.isFree(0, -1) || map.isFree(400, 0) || map.isFree(0, 300))
                .isFalse();
        assertThat(map.byOther(-3, 10, 0) && map.byOther(10, 301, 0)).isTrue();
        assertThat(map.byOther(10, 10, 0)).isFalse();
    }

    private static RimColourProfile profile(Painted painted, Blob... blobs) {
        LabThumbnail coarse = painted.coarse();
        return RimColourProfile.of(BOX, coarse, new OccupancyMap(coarse, List.of(blobs)));
    }

    @Test
    void paper_differs_from_its_ground_alike_all_round() {
        RimColourProfile paper = profile(new Painted(400, 300, 0xd8d2c6, 0).box(100, 100, 120, 100, 0xf2f2f0));

        assertThat(paper.changes()).hasSize(16);
        Lab change = lab(0xf2f2f0);
        for (double[] one : paper.changes()) {
            assertThat(one[0]).isCloseTo(change.lightness() - lab(0xd8d2c6).lightness(), within(0.1));
            assertThat(one[2]).isCloseTo(change.b() - lab(0xd8d2c6).b(), within(0.1));
        }
        assertThat(paper.isOfOneKind()).isTrue();
        // the same corners the other way round
        List<Point> back = new ArrayList<>(BOX);
        Collections.reverse(back);
        LabThumbnail coarse = new Painted(400, 300, 0xd8d2c6, 0)
                .box(100, 100, 120, 100, 0xf2f2f0)
                .coarse();
        assertThat(RimColourProfile.of(back, coarse, new OccupancyMap(coarse, List.of()))
                        .isOfOneKind())
                .isTrue();
    }

    @Test
    void a_fold_is_paler_on_one_side_and_darker_on_the_other() {
        Painted fold =
                new Painted(400, 300, 0xd8d8d8, 0).box(0, 0, 160, 300, 0xc0c0c0).box(100, 100, 120, 100, 0xcccccc);

        assertThat(profile(fold).isOfOneKind()).isFalse();
    }

    @Test
    void where_a_piece_lies_beside_the_paper_nothing_is_told() {
        Painted paper = new Painted(400, 300, 0xd8d2c6, 0).box(100, 100, 120, 100, 0xf2f2f0);

        assertThat(profile(paper, blob(224, 90, 40, 120)).changes()).hasSize(12);
    }

    private static RimColourProfile made(int count, double l, double a, double b) {
        List<double[]> changes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            changes.add(new double[] {l, a, b});
        }
        return new RimColourProfile(changes);
    }

    @Test
    void a_kind_is_known_from_more_than_half_of_the_rim_by_hue_or_by_being_paler() {
        assertThat(made(9, 2, 0, 0).isOfOneKind()).isTrue();
        assertThat(made(8, 2, 0, 0).isOfOneKind()).isFalse();
        assertThat(made(9, 1.4, 0, 0).isOfOneKind()).isFalse();
        assertThat(made(9, -1.9, 0, 1.1).isOfOneKind()).isTrue();
        assertThat(made(9, -2.1, 0, 1.1).isOfOneKind()).isFalse();
        assertThat(made(9, 1, 0, 0.9).isOfOneKind()).isFalse();
        List<double[]> uneven = new ArrayList<>(made(12, 0, 0, 2).changes());
        uneven.add(new double[] {0, 0, 0.3});
        assertThat(new RimColourProfile(uneven).isOfOneKind()).isFalse();
        uneven.set(12, new double[] {0, 0, 1});
        assertThat(new RimColourProfile(uneven).isOfOneKind()).isTrue();
    }
}
