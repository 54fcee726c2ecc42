package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.ForegroundMask;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shapes become polygons: {@link ShapeTracing} of what stands out, {@link ShapeAtTap} of what was tapped. */
class ShapeTracingTest {

    private static final int FLOOR = 0x8a7a60;
    private static final int CLOTH = 0x2c4a70;
    private static final ReadingParameters STANDARD = ReadingParameters.standard();

    private static final List<Point> PIECE =
            List.of(new Point(190, 120), new Point(430, 132), new Point(420, 300), new Point(178, 286));
    /** An L: the piece before with a corner cut out. */
    private static final List<Point> ELL = List.of(
            new Point(180, 110),
            new Point(440, 110),
            new Point(440, 220),
            new Point(300, 220),
            new Point(300, 360),
            new Point(180, 360));

    private static void areNear(List<Point> found, List<Point> truth) {
        assertThat(found).hasSameSizeAs(truth);
        assertThat(truth)
                .allSatisfy(corner -> assertThat(found)
                        .anySatisfy(at -> assertThat(at.to(corner)).isLessThan(1.5)));
    }

    private static List<FittedPolygon> traced(Painted painted) {
        LabThumbnail coarse = painted.coarse();
        LabThumbnail smooth = coarse.smoothed(1.2);
        GroundModel ground = GroundModel.of(smooth, STANDARD.ground());
        ShapeTracing tracing = new ShapeTracing(painted.picture(), coarse, ReferenceSheet.A4, STANDARD);
        List<Blob> blobs = ForegroundMask.beside(List.of(), smooth, ground, STANDARD.segment());
        return blobs.stream()
                .flatMap(blob -> tracing.parted(blob, ground, LensModel.unknown(painted.picture())))
                .map(ShapeTracing.Seen::traced)
                .toList();
    }

    @Test
    void a_piece_has_the_corners_it_has_and_no_more() {
        List<FittedPolygon> four = traced(new Painted(640, 480, FLOOR, 3).soft(PIECE, CLOTH));
        List<FittedPolygon> six = traced(new Painted(640, 480, FLOOR, 3).soft(ELL, CLOTH));

        assertThat(four).hasSize(1);
        areNear(four.get(0).corners(), PIECE);
        assertThat(six).hasSize(1);
        areNear(six.get(0).corners(), ELL);
    }

    @Test
    void two_cloths_that_touch_at_a_corner_are_two_polygons() {
        List<Point> other = List.of(new Point(426, 296), new Point(560, 296), new Point(560, 400), new Point(426, 400));
        Painted painted = new Painted(640, 480, FLOOR, 3).soft(PIECE, CLOTH).soft(other, 0xb04030);

        assertThat(traced(painted)).hasSize(2);
    }

    @Test
    void a_tap_inside_finds_the_shape_round_it_and_a_tap_on_the_floor_none() {
        Painted painted = new Painted(640, 480, FLOOR, 3).soft(PIECE, CLOTH);
        ShapeAtTap tap = new ShapeAtTap(painted.picture(), STANDARD);

        areNear(tap.corners(new Point(300, 210)), PIECE);
        assertThat(tap.corners(new Point(60, 420))).isEmpty();
    }

    @Test
    void a_cloth_of_two_colours_is_found_by_the_colour_that_was_tapped() {
        Painted painted = new Painted(640, 480, FLOOR, 3).soft(PIECE, CLOTH);
        painted.soft(List.of(new Point(260, 160), new Point(350, 164), new Point(346, 250), new Point(256, 246)), 0xd0c040);

        areNear(
                new ShapeAtTap(painted.picture(), STANDARD).corners(new Point(300, 205)),
                List.of(new Point(260, 160), new Point(350, 164), new Point(346, 250), new Point(256, 246)));
    }
}
