package hearthcloth.photo.segment;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Small pictures painted pixel by pixel: what of them is a piece, and what the ground's own. */
class ForegroundMaskTest {

    private static final int WIDTH = 1200;
    private static final int HEIGHT = 900;

    private static final int FLOOR = 0x787878;
    private static final int DARK = 0x3c3430;
    private static final int LIGHT = 0xb4b8b8;
    private static final int MAT = 0x2f5f4a;
    /** Within 8 of it in CIELAB, and not within 5. */
    private static final int NEARLY_MAT = 0x386e57;

    private static final int PAPER = 0xf2f2f0;
    private static final int WOOD = 0x6b4a3c;
    private static final int LILAC = 0x9a8fc8;
    private static final int OLIVE = 0x50523c;

    private final PixelImage picture = new PixelImage(WIDTH, HEIGHT);
    private final Random grain = new Random(5);

    @Test
    void a_stripe_has_cloth_along_it_and_a_joint_has_not() {
        fill(0, 0, WIDTH, HEIGHT, FLOOR);
        fill(0, 200, WIDTH, 8, LIGHT);
        fill(400, 300, 300, 240, DARK);
        for (int stripe = 0; stripe < 8; stripe++) {
            fill(400, 322 + 30 * stripe, 300, 8, LIGHT);
            fill(400, 321 + 30 * stripe, 300, 1, FLOOR);
            fill(400, 330 + 30 * stripe, 300, 1, FLOOR);
        }

        List<Blob> pieces = on(GroundModel.of(smooth(), GroundParameters.standard()));

        assertThat(pieces).hasSize(1);
        assertThat(pieces.get(0).area()).isBetween(0.97 * 300 * 240, 1.03 * 300 * 240);
    }

    @Test
    void a_figure_of_the_floor_s_colour_parts_no_print() {
        fill(0, 0, WIDTH, HEIGHT, FLOOR);
        fill(400, 300, 100, 40, LILAC);
        fill(500, 300, 160, 40, OLIVE);
        fill(498, 316, 5, 8, FLOOR);

        assertThat(on(GroundModel.of(smooth(), GroundParameters.standard()))).hasSize(1);
    }

    @Test
    void neighbours_of_two_colours_with_a_shade_between_are_two() {
        fill(0, 0, WIDTH, HEIGHT, FLOOR);
        fill(400, 300, 120, 160, LILAC);
        fill(526, 442, 150, 160, OLIVE);
        fill(520, 442, 6, 18, 0x5e5e5e);

        assertThat(on(GroundModel.of(smooth(), GroundParameters.standard()))).hasSize(2);
    }

    /** It is the one place at the picture's rim that much of the picture is like. */
    @Test
    void a_spot_at_the_rim_of_nearly_a_mat_s_colour_is_not_taken_for_the_ground() {
        fill(0, 0, WIDTH, HEIGHT, WOOD);
        fill(0, 392, 20, 24, NEARLY_MAT);
        fill(40, 40, 1100, 820, MAT);
        fill(500, 300, 210, 297, PAPER);

        List<Blob> pieces =
                on(GroundModel.withMat(smooth(), GroundParameters.standard()).orElseThrow());

        assertThat(pieces)
                .filteredOn(piece -> piece.area() > 1000)
                .singleElement()
                .matches(piece -> piece.holds(new Point(600, 450)) && piece.area() < 1.1 * 210 * 297);
    }

    private LabThumbnail smooth() {
        return LabThumbnail.of(picture).smoothed(1.2);
    }

    private List<Blob> on(GroundModel ground) {
        return ForegroundMask.beside(List.of(), smooth(), ground, SegmentParameters.standard());
    }

    /** With a little of a camera's noise. */
    private void fill(int left, int top, int width, int height, int colour) {
        for (int y = top; y < top + height; y++) {
            for (int x = left; x < left + width; x++) {
                int by = grain.nextInt(7) - 3;
                picture.put(x, y, (colour >> 16 & 255) + by, (colour >> 8 & 255) + by, (colour & 255) + by);
            }
        }
    }
}
