package hearthcloth.photo.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of a sheet: {@link SheetAbsence} where none is made out, {@link SheetRivals}, {@link TappedSheet}. */
class SheetAbsenceTest {

    private static final int FLOOR = 0x6a5a48;
    private static final int PAPER = 0xf2f2f0;
    private static final int RED = 0x9a3030;
    /** A4, straight from above, at a pixel and a half to a millimetre. */
    private static final List<Point> A4 = box(80, 60, 210 * 1.2, 297 * 1.2);

    private static final FittedPolygon CUT_OFF = new FittedPolygon(List.of(), List.of(), List.of());

    private static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    /** A floor seen from straight above, with shapes on it. */
    private static final class Table {
        private final Painted painted;
        private final List<List<Point>> shapes = new ArrayList<>();

        Table(int floor) {
            painted = new Painted(760, 520, floor, 3);
        }

        Table with(List<Point> shape, int colour) {
            painted.soft(shape, colour);
            shapes.add(shape);
            return this;
        }

        LensModel lens() {
            return LensModel.unknown(painted.picture());
        }

        List<FittedPolygon> traced() {
            SubpixelEdges edges = new SubpixelEdges(
                    painted.picture(), 5, false, EdgeParameters.standard().steps());
            return shapes.stream()
                    .map(shape -> FittedPolygon.of(shape, edges.of(shape), lens(), 1.2, 4))
                    .toList();
        }

        SheetFinder finder() {
            return new SheetFinder(
                    painted.picture(), painted.coarse(), lens(), Optional.of(0.74), SheetParameters.standard());
        }

        GroundModel ground() {
            LabThumbnail coarse = painted.coarse();
            return GroundModel.of(coarse.smoothed(1.2), GroundParameters.standard());
        }

        String absence(ReferenceSheet sheet, List<FittedPolygon> uncut) {
            return new SheetAbsence(sheet, finder(), painted.coarse(), ground())
                    .sentence(traced(), uncut)
                    .english();
        }

        void ask(int chosen, List<FittedPolygon> uncut) {
            SheetFinder.Found found = finder().among(traced(), ReferenceSheet.A4).stream()
                    .filter(one -> one.index() == chosen)
                    .findFirst()
                    .orElseThrow();
            new SheetRivals(finder(), ReferenceSheet.A4, painted.coarse(), ground()).ask(found, traced(), uncut);
        }

        TappedSheet tapped(ReferenceSheet sheet) {
            return TappedSheet.of(traced().get(0), finder(), sheet, 760);
        }
    }

    @Test
    void of_white_that_runs_off_the_picture_it_is_said_where_it_lies() {
        Table table = new Table(FLOOR).with(box(520, 330, 200, 150), PAPER).with(box(60, 60, 90, 80), RED);
        List<FittedPolygon> uncut = List.of(CUT_OFF, table.traced().get(1));

        assertThat(table.absence(ReferenceSheet.A4, uncut))
                .startsWith("No A4 was found. Something white lies in the lower right part of the picture")
                .contains("runs off the picture");
    }

    @Test
    void of_white_with_a_corner_gone_it_is_said_that_its_rim_is_not_four_sides() {
        List<Point> five = List.of(
                new Point(250, 180),
                new Point(480, 180),
                new Point(480, 340),
                new Point(330, 340),
                new Point(250, 290));
        Table table = new Table(FLOOR).with(five, PAPER);

        assertThat(table.absence(ReferenceSheet.A4, table.traced()))
                .contains("in the middle of the picture")
                .contains("not four straight sides");
    }

    @Test
    void of_white_that_is_too_long_it_is_said_by_how_much() {
        // 1.6 times as long as wide instead of 1.414: 13 % off
        Table table = new Table(FLOOR).with(box(100, 100, 320, 200), PAPER);

        assertThat(table.absence(ReferenceSheet.A4, table.traced()))
                .containsPattern("its sides are 1[0-4] % off the proportions of the A4");
    }

    @Test
    void where_nothing_is_white_that_is_said_and_where_the_floor_is_that_too() {
        Table red = new Table(FLOOR).with(box(100, 100, 320, 200), RED);
        Table pale = new Table(0xe8e8e6).with(box(100, 100, 320, 200), RED);

        assertThat(red.absence(ReferenceSheet.A4, red.traced())).contains("Nothing white with four straight sides");
        assertThat(pale.absence(ReferenceSheet.A4, pale.traced())).contains("as white as itself");
    }

    @Test
    void a_card_may_have_any_colour_so_the_likest_shape_is_spoken_of() {
        Table table = new Table(FLOOR).with(box(100, 100, 320, 200), RED).with(box(560, 40, 120, 118), RED);

        assertThat(table.absence(ReferenceSheet.CARD, table.traced()))
                .contains("Something with four corners lies in the")
                .doesNotContain("upper right");
    }

    @Test
    void a_whiter_thing_that_is_cut_off_is_asked_about_and_a_red_one_is_not() {
        Table white = new Table(FLOOR).with(A4, 0xe4dcc8).with(box(420, 60, 260, 300), PAPER);
        Table red = new Table(FLOOR).with(A4, PAPER).with(box(420, 60, 260, 300), RED);

        assertThatThrownBy(() -> white.ask(0, List.of(white.traced().get(0), CUT_OFF)))
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContaining("Two things in the picture could be the A4");
        red.ask(0, List.of(red.traced().get(0), CUT_OFF));
    }

    @Test
    void another_sheet_of_the_same_size_makes_nothing_larger_or_smaller_and_is_not_asked_about() {
        Table table = new Table(FLOOR).with(A4, PAPER).with(box(400, 60, 210 * 1.2, 297 * 1.2), PAPER);

        table.ask(0, table.traced());
    }

    @Test
    void a_sheet_that_was_tapped_is_taken_where_its_proportions_fit() {
        assertThat(new Table(FLOOR).with(A4, PAPER).tapped(ReferenceSheet.A4).doubts())
                .isEmpty();
    }

    @Test
    void one_a_little_off_is_doubted_and_one_far_off_refused() {
        Table little = new Table(FLOOR).with(box(80, 60, 210 * 1.2, 297 * 1.2 * 1.06), PAPER);
        Table far = new Table(FLOOR).with(box(80, 60, 210 * 1.2, 297 * 1.2 * 1.3), PAPER);

        assertThat(little.tapped(ReferenceSheet.A4).doubts())
                .singleElement()
                .satisfies(doubt -> assertThat(doubt.kind()).isEqualTo(Doubt.Kind.SHEET));
        assertThatThrownBy(() -> far.tapped(ReferenceSheet.A4))
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContaining("too long or too short for A4");
    }
}
