package hearthcloth.photo.segment;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.struct.image.GrayU8;
import hearthcloth.photo.Painted;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.SegmentParameters;
import org.junit.jupiter.api.Test;

/** What of a mask is the ground's own: its lines ({@link FloorLineFilter}) and its figures ({@link RugFigureFilter}). */
class FloorLineFilterTest {

    private static final int WIDTH = 400;
    private static final int HEIGHT = 300;
    private static final int FLOOR = 0x787878;
    private static final int JOINT = 0x383838;
    private static final int RED = 0x9a3030;
    private static final int GOLD = 0xc09030;

    private final Painted painted = new Painted(WIDTH, HEIGHT, FLOOR, 0);
    private final GrayU8 mask = new GrayU8(WIDTH, HEIGHT);

    private void box(int left, int top, int width, int height, int colour) {
        painted.box(left, top, width, height, colour);
        for (int y = top; y < top + height; y++) {
            for (int x = left; x < left + width; x++) {
                mask.set(x, y, 1);
            }
        }
    }

    private int count(int left, int top, int width, int height) {
        int count = 0;
        for (int y = top; y < top + height; y++) {
            for (int x = left; x < left + width; x++) {
                count += mask.get(x, y);
            }
        }
        return count;
    }

    private void clearLines() {
        LabThumbnail coarse = painted.coarse();
        FloorLineFilter.clear(
                mask, coarse, GroundModel.of(coarse, GroundParameters.standard()), SegmentParameters.standard());
    }

    private void clearFigures() {
        LabThumbnail coarse = painted.coarse();
        RugFigureFilter.clear(
                mask, coarse, GroundModel.of(coarse, GroundParameters.standard()), SegmentParameters.standard());
    }

    @Test
    void a_joint_across_the_floor_is_cleared_and_a_piece_stays() {
        box(0, 60, WIDTH, 6, JOINT);
        box(150, 120, 90, 80, RED);

        clearLines();

        assertThat(count(0, 60, WIDTH, 6)).isZero();
        assertThat(count(150, 120, 90, 80)).isEqualTo(90 * 80);
    }

    @Test
    void a_short_line_and_a_broad_strip_are_no_joints() {
        box(100, 60, 70, 6, JOINT);
        box(100, 150, 200, 24, RED);

        clearLines();

        assertThat(count(100, 60, 70, 6)).isEqualTo(70 * 6);
        assertThat(count(100, 150, 200, 24)).isEqualTo(200 * 24);
    }

    @Test
    void shorter_stretches_of_a_joint_s_colour_are_cleared_with_it() {
        box(0, 60, WIDTH, 8, JOINT);
        box(0, 200, 60, 8, JOINT);
        box(300, 200, 60, 8, RED);

        clearLines();

        // too short by itself, but of the joint's colour; the red one is a scrap
        assertThat(count(0, 200, 60, 8)).isZero();
        assertThat(count(300, 200, 60, 8)).isEqualTo(60 * 8);
    }

    @Test
    void the_stripes_of_a_cloth_stay_and_are_filled() {
        for (int i = 0; i < 12; i++) {
            box(120, 100 + 10 * i, 110, 5, RED);
        }

        clearLines();

        assertThat(count(120, 100, 110, 115)).isEqualTo(110 * 115);
    }

    @Test
    void a_grid_from_rim_to_rim_is_the_ground_s_however_close_its_lines_are() {
        for (int y = 8; y + 3 <= HEIGHT; y += 10) {
            box(0, y, WIDTH, 3, JOINT);
        }

        clearLines();

        assertThat(count(0, 0, WIDTH, HEIGHT)).isZero();
    }

    /** Figures 12 pixels across every 40 pixels all over the picture, cut off at its left, top and right. */
    private int figures(int rows) {
        int count = 0;
        for (int y = 0; y < rows * 40; y += 40) {
            for (int x = 0; x < WIDTH; x += 40) {
                if (x < 140 || x > 260 || y < 120 || y > 220) {
                    box(x, y, 12, 12, GOLD);
                    count++;
                }
            }
            box(WIDTH - 12, y, 12, 12, GOLD);
            count++;
        }
        return count;
    }

    @Test
    void the_figures_of_a_rug_are_cleared_and_the_pieces_on_it_stay() {
        int figures = figures(8 - 1);
        box(150, 130, 100, 80, RED);

        clearFigures();

        assertThat(figures).isGreaterThan(40);
        assertThat(count(0, 0, WIDTH, HEIGHT)).isEqualTo(100 * 80);
        assertThat(count(150, 130, 100, 80)).isEqualTo(100 * 80);
    }

    @Test
    void a_few_scraps_are_no_figures() {
        figures(1);
        int before = count(0, 0, WIDTH, HEIGHT);

        clearFigures();

        assertThat(before).isPositive();
        assertThat(count(0, 0, WIDTH, HEIGHT)).isEqualTo(before);
    }

    @Test
    void a_small_scrap_of_another_colour_stays_among_the_figures() {
        figures(7);
        box(180, 150, 20, 20, RED);

        clearFigures();

        assertThat(count(0, 0, WIDTH, HEIGHT)).isEqualTo(20 * 20);
        assertThat(count(180, 150, 20, 20)).isEqualTo(20 * 20);
    }

    @Test
    void a_figure_that_a_piece_lies_on_is_cut_from_it() {
        figures(7);
        box(150, 130, 100, 80, RED);
        box(250, 150, 6, 12, GOLD);

        clearFigures();

        assertThat(count(150, 130, 100, 80)).isEqualTo(100 * 80);
        assertThat(count(250, 150, 6, 12)).isZero();
    }
}
