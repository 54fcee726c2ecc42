package hearthcloth.photo.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.photo.Painted;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.SheetUnseenException;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which shape is the reference: {@link SheetChoice}. */
class SheetChoiceTest {

    private static final int FLOOR = 0x6a5a48;
    private static final int PAPER = 0xf2f2f0;
    private static final int RED = 0x9a3030;
    private static final int WIDTH = 520;
    private static final int HEIGHT = 400;

    private static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    /** A floor seen from straight above, with shapes on it. */
    private static final class Table {
        private final Painted painted = new Painted(WIDTH, HEIGHT, FLOOR, 3);
        private final List<List<Point>> shapes = new ArrayList<>();

        Table with(List<Point> shape, int colour) {
            painted.soft(shape, colour);
            shapes.add(shape);
            return this;
        }

        LensModel lens() {
            return LensModel.unknown(painted.picture()).with(0, 0.003);
        }

        List<FittedPolygon> traced() {
            SubpixelEdges edges = new SubpixelEdges(
                    painted.picture(), 5, false, EdgeParameters.standard().steps());
            return shapes.stream()
                    .map(shape -> FittedPolygon.of(shape, edges.of(shape), lens(), 1.2, 4))
                    .toList();
        }

        SheetChoice choice(ReferenceSheet sheet) {
            LabThumbnail coarse = painted.coarse();
            SheetFinder finder =
                    new SheetFinder(painted.picture(), coarse, lens(), Optional.of(0.74), SheetParameters.standard());
            return new SheetChoice(finder, sheet, coarse, GroundModel.of(coarse, GroundParameters.standard()));
        }

        SheetChoice.Chosen sure(ReferenceSheet sheet) {
            return choice(sheet).sure(traced(), traced());
        }
    }

    /** A4 at a pixel to a millimetre, upright; a red scrap and a long white one. */
    private static Table table() {
        return new Table()
                .with(box(400, 20, 100, 90), RED)
                .with(box(20.3, 40.6, 210, 297), PAPER)
                .with(box(250, 330, 200, 50), PAPER);
    }

    @Test
    void the_white_shape_of_the_sheet_s_proportions_is_the_sheet() {
        Table table = table();
        SheetChoice choice = table.choice(ReferenceSheet.A4);
        List<FittedPolygon> traced = table.traced();

        assertThat(choice.isAny(traced)).isTrue();
        assertThat(choice.isAnyRight(traced)).isTrue();
        assertThat(choice.likeliest(traced, traced).index()).isEqualTo(1);
        SheetChoice.Chosen chosen = choice.sure(traced, traced);
        assertThat(chosen.found().index()).isEqualTo(1);
        assertThat(chosen.doubts()).isEmpty();
        assertThat(chosen.found().size()).isEqualTo(new FloorPlane.Turned(210, 297));
    }

    @Test
    void where_there_is_none_that_is_said_and_may_be_looked_for_again() {
        Table table = new Table().with(box(400, 20, 100, 90), RED).with(box(100, 300, 200, 60), PAPER);

        assertThat(table.choice(ReferenceSheet.A4).isAny(table.traced())).isFalse();
        assertThatThrownBy(() -> table.sure(ReferenceSheet.A4))
                .isInstanceOf(SheetUnseenException.class)
                .hasMessageContaining("No A4 was found");
    }

    @Test
    void two_sheets_of_one_shape_and_two_sizes_are_refused_and_of_one_size_are_not() {
        Table rivals = table().with(box(250.4, 120, 140, 198), PAPER);
        assertThatThrownBy(() -> rivals.sure(ReferenceSheet.A4))
                .isInstanceOf(PhotoRefusedException.class)
                .isNotInstanceOf(SheetUnseenException.class)
                .hasMessageContaining("Two things in the picture could be the A4");

        Table twins = new Table().with(box(20.3, 40.6, 210, 297), PAPER).with(box(260.3, 40.6, 210, 297), PAPER);
        assertThat(twins.sure(ReferenceSheet.A4).doubts()).isEmpty();
    }

