package hearthcloth.photo.plane;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.RefusedException;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The sheet of our own that is printed and laid among the pieces: a dark rim, coded marks along it, and fields of white and
 * grey. What is printed has one size on A4 and on Letter paper, so that the paper's own edges do not matter.
 *
 * <p>The marks are squares of six by six cells with a black border, of the published family of sixteen bits and a Hamming
 * distance of five (docs/sources.md#coded-marks). Places are in millimetres from the upper left corner of the dark rim.
 */
public final class MeasuringSheet {

    /** The outer width and height of the dark rim. */
    public static final double WIDTH_MM = 190;

    public static final double HEIGHT_MM = 254;
    /** The width of the dark rim. */
    public static final double RIM_MM = 3;
    /** The side of a mark, with its black border. */
    public static final double MARK_MM = 28;
    /** Cells along a side of a mark. */
    public static final int CELLS = 6;
    /** The line that a ruler is laid to. */
    public static final Length LINE = Length.mm(200);

    /** Where the line to check stands, and where it begins. */
    public static final Point LINE_FROM = new Point(47, 27);

    /** The upper left corner and the lower right one of the field of grey. */
    public static final List<Point> GREY = List.of(new Point(95, 63), new Point(131, 87));
    /** The same of a field that stays white. */
    public static final List<Point> WHITE = List.of(new Point(57, 167), new Point(133, 191));

    private static final double FIRST_MM = 9;
    private static final double ACROSS_MM = 48;
    private static final double DOWN_MM = 52;

    /** The sixteen inner cells of each mark, row by row from the highest bit on; a one is white. */
    private static final int[] CODES = {
        0x231b, 0x2ea5, 0x346a, 0x45b9, 0x79a6, 0x7f6b, 0xb358, 0xe745, 0xfe59, 0x156d, 0x380b, 0xf0ab, 0x0d84, 0x4736,
        0x8c72, 0xaf10
    };

    private static final List<Mark> MARKS = IntStream.range(0, 20)
            .filter(at -> !(at / 4 % 2 == 1 && (at % 4 == 1 || at % 4 == 2)))
            .mapToObj(at -> new Point(FIRST_MM + at % 4 * ACROSS_MM, FIRST_MM + Math.floorDiv(at, 4) * DOWN_MM))
            .collect(java.util.stream.Collectors.collectingAndThen(
                    java.util.stream.Collectors.toList(),
                    corners -> IntStream.range(0, corners.size())
                            .mapToObj(i -> new Mark(i, corners.get(i)))
                            .toList()));

    private MeasuringSheet() {}

    /**
     * One coded mark.
     *
     * @param corner its upper left corner
     */
    public record Mark(int number, Point corner) {

        public int code() {
            return CODES[number];
        }

        /** Whether a cell is black, counted from the upper left; the cells at the border all are. */
        public boolean isBlack(int column, int row) {
            boolean border = column == 0 || row == 0 || column == CELLS - 1 || row == CELLS - 1;
            return border || (code() >> (15 - (row - 1) * 4 - (column - 1)) & 1) == 0;
        }

        /** The four corners, from the upper left on as the hands of a clock go. */
        public List<Point> corners() {
            return List.of(corner, corner.plus(MARK_MM, 0), corner.plus(MARK_MM, MARK_MM), corner.plus(0, MARK_MM));
        }

        public Point middle() {
            return corner.plus(MARK_MM / 2, MARK_MM / 2);
        }
    }

    /** All marks; the place of each in the list is its number. */
    public static List<Mark> marks() {
        return MARKS;
    }

    /**
     * By how much a printer has enlarged everything.
     *
     * @param measured what a ruler says of {@link #LINE}
     * @throws MeasureException where the print is so far off that something else was measured
     */
    public static double enlarged(Length measured) {
        double share = measured.in(Unit.MILLIMETRE) / LINE.in(Unit.MILLIMETRE);
        if (share < 0.8 || share > 1.25) {
            throw new RefusedException(PhotographingSentences.referenceLine());
        }
        return share;
    }
}
