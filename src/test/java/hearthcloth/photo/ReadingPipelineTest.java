package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Unit;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.ImageDecoder;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.MeasuringParameters;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.MeasuringSheet;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.ShownSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.InteriorColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** {@link ReadingPipeline}, {@link PieceMeasurement} and {@link DoubtRules} over tables painted as seen from straight above. */
class ReadingPipelineTest {

    private static final int FLOOR = 0x6a5a48;
    private static final int PAPER = 0xf2f2f0;
    private static final int RED = 0x9a3030;
    private static final int NAVY = 0x24304e;
    private static final int SAGE = 0xa3b08e;
    private static final int WIDTH = 900;
    private static final int HEIGHT = 675;

    /** Three pixels to two millimetres: A4, three pieces, a bit of lint and a thread. */
    private static final Painted TABLE = new Painted(WIDTH, HEIGHT, FLOOR, 3);

    private static final List<Double> HEARD = new ArrayList<>();
    private static Reading.Read read;
    private static FloorScale scale;

    private static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    private static ReadingPipeline pipeline(Painted painted, ReferenceSheet sheet, ReadingProgress progress) {
        return new ReadingPipeline(
                new ImageDecoder.Decoded(painted.picture(), 1, Optional.of(0.74)),
                ShownSheet.hidden(sheet),
                ReadingParameters.standard(),
                progress);
    }

    @BeforeAll
    static void lay_the_table_and_read_it() {
        TABLE.soft(box(30.3, 30.6, 315, 445.5), PAPER)
                .soft(box(390.4, 45.2, 180, 120), RED)
                .soft(box(645.7, 75.3, 90, 90), NAVY)
                .soft(box(405.2, 415.4, 225, 75), SAGE)
                .box(750, 450, 12, 12, RED)
                .box(420, 525, 52, 6, NAVY);
        read = (Reading.Read) pipeline(TABLE, ReferenceSheet.A4, (share, what) -> HEARD.add(share))
                .read();
        scale = read.scale();
    }

    private static double mm(MeasuredLength side) {
        return side.length().in(Unit.MILLIMETRE);
    }

    private static void measures(ReadPiece piece, double one, double other) {
        assertThat(piece.outline().sides()).hasSize(4);
        for (MeasuredLength side : piece.outline().sides()) {
            double truth = Math.abs(mm(side) - one) < Math.abs(mm(side) - other) ? one : other;
            assertThat(mm(side)).isCloseTo(truth, within(1.0));
            assertThat(Math.abs(mm(side) - truth))
                    .isLessThanOrEqualTo(side.giveOrTake().in(Unit.MILLIMETRE));
        }
        double wide = Math.max(piece.usable().width(), piece.usable().height());
        double narrow = Math.min(piece.usable().width(), piece.usable().height());
        assertThat(wide).isBetween(0.93 * Math.max(one, other), Math.max(one, other) + 0.1);
        assertThat(narrow).isBetween(0.93 * Math.min(one, other), Math.min(one, other) + 0.1);
    }

    @Test
    void pieces_are_numbered_as_one_reads_and_measured_by_the_sheet() {
        assertThat(read.pieces()).extracting(ReadPiece::number).containsExactly(1, 2, 3);
        measures(read.pieces().get(0), 120, 80);
        measures(read.pieces().get(1), 60, 60);
        measures(read.pieces().get(2), 150, 50);
        assertThat(read.pieces()).allMatch(piece -> piece.doubts().isEmpty());
        int[] colours = {RED, NAVY, SAGE};
        for (int i = 0; i < 3; i++) {
            assertThat(read.pieces()
                            .get(i)
                            .look()
                            .colour()
                            .apart(Colour.of(colours[i]).lab()))
                    .isLessThan(4);
        }
    }

    @Test
    void a_reading_tells_how_far_it_has_come() {
        assertThat(HEARD).isSorted().hasSizeGreaterThanOrEqualTo(4).allMatch(share -> share > 0 && share < 1);
    }