    @Test
    void a_letter_named_a4_is_told() {
        Table letter = new Table().with(box(20.3, 40.6, 215.9, 279.4), PAPER);

        assertThatThrownBy(() -> letter.sure(ReferenceSheet.A4))
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContaining("Say Letter");
        assertThat(letter.sure(ReferenceSheet.LETTER).doubts()).isEmpty();
    }

    @Test
    void a_sheet_a_little_too_long_makes_every_piece_doubted() {
        // three in a hundred too long
        Table longer = new Table().with(box(20.3, 40.6, 210, 306), PAPER);

        List<Doubt> doubts = longer.sure(ReferenceSheet.A4).doubts();

        assertThat(doubts).extracting(Doubt::kind).containsExactly(Doubt.Kind.SHEET);
        assertThat(doubts.get(0).sentence().english()).contains("A4").contains("3 %");
        assertThat(longer.choice(ReferenceSheet.A4).isAny(longer.traced())).isTrue();
        assertThat(longer.choice(ReferenceSheet.A4).isAnyRight(longer.traced())).isFalse();
    }

    @Test
    void a_larger_shape_as_white_is_the_true_sheet_with_something_over_it() {
        Table covered = new Table().with(box(20, 100, 140, 198), PAPER).with(box(180, 20, 320, 370), PAPER);

        assertThatThrownBy(() -> covered.sure(ReferenceSheet.A4)).hasMessageContaining("No A4 was found");
    }

    @Test
    void a_whiter_thing_that_may_be_the_sheet_bent_or_covered_always_makes_the_reader_ask() {
        int cream = 0xe4dcc8;
        List<Point> bent = List.of(
                new Point(260, 30), new Point(470, 30), new Point(478, 300), new Point(400, 330), new Point(262, 318));
        Table five = new Table().with(box(20, 100, 140, 198), cream).with(bent, PAPER);
        Table shorter = new Table().with(box(20, 100, 140, 198), cream).with(box(260, 60, 210, 262), PAPER);

        for (Table table : List.of(five, shorter)) {
            assertThatThrownBy(() -> table.sure(ReferenceSheet.A4))
                    .isInstanceOf(PhotoRefusedException.class)
                    .hasMessageMatching("(?s)(Two things|No A4 was found).*");
        }
        Table beside = new Table().with(box(20.3, 40.6, 210, 297), PAPER).with(box(260, 60, 160, 130), cream);
        assertThat(beside.sure(ReferenceSheet.A4).doubts()).isEmpty();
    }

    @Test
    void where_no_sheet_is_made_out_it_is_said_what_is_most_like_it_and_why_it_is_none() {
        Table longer = new Table().with(box(100, 300, 200, 60), PAPER);
        assertThatThrownBy(() -> longer.sure(ReferenceSheet.A4))
                .hasMessageContaining("No A4 was found")
                .hasMessageContaining("lower")
                .hasMessageContaining("off the proportions");
        List<Point> five = List.of(
                new Point(150, 60), new Point(360, 60), new Point(360, 250), new Point(260, 330), new Point(150, 300));
        Table folded = new Table().with(five, PAPER);
        assertThatThrownBy(() -> folded.sure(ReferenceSheet.A4)).hasMessageContaining("not four straight sides");
        Table none = new Table().with(box(100, 100, 90, 90), RED);
        assertThatThrownBy(() -> none.sure(ReferenceSheet.A4)).hasMessageContaining("Nothing white");
        Table cut = new Table().with(box(20.3, 40.6, 210, 297), PAPER);
        List<FittedPolygon> empty = List.of(new FittedPolygon(List.of(), List.of(), List.of()));
        assertThatThrownBy(() -> cut.choice(ReferenceSheet.A4).likeliest(cut.traced(), empty))
                .isInstanceOf(SheetUnseenException.class)
                .hasMessageContaining("runs off the picture");
    }

    @Test
    void only_a_sheet_that_is_white_or_has_round_corners_may_be_searched_for_again() {
        Table table = table();

        assertThat(table.choice(ReferenceSheet.A4).isTold()).isTrue();
        assertThat(table.choice(ReferenceSheet.CARD).isTold()).isTrue();
        assertThat(table.choice(ReferenceSheet.of(new Size(Length.mm(450), Length.mm(300))))
                        .isTold())
                .isFalse();
    }
}
