package hearthcloth.photo.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is printed on the {@link MeasuringSheet}: nothing overlaps, and no mark can be taken for another. */
class MarksOfTheSheetTest {

    /** The sixteen inner cells read from a mark's picture, row by row, a one for white. */
    private static int read(MeasuringSheet.Mark mark) {
        int code = 0;
        for (int row = 1; row <= 4; row++) {
            for (int column = 1; column <= 4; column++) {
                code = code << 1 | (mark.isBlack(column, row) ? 0 : 1);
            }
        }
        return code;
    }

    private static int turned(int code) {
        int out = 0;
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 4; column++) {
                int from = (3 - column) * 4 + row;
                out |= (code >> (15 - from) & 1) << (15 - (row * 4 + column));
            }
        }
        return out;
    }

    @Test
    void the_cells_of_a_mark_are_its_code_within_a_black_border() {
        for (MeasuringSheet.Mark mark : MeasuringSheet.marks()) {
            assertThat(read(mark)).isEqualTo(mark.code());
            for (int i = 0; i < 6; i++) {
                assertThat(mark.isBlack(i, 0) && mark.isBlack(i, 5) && mark.isBlack(0, i) && mark.isBlack(5, i))
                        .isTrue();
            }
        }
    }

    /** The family's distance of five: docs/sources.md#coded-marks. */
    @Test
    void any_two_marks_differ_in_five_cells_at_least_however_they_are_turned_and_each_from_itself_turned() {
        List<MeasuringSheet.Mark> marks = MeasuringSheet.marks();
        assertThat(marks).hasSize(16);
        for (int i = 0; i < marks.size(); i++) {
            assertThat(marks.get(i).number()).isEqualTo(i);
            for (int j = i; j < marks.size(); j++) {
                int other = marks.get(j).code();
                for (int turns = 0; turns < 4; turns++) {
                    if (i != j || turns > 0) {
                        assertThat(Integer.bitCount(marks.get(i).code() ^ other))
                                .as("marks %s and %s, turned %s times", i, j, turns)
                                .isGreaterThanOrEqualTo(5);
                    }
                    other = turned(other);
                }
            }
        }
    }

    private static List<Point> box(List<Point> corners) {
        Point a = corners.get(0);
        Point b = corners.get(1);
        return List.of(a, new Point(b.x(), a.y()), b, new Point(a.x(), b.y()));
    }

    @Test
    void nothing_that_is_printed_overlaps_and_all_of_it_lies_within_the_rim() {
        List<List<Point>> all = new ArrayList<>();
        MeasuringSheet.marks().forEach(mark -> all.add(mark.corners()));
        all.add(box(MeasuringSheet.GREY));
        all.add(box(MeasuringSheet.WHITE));
        double length = 200;
        Point from = MeasuringSheet.LINE_FROM;
        all.add(List.of(from.plus(-1, 0), from.plus(1, 0), from.plus(1, length), from.plus(-1, length)));
        for (int i = 0; i < all.size(); i++) {
            PieceOutline one = new PieceOutline(all.get(i), List.of(), List.of());
            for (Point corner : one.floor()) {
                assertThat(corner.x())
                        .isBetween(MeasuringSheet.RIM_MM, MeasuringSheet.WIDTH_MM - MeasuringSheet.RIM_MM);
                assertThat(corner.y())
                        .isBetween(MeasuringSheet.RIM_MM, MeasuringSheet.HEIGHT_MM - MeasuringSheet.RIM_MM);
            }
            for (int j = 0; j < i; j++) {
                PieceOutline other = new PieceOutline(all.get(j), List.of(), List.of());
                assertThat(OutlineOverlap.isOver(one, other)).as("%s, %s", i, j).isFalse();
            }
        }
    }

    @Test
    void a_mark_is_a_square_with_its_corners_as_the_hands_of_a_clock_go() {
        for (MeasuringSheet.Mark mark : MeasuringSheet.marks()) {
            assertThat(Polygons.signedArea(mark.corners())).isCloseTo(28 * 28, within(1e-9));
            assertThat(mark.corners().get(0)).isEqualTo(mark.corner());
            for (Point corner : mark.corners()) {
                assertThat(corner.to(mark.middle())).isCloseTo(14 * Math.sqrt(2), within(1e-9));
            }
        }
        assertThat(MeasuringSheet.marks().get(0).corner()).isEqualTo(new Point(9, 9));
        // as far from the right and the lower edge: 190 x 254
        assertThat(MeasuringSheet.marks().get(15).corners().get(2))
                .isEqualTo(new Point(MeasuringSheet.WIDTH_MM - 9, MeasuringSheet.HEIGHT_MM - 9));
        assertThat(MeasuringSheet.WIDTH_MM).isEqualTo(190);
        assertThat(MeasuringSheet.HEIGHT_MM).isEqualTo(254);
    }

    @Test
    void a_ruler_tells_by_how_much_a_printer_enlarged() {
        assertThat(MeasuringSheet.enlarged(Length.mm(200))).isEqualTo(1);
        assertThat(MeasuringSheet.enlarged(Length.mm(190))).isCloseTo(0.95, within(1e-12));
        assertThat(MeasuringSheet.enlarged(Length.mm(160))).isCloseTo(0.8, within(1e-12));
        assertThat(MeasuringSheet.enlarged(Length.mm(250))).isCloseTo(1.25, within(1e-12));
        for (long wrong : new long[] {159, 251, 20}) {
            assertThatThrownBy(() -> MeasuringSheet.enlarged(Length.mm(wrong)))
                    .isInstanceOf(MeasureException.class)
                    .hasMessageContaining("20 cm");
        }
    }
}
