package hearthcloth.photo.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.Painted;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.PrintedSheetParameters;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.MeasuringSheet;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What tells a sheet by itself: {@link RoundedCorners}, {@link CodedMarks} and the rims that {@link FaintSheetFinder} takes. */
class SheetMarksTest {

    private static final PrintedSheetParameters.Reading READING =
            PrintedSheetParameters.standard().reading();

    private static final int FLOOR = 0x6a5a48;
    private static final int WIDTH = 520;
    private static final int HEIGHT = 400;

    private static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    private static final double CARD_WIDTH = 85.6;
    private static final double CARD_HEIGHT = 53.98;

    private static List<Point> card(double pixels, double radius) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 28; i++) {
            int corner = Math.floorDiv(i, 7);
            double angle = Math.PI / 2 * (corner + i % 7 / 6.0) - Math.PI;
            double x = corner == 0 || corner == 3 ? radius : CARD_WIDTH - radius;
            double y = corner < 2 ? radius : CARD_HEIGHT - radius;
            corners.add(new Point(
                    100 + pixels * (x + radius * Math.cos(angle)), 100 + pixels * (y + radius * Math.sin(angle))));
        }
        return corners;
    }

    private static double roundness(List<Point> shape, double pixels) {
        Painted painted = new Painted(500, 400, FLOOR, 3).polygon(shape, 0xd0c040);
        FloorPlane plane = FloorPlane.of(
                LensModel.unknown(painted.picture()),
                box(100, 100, pixels * CARD_WIDTH, pixels * CARD_HEIGHT),
                CARD_WIDTH,
                CARD_HEIGHT);
        return RoundedCorners.roundness(painted.picture(), plane, new FloorPlane.Turned(CARD_WIDTH, CARD_HEIGHT), 3.18);
    }

    @Test
    void a_card_has_round_corners_and_a_scrap_of_its_size_has_not() {
        for (double pixels : new double[] {1.5, 3}) {
            assertThat(roundness(card(pixels, 3.18), pixels)).isCloseTo(1, within(0.25));
            assertThat(roundness(box(100, 100, pixels * CARD_WIDTH, pixels * CARD_HEIGHT), pixels))
                    .isCloseTo(0, within(0.2));
            // half as round, a quarter of the area
            assertThat(roundness(card(pixels, 1.59), pixels)).isCloseTo(0.25, within(0.2));
        }
    }

    @Test
    void one_corner_that_is_worn_makes_no_card() {
        List<Point> worn = new ArrayList<>(box(100, 100, 3 * CARD_WIDTH, 3 * CARD_HEIGHT));
        worn.set(0, new Point(112, 100));
        worn.add(new Point(100, 112));

        assertThat(roundness(worn, 3)).isLessThan(0.4);
    }

    private static void mark(Painted on, MeasuringSheet.Mark mark, int left, int top, int cell, int... wrong) {
        on.box(left - cell, top - cell, 8 * cell, 8 * cell, 0xf0f0f0);
        for (int row = 0; row < 6; row++) {
            for (int column = 0; column < 6; column++) {
                int at = row * 6 + column;
                boolean black =
                        mark.isBlack(column, row) != Arrays.stream(wrong).anyMatch(w -> w == at);
                on.box(left + column * cell, top + row * cell, cell, cell, black ? 0x181818 : 0xf0f0f0);
            }
        }
    }

    @Test
    void marks_are_found_with_their_numbers_and_corners() {
        Painted painted = new Painted(640, 480, FLOOR, 2);
        mark(painted, MeasuringSheet.marks().get(3), 80, 60, 12);
        mark(painted, MeasuringSheet.marks().get(11), 300, 200, 15);

        for (List<CodedMarks.Seen> seen :
                List.of(CodedMarks.in(painted.coarse(), READING), CodedMarks.in(painted.picture(), 1, READING))) {
            assertThat(seen).extracting(one -> one.mark().number()).containsExactlyInAnyOrder(3, 11);
            for (CodedMarks.Seen one : seen) {
                List<Point> corners = one.mark().number() == 3 ? box(80, 60, 72, 72) : box(300, 200, 90, 90);
                for (int i = 0; i < 4; i++) {
                    assertThat(one.corners().get(i).to(corners.get(i)))
                            .as("%s, corner %s", one.mark(), i)
                            .isLessThan(1.5);
                }
            }
        }
    }

    @Test
    void in_a_reduced_picture_places_are_still_the_whole_picture_s() {
        Painted painted = new Painted(640, 480, FLOOR, 2);
        mark(painted, MeasuringSheet.marks().get(7), 200, 160, 20);

        List<CodedMarks.Seen> seen = CodedMarks.in(painted.picture(), 2, READING);

        assertThat(seen).hasSize(1);
        assertThat(seen.get(0).corners().get(2).to(new Point(320, 280))).isLessThan(3);
    }

    @Test
    void up_to_three_wrong_cells_are_mended_and_a_pattern_four_off_every_mark_is_none() {
        int[] wrong = {7, 8, 13};
        for (int count = 0; count <= 3; count++) {
            Painted painted = new Painted(640, 480, FLOOR, 2);
            mark(painted, MeasuringSheet.marks().get(5), 80, 60, 12, Arrays.copyOf(wrong, count));
            assertThat(CodedMarks.in(painted.coarse(), READING))
                    .as("%s wrong", count)
                    .extracting(seen -> seen.mark().number())
                    .containsExactly(5);
        }
        Painted four = new Painted(640, 480, FLOOR, 2);
        mark(four, MeasuringSheet.marks().get(5), 80, 60, 12, 7, 8, 9, 13);
        assertThat(CodedMarks.in(four.coarse(), READING)).isEmpty();
    }

    private static List<List<Point>> faint(Painted painted) {
        LensModel lens = LensModel.unknown(painted.picture()).with(0, 0.003);
        LabThumbnail smooth = painted.coarse().smoothed(1.2);
        SheetFinder finder = new SheetFinder(
                painted.picture(), painted.coarse(), lens, Optional.of(0.74), SheetParameters.standard());
        return new FaintSheetFinder(
                        painted.picture(),
                        smooth,
                        lens,
                        new OccupancyMap(smooth, List.of()),
                        ReadingParameters.standard())
                .like(ReferenceSheet.A4, finder);
    }

    @Test
    void paper_that_hardly_differs_from_the_ground_is_found_by_its_edges() {
        List<Point> sheet = box(60.3, 50.6, 210, 297);
        List<List<Point>> found = faint(new Painted(WIDTH, HEIGHT, 0xe4dfd2, 2).soft(sheet, 0xf2f2f0));

        assertThat(found).hasSize(1);
        for (Point corner : sheet) {
            assertThat(found.get(0)).anyMatch(one -> one.to(corner) < 1);
        }
        assertThat(Math.abs(Polygons.signedArea(found.get(0)))).isCloseTo(210 * 297, within(400.0));
    }

    @Test
    void neither_joints_that_go_on_nor_another_shape_are_faint_paper() {
        Painted joints = new Painted(WIDTH, HEIGHT, 0xe4dfd2, 2);
        for (int x : new int[] {60, 270}) {
            joints.box(x, 0, 3, HEIGHT, 0xeceade);
        }
        for (int y : new int[] {50, 347}) {
            joints.box(0, y, WIDTH, 3, 0xeceade);
        }
        assertThat(faint(joints)).isEmpty();
        assertThat(faint(new Painted(WIDTH, HEIGHT, 0xe4dfd2, 2).soft(box(60, 50, 300, 297), 0xf2f2f0)))
                .isEmpty();
        assertThat(faint(new Painted(WIDTH, HEIGHT, 0xe4dfd2, 2))).isEmpty();
    }
}
