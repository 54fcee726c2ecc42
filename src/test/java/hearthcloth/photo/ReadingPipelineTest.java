package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Unit;
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
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.MeasuringSheet;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.ShownSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.segment.Blob;
import java.util.ArrayList;
import java.util.List;
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
    private static final Painted TABLE = new Painted(WIDTH, HEIGHT, FLOOR, 3)
            .soft(box(30.3, 30.6, 315, 445.5), PAPER)
            .soft(box(390.4, 45.2, 180, 120), RED)
            .soft(box(645.7, 75.3, 90, 90), NAVY)
            .soft(box(405.2, 415.4, 225, 75), SAGE)
            .box(750, 450, 12, 12, RED)
            .box(420, 525, 52, 6, NAVY);

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

    /** The table with its pieces, as it is read. */
    static Reading.Read table() {
        HEARD.clear();
        return (Reading.Read) pipeline(TABLE, ReferenceSheet.A4, (share, what) -> HEARD.add(share))
                .read();
    }

    @BeforeAll
    static void lay_the_table_and_read_it() {
        read = table();
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
        return FittedPolygon.of(
                corners,
                new SubpixelEdges(
                                TABLE.picture(),
                                4,
                                true,
                                EdgeParameters.standard().steps())
                        .of(corners),
                lens,
                1.2,
                4);
    }

    @Test
    void lint_and_threads_are_no_pieces_and_the_sheet_is_none_either() {
        LabThumbnail coarse = TABLE.coarse();
        PieceMeasurement measurement = new PieceMeasurement(
                coarse,
                GroundModel.of(coarse, GroundParameters.standard()),
                scale,
                ReferenceSheet.A4,
                ReadingParameters.standard());
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

        List<ReadPiece> pieces = measurement.of(blobs, traced, List.of(3));

        assertThat(pieces).extracting(ReadPiece::number).containsExactly(1, 2, 3);
        measures(pieces.get(0), 120, 80);
        measures(pieces.get(1), 60, 60);
        measures(pieces.get(2), 150, 50);
        // where the sheet is none of the shapes, the paper is a piece too
        assertThat(measurement.beside(shapes.get(3), 1, blobs, traced)).hasSize(4);
    }
}
