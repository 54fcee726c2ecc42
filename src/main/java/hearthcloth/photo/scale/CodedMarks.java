package hearthcloth.photo.scale;

import boofcv.abst.fiducial.SquareHamming_to_FiducialDetector;
import boofcv.factory.fiducial.ConfigFiducialHammingDetector;
import boofcv.factory.fiducial.ConfigHammingMarker;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.ConfigLength;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_F64;
import georegression.struct.shapes.Quadrilateral_F64;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.PrintedSheetParameters;
import hearthcloth.photo.plane.MeasuringSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Finds the coded marks of the measuring sheet, each by itself; BoofCV looks for black squares and reads their cells. */
final class CodedMarks {

    private static final int BLACK_TO_WHITE = 255;

    private CodedMarks() {}

    /**
     * A mark as first seen.
     *
     * @param corners in raw pixels, in the order of {@link MeasuringSheet.Mark#corners}
     */
    record Seen(MeasuringSheet.Mark mark, List<Point> corners) {}

    /** The marks that show in the reduced picture. */
    static List<Seen> in(LabThumbnail coarse, PrintedSheetParameters.Reading how) {
        GrayU8 grey = new GrayU8(coarse.width, coarse.height);
        for (int i = 0; i < grey.data.length; i++) {
            grey.data[i] = (byte) (int) Math.max(0, Math.min(BLACK_TO_WHITE, coarse.lab[0].data[i] * 2.55));
        }
        return in(grey, coarse.step, how);
    }

    /** The marks that show when {@code step} by {@code step} pixels are made into one. */
    static List<Seen> in(PixelImage picture, int step, PrintedSheetParameters.Reading how) {
        GrayU8 grey = new GrayU8(picture.width / step, picture.height / step);
        IntStream.range(0, grey.height).parallel().forEach(y -> {
            for (int x = 0; x < grey.width; x++) {
                int sum = 0;
                for (int i = 0; i < step * step; i++) {
                    int rgb = picture.rgb(x * step + i % step, y * step + i / step);
                    sum += 77 * (rgb >> 16 & 255) + 150 * (rgb >> 8 & 255) + 29 * (rgb & 255);
                }
                grey.data[y * grey.width + x] = (byte) (sum / (256 * step * step));
            }
        });
        return in(grey, step, how);
    }

    private static List<Seen> in(GrayU8 grey, int step, PrintedSheetParameters.Reading how) {
        SquareHamming_to_FiducialDetector<GrayU8> detector = detector(how);
        detector.detect(grey);
        List<Seen> seen = new ArrayList<>();
        for (int i = 0; i < detector.totalFound(); i++) {
            Quadrilateral_F64 at = detector.getAlgorithm().getFound().get(i).distortedPixels;
            seen.add(new Seen(
                    MeasuringSheet.marks().get((int) detector.getId(i)),
                    List.of(raw(at.a, step), raw(at.b, step), raw(at.c, step), raw(at.d, step))));
        }
        return seen;
    }

    private static Point raw(Point2D_F64 at, int step) {
        return new Point(at.x * step, at.y * step);
    }

    private static SquareHamming_to_FiducialDetector<GrayU8> detector(PrintedSheetParameters.Reading how) {
        ConfigHammingMarker marks = new ConfigHammingMarker();
        marks.gridWidth = MeasuringSheet.CELLS - 2;
        marks.borderWidthFraction = 1.0 / MeasuringSheet.CELLS;
        marks.minimumHamming = how.mostWrong();
        MeasuringSheet.marks().forEach(mark -> marks.addMarker(mark.code()));
        ConfigFiducialHammingDetector squares = new ConfigFiducialHammingDetector();
        squares.squareDetector.detector.minimumContour = ConfigLength.fixed(how.leastRim());
        return FactoryFiducial.squareHamming(marks, squares, GrayU8.class);
    }
}
