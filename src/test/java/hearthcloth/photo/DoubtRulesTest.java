package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.parameter.MeasuringParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.InteriorColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** When a piece is doubted: {@link DoubtRules}. */
class DoubtRulesTest {

    private static final int FLOOR = 0x6a5a48;
    private static final int RED = 0x9a3030;
    private static final int NAVY = 0x24304e;
    private static Reading.Read read;
    private static FloorScale scale;

    @BeforeAll
    static void take_the_scale_of_a_sheet_that_was_read() {
        read = ReadingPipelineTest.table();
        scale = read.scale();
    }

    private static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    private static PieceOutline outline(List<Point> corners, double ownMm) {
        List<MeasuredLength> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(scale.measured(corners.get(i), corners.get((i + 1) % corners.size()), ownMm));
        }
        return scale.outline(corners, sides);
    }

    /** What is read of a shape, with nothing wrong at first. */
    private static final class Shape {
        private List<Point> corners = box(600, 300, 200, 160);
        private boolean cutOff;
        private double contrast = 40;
        private double share = 0.9;
        private double fringe;
        private double ownMm = 0.1;
        private double spread = 1;
        private InteriorColour.Halves halves = new InteriorColour.Halves(Lab.BLACK, Lab.BLACK, 0, 9);

        private List<Doubt.Kind> doubts() {
            return sentences().stream().map(Doubt::kind).toList();
        }

        private List<Doubt> sentences() {
            List<EdgeFit.Fit> fits = new ArrayList<>();
            for (int i = 0; i < corners.size(); i++) {
                Line line = Line.through(corners.get(i), corners.get((i + 1) % corners.size()));
                fits.add(new EdgeFit.Fit(line, 0.3, 0.1, i == 0 ? share : 0.9, i == 1 ? fringe : 0));
            }
            return DoubtRules.of(
                    new Blob(corners, cutOff),
                    new FittedPolygon(corners, List.of(), fits),
                    outline(corners, ownMm),
                    new InteriorColour(Colour.of(RED).lab(), Colour.of(FLOOR).lab(), spread, contrast, halves),
                    scale,
                    MeasuringParameters.standard());
        }
    }

    @Test
    void a_clear_shape_is_not_doubted_and_one_cut_off_is() {
        Shape shape = new Shape();
        assertThat(shape.doubts()).isEmpty();
        shape.cutOff = true;
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.CUT_OFF);
    }

    @Test
    void what_hardly_differs_or_hardly_shows_is_faint() {
        Shape shape = new Shape();
        shape.contrast = 11.9;
        // three sides are seen along nine tenths, and so is the first, or not
        shape.share = 0.61;
        assertThat(shape.doubts()).isEmpty();
        shape.share = 0.59;
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.FAINT);
        shape.contrast = 12.1;
        assertThat(shape.doubts()).isEmpty();
        shape.share = 0.29;
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.FAINT);
        shape.share = 0.31;
        assertThat(shape.doubts()).isEmpty();
    }

    private static final List<Point> ELL = List.of(
            new Point(600, 300),
            new Point(800, 300),
            new Point(800, 400),
            new Point(700, 400),
            new Point(700, 500),
            new Point(600, 500));

    @Test
    void two_hollows_or_two_colours_in_a_bent_shape_may_be_two_pieces() {
        Shape shape = new Shape();
        shape.corners = List.of(
                new Point(600, 300),
                new Point(700, 300),
                new Point(700, 400),
                new Point(800, 400),
                new Point(800, 500),
                new Point(700, 500),
                new Point(700, 600),
                new Point(600, 600));
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.TOUCHING);

        shape.corners = ELL;
        assertThat(shape.doubts()).isEmpty();
        shape.spread = 9;
        shape.halves =
                new InteriorColour.Halves(Colour.of(RED).lab(), Colour.of(NAVY).lab(), 0.3, 1);
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.TOUCHING);
        // a check has a long border, and a straight piece may have two colours
        shape.halves =
                new InteriorColour.Halves(Colour.of(RED).lab(), Colour.of(NAVY).lab(), 0.3, 2.3);
        assertThat(shape.doubts()).isEmpty();
        shape.halves =
                new InteriorColour.Halves(Colour.of(RED).lab(), Colour.of(NAVY).lab(), 0.07, 1);
        assertThat(shape.doubts()).isEmpty();
        shape.halves =
                new InteriorColour.Halves(Colour.of(RED).lab(), Colour.of(NAVY).lab(), 0.3, 1);
        shape.corners = box(600, 300, 200, 160);
        assertThat(shape.doubts()).isEmpty();
    }

    private static List<Point> round(int corners) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            out.add(new Point(700 + 90 * Math.cos(angle), 400 + 90 * Math.sin(angle)));
        }
        return out;
    }

    @Test
    void more_than_nine_corners_are_uneven() {
        Shape shape = new Shape();
        shape.corners = round(9);
        assertThat(shape.doubts()).isEmpty();
        shape.corners = round(10);
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.UNEVEN);
    }

    @Test
    void a_fringe_is_told_in_millimetres_rounded_up() {
        Shape shape = new Shape();
        shape.fringe = 1.1;
        assertThat(shape.doubts()).isEmpty();
        shape.fringe = 2.5;
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.FRAYED);
        assertThat(shape.sentences().get(0).sentence().english()).contains("about 2 mm");
    }

    @Test
    void far_from_the_sheet_sizes_are_less_sure_and_so_are_vague_sides() {
        Shape shape = new Shape();
        // the sheet's diagonal is 364 mm, three of them are 1091, one and a half pixels to each
        shape.corners = box(900, 300, 200, 160);
        assertThat(shape.doubts()).doesNotContain(Doubt.Kind.FAR);
        // nearer than that, but the sheet leaves more than 6 mm and 6 % of its sides open
        shape.corners = box(1_500, 300, 200, 160);
        assertThat(shape.doubts()).contains(Doubt.Kind.FAR);
        shape.corners = box(2_000, 300, 200, 160);
        assertThat(shape.doubts()).contains(Doubt.Kind.FAR);
        shape.corners = box(600, 300, 200, 160);
        shape.ownMm = 5;
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.UNEVEN);
        shape.ownMm = 0.9;
        assertThat(shape.doubts()).isEmpty();
    }

    private static List<Doubt.Kind> drawn(List<Point> corners, double ownMm, boolean rough) {
        Map<String, ReadPiece> others = Map.of("A", read.pieces().get(0));
        return DoubtRules.ofDrawn(outline(corners, ownMm), scale, rough, others, MeasuringParameters.standard())
                .stream()
                .map(Doubt::kind)
                .toList();
    }

    @Test
    void a_piece_drawn_by_hand_is_doubted_at_the_picture_s_edge_over_another_or_when_rough() {
        assertThat(drawn(box(600, 300, 200, 160), 0.1, true)).isEmpty();
        // a five hundredth of 900 pixels is 1.8
        assertThat(drawn(box(1.5, 300, 200, 160), 0.1, true)).containsExactly(Doubt.Kind.CUT_OFF);
        assertThat(drawn(box(2, 400, 200, 160), 0.1, true)).isEmpty();
        assertThat(drawn(box(698.5, 400, 200, 160), 0.1, true)).containsExactly(Doubt.Kind.CUT_OFF);
        assertThat(drawn(box(600, 513.5, 200, 160), 0.1, true)).containsExactly(Doubt.Kind.CUT_OFF);
        assertThat(drawn(box(450, 100, 200, 160), 0.1, true)).containsExactly(Doubt.Kind.TOUCHING);
        assertThat(drawn(box(600, 300, 200, 160), 5, true)).containsExactly(Doubt.Kind.UNEVEN);
        assertThat(drawn(box(600, 300, 200, 160), 5, false)).isEmpty();
    }
}
