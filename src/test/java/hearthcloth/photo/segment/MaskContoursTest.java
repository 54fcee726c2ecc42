package hearthcloth.photo.segment;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.struct.image.GrayU8;
import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shapes told without the ground: {@link MaskContours}, {@link ColourRegion} and {@link PaleShapes}. */
class MaskContoursTest {

    private static final int FLOOR = 0x6a5a48;
    private static final int PAPER = 0xf2f2f0;
    private static final int RED = 0x9a3030;
    private static final SegmentParameters STANDARD = SegmentParameters.standard();

    private static GrayU8 mask(int left, int top, int width, int height) {
        GrayU8 mask = new GrayU8(80, 60);
        for (int y = top; y < top + height; y++) {
            for (int x = left; x < left + width; x++) {
                mask.set(x, y, 1);
            }
        }
        return mask;
    }

    private static LabThumbnail plain() {
        return new Painted(80, 60, FLOOR, 0).coarse();
    }

    @Test
    void a_rim_goes_through_the_middles_of_the_outermost_pixels() {
        List<Blob> found = MaskContours.of(mask(20, 10, 30, 20), plain(), 0, 0);

        assertThat(found).hasSize(1);
        // 29 by 19 between the middles of the first and the last
        assertThat(found.get(0).area()).isEqualTo(29.0 * 19);
        assertThat(found.get(0).cutOff()).isFalse();
        assertThat(found.get(0).holds(new Point(21, 11))).isTrue();
        assertThat(found.get(0).holds(new Point(51, 31))).isFalse();
    }

    @Test
    void lint_is_left_out() {
        // a rim of 4 (5 - 1) + ... = 16 pixels, and one of 2 (12 - 1) + 2 (6 - 1) = 32
        assertThat(MaskContours.of(mask(20, 10, 5, 5), plain(), 0, 0)).isEmpty();
        assertThat(MaskContours.of(mask(20, 10, 12, 6), plain(), 0, 0)).hasSize(1);
    }

    @Test
    void what_reaches_the_picture_s_rim_is_cut_off_and_a_part_of_the_picture_knows_where_it_lies() {
        assertThat(MaskContours.of(mask(0, 10, 30, 20), plain(), 0, 0)).allMatch(Blob::cutOff);

        LabThumbnail large = new Painted(300, 200, FLOOR, 0).coarse();
        Blob inside = MaskContours.of(mask(0, 10, 30, 20), large, 100, 50).get(0);
        assertThat(inside.cutOff()).isFalse();
        assertThat(inside.holds(new Point(115, 70))).isTrue();
    }

    @Test
    void what_is_of_one_colour_round_a_place_is_its_shape() {
        LabThumbnail smooth = new Painted(300, 200, FLOOR, 3)
                .box(80, 60, 120, 70, RED)
                .coarse()
                .smoothed(1.2);

        List<Point> rim = ColourRegion.rim(new Point(140, 95), 12, smooth, STANDARD);

        assertThat(new Blob(rim, false).area()).isBetween(0.93 * 120 * 70, 1.07 * 120 * 70);
    }

    @Test
    void the_floor_runs_off_the_picture_and_has_no_shape() {
        LabThumbnail smooth = new Painted(300, 200, FLOOR, 3)
                .box(80, 60, 120, 70, RED)
                .coarse()
                .smoothed(1.2);

        assertThat(ColourRegion.rim(new Point(30, 30), 12, smooth, STANDARD)).isEmpty();
    }

    @Test
    void only_what_is_pale_and_nearly_without_colour_may_be_paper_and_the_largest_comes_first() {
        LabThumbnail smooth = new Painted(600, 400, FLOOR, 3)
                .box(60, 60, 80, 60, PAPER)
                .box(220, 60, 160, 110, PAPER)
                .box(60, 220, 160, 110, 0x9ad0f8)
                .box(420, 220, 90, 90, RED)
                .coarse()
                .smoothed(1.2);

        List<Blob> pale = PaleShapes.in(smooth, GroundModel.of(smooth, GroundParameters.standard()), STANDARD);

        assertThat(pale).hasSize(2);
        assertThat(pale.get(0).holds(new Point(300, 115))).isTrue();
        assertThat(pale.get(1).holds(new Point(100, 90))).isTrue();
    }

    @Test
    void what_is_too_small_to_be_a_sheet_is_not_taken_for_one() {
        // 30 by 25 of 600 by 400 are 0.3 %, 40 by 30 are 0.5 %
        LabThumbnail smooth = new Painted(600, 400, FLOOR, 3)
                .box(60, 60, 30, 25, PAPER)
                .box(220, 60, 40, 30, PAPER)
                .coarse()
                .smoothed(1.2);

        assertThat(PaleShapes.in(smooth, GroundModel.of(smooth, GroundParameters.standard()), STANDARD))
                .hasSize(1)
                .allMatch(blob -> blob.holds(new Point(240, 75)));
    }
}
