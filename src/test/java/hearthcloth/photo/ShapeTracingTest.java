package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.ForegroundMask;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shapes become polygons: {@link ShapeTracing} and {@link ShapeFollowing} of what stands out, {@link ShapeAtTap} of what was tapped; and {@link SmallPictureLook}. */
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
        painted.soft(
                List.of(new Point(260, 160), new Point(350, 164), new Point(346, 250), new Point(256, 246)), 0xd0c040);

        areNear(
                new ShapeAtTap(painted.picture(), STANDARD).corners(new Point(300, 205)),
                List.of(new Point(260, 160), new Point(350, 164), new Point(346, 250), new Point(256, 246)));
    }

    @Test
    void shapes_are_followed_side_by_side_and_one_that_runs_off_the_picture_tells_nothing_of_the_lens() {
        List<Point> off = List.of(new Point(-5, 340), new Point(120, 340), new Point(120, 440), new Point(-5, 440));
        Painted painted = new Painted(640, 480, FLOOR, 3).soft(PIECE, CLOTH).soft(off, CLOTH);
        LabThumbnail coarse = painted.coarse();
        LabThumbnail smooth = coarse.smoothed(1.2);
        List<String> told = new ArrayList<>();
        ShapeFollowing shapes = new ShapeFollowing(
                painted.picture(),
                coarse,
                smooth,
                new ShapeTracing(painted.picture(), coarse, ReferenceSheet.A4, STANDARD),
                STANDARD,
                () -> told.add("standing out"));

        ShapeFollowing.Looked looked = shapes.look(GroundModel.of(smooth, STANDARD.ground()), List.of());

        assertThat(told).hasSize(1);
        assertThat(looked.traced()).hasSize(2);
        assertThat(looked.uncut().stream().filter(shape -> shape.corners().isEmpty()))
                .hasSize(1);
        assertThat(ShapeFollowing.straightSides(looked)).hasSize(4);
        FittedPolygon whole = looked.uncut().stream()
                .filter(shape -> !shape.corners().isEmpty())
                .findFirst()
                .orElseThrow();
        areNear(whole.corners(), PIECE);
    }

    /** Halves of one size: what is lighter in one is darker in the other, so their mean is the whole's colour. */
    @Test
    void of_two_halves_each_looks_as_it_does_beside_the_whole() {
        Painted painted =
                new Painted(400, 300, FLOOR, 2).box(100, 60, 100, 180, 0x20406a).box(200, 60, 100, 180, 0x4a6a94);
        PieceAppearance blue = new PieceAppearance(
                new Lab(35, 0, -25), new Lab(25, 0, -25), new Lab(45, 0, -25), PieceAppearance.Pattern.FIGURED, 40);
        ReadPiece whole = piece(blue, 100, 300);
        List<PieceAppearance> looks = new SmallPictureLook(painted.picture())
                .looks(whole, List.of(piece(blue, 100, 200), piece(blue, 200, 300)), 400);

        assertThat(looks).hasSize(2).allMatch(look -> look.pattern() == PieceAppearance.Pattern.PLAIN);
        assertThat(looks.get(0).colour().lightness())
                .isLessThan(looks.get(1).colour().lightness() - 10);
        assertThat((looks.get(0).colour().lightness() + looks.get(1).colour().lightness()) / 2)
                .isCloseTo(35, within(0.6));
        assertThat((looks.get(0).colour().b() + looks.get(1).colour().b()) / 2).isCloseTo(-25, within(0.6));
    }

    private static ReadPiece piece(PieceAppearance look, double left, double right) {
        List<Point> corners =
                List.of(new Point(left, 60), new Point(right, 60), new Point(right, 240), new Point(left, 240));
        return new ReadPiece(
                1,
                new PieceOutline(corners, corners, List.of()),
                new LargestRectangle.Box(new Point(0, 0), 1, 1, 0),
                look,
                List.of());
    }
}