    @Test
    void without_a_sheet_that_is_named_nothing_is_read() {
        assertThatThrownBy(
                        () -> pipeline(new Painted(400, 300, FLOOR, 3), ReferenceSheet.MEASURING, ReadingProgress.NONE)
                                .read())
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContaining("fewer than three of its square marks");
    }

    @Test
    void the_measuring_sheet_is_read_whatever_is_named() {
        // five pixels to two millimetres; the dark rim begins at (30, 25)
        Painted table = new Painted(840, 680, FLOOR, 3).box(5, 2, 525, 676, PAPER);
        table.box(30, 25, 475, 635, 0x181818).box(38, 33, 459, 619, PAPER);
        double cell = 2.5 * MeasuringSheet.MARK_MM / MeasuringSheet.CELLS;
        for (MeasuringSheet.Mark mark : MeasuringSheet.marks()) {
            for (int i = 0; i < 36; i++) {
                int column = i % 6;
                int row = Math.floorDiv(i, 6);
                double left = 30 + 2.5 * mark.corner().x() + cell * column;
                double top = 25 + 2.5 * mark.corner().y() + cell * row;
                table.polygon(box(left, top, cell, cell), mark.isBlack(column, row) ? 0x181818 : PAPER);
            }
        }
        table.soft(box(570.3, 200.6, 200, 150), RED);
        Reading.Read byPrint = (Reading.Read)
                pipeline(table, ReferenceSheet.A4, ReadingProgress.NONE).read();

        assertThat(byPrint.pieces()).hasSize(1);
        measures(byPrint.pieces().get(0), 80, 60);
    }

    private static FittedPolygon traced(List<Point> corners) {
        LensModel lens = LensModel.unknown(TABLE.picture()).with(0, 0.003);
        return FittedPolygon.of(corners, new SubpixelEdges(TABLE.picture(), 4, true, EdgeParameters.standard().steps()).of(corners), lens, 1.2, 4);
    }

    @Test
    void lint_and_threads_are_no_pieces_and_the_sheet_is_none_either() {
        LabThumbnail coarse = TABLE.coarse();
        PieceMeasurement measurement = new PieceMeasurement(coarse, GroundModel.of(coarse, GroundParameters.standard()), scale, ReferenceSheet.A4, ReadingParameters.standard());
        List<List<Point>> shapes = List.of(
                box(405.2, 415.4, 225, 75),
                box(750, 450, 12, 12),
                box(645.7, 75.3, 90, 90),
                box(30.3, 30.6, 315, 445.5),
                box(420, 525, 52, 6),
                box(390.4, 45.2, 180, 120));
        List<Blob> blobs = shapes.stream().map(shape -> new Blob(shape, false)).toList();
        List<FittedPolygon> traced =
                shapes.stream().map(ReadingPipelineTest::traced).toList();

        List<ReadPiece> pieces = measurement.of(blobs, traced, 3);

        assertThat(pieces).extracting(ReadPiece::number).containsExactly(1, 2, 3);
        measures(pieces.get(0), 120, 80);
        measures(pieces.get(1), 60, 60);
        measures(pieces.get(2), 150, 50);
        // where the sheet is none of the shapes, the paper is a piece too
        assertThat(measurement.beside(shapes.get(3), 1, blobs, traced)).hasSize(4);
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
                    scale, MeasuringParameters.standard());
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
        assertThat(shape.doubts()).containsExactly(Doubt.Kind.FAINT);
        shape.contrast = 12.1;
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
        assertThat(shape.sentences().get(0).sentence()).contains("about 2 mm");
    }

    @Test
    void far_from_the_sheet_sizes_are_less_sure_and_so_are_vague_sides() {
        Shape shape = new Shape();
        // the sheet's diagonal is 364 mm, three of them are 1091, one and a half pixels to each
        shape.corners = box(1_500, 300, 200, 160);
        assertThat(shape.doubts()).doesNotContain(Doubt.Kind.FAR);
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
        return DoubtRules.ofDrawn(outline(corners, ownMm), scale, rough, others, MeasuringParameters.standard()).stream()
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
