package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.plane.Homography;
import hearthcloth.photo.plane.MeasuringSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ejml.simple.SimpleMatrix;

/**
 * How a measuring sheet is seen: a first plane through its marks, how far each mark is off it, and what would move it.
 *
 * @param first the plane that fits best when the sheet is taken to be flat
 * @param eye where the camera is above that plane
 * @param places on the sheet whose heights are asked for, in millimetres: first those seen, then some along the paper's rim
 * @param off by how much each place that is seen is off the plane, x and y in turn, in millimetres
 * @param moves how these change with each number of the plane and of the lens
 * @param noise variance of each
 */
record SheetSight(
        FloorPlane first,
        Homography.Eye eye,
        List<Point> places,
        SimpleMatrix off,
        SimpleMatrix moves,
        SimpleMatrix noise,
        double lensDeviation) {

    static final Point MIDDLE = new Point(MeasuringSheet.WIDTH_MM / 2, MeasuringSheet.HEIGHT_MM / 2);

    /** With more marks than this each counts by its middle, which is surer than a corner. */
    private static final int MANY = 6;
    /** Where marks may lie on the print, since printers are not exact, in millimetres. */
    private static final double PRINT_MM = 0.08;
    /** Lengths by which the plane's numbers are divided, so that all are millimetres at the rim of the sheet. */
    private static final double UNIT_MM = 130;
    /** The step by which the lens is varied to see what that does. */
    private static final double LENS_STEP = 0.001;
    /** How far the paper reaches beyond the dark rim, about. */
    private static final double RIM_X = 11;

    private static final double RIM_Y = 17;

    static SheetSight of(LensModel lens, List<MarkedSheet.Placed> marks, double focal) {
        Homography toPicture = Homography.of(
                marks.stream().map(MarkedSheet.Placed::print).toList(),
                marks.stream().map(mark -> lens.straight(mark.raw())).toList());
        List<Point> rim = FloorPlane.rectangle(MeasuringSheet.WIDTH_MM, MeasuringSheet.HEIGHT_MM);
        List<Point> straight = rim.stream().map(toPicture::map).toList();
        FloorPlane first = FloorPlane.of(
                lens, straight.stream().map(lens::bent).toList(), MeasuringSheet.WIDTH_MM, MeasuringSheet.HEIGHT_MM);
        Homography.Eye eye = Homography.of(
                        rim,
                        straight.stream()
                                .map(c -> c.plus(
                                        -lens.middle().x(), -lens.middle().y()))
                                .toList())
                .eye(focal);
        int together = marks.size() > 4 * MANY ? 4 : 1;
        int n = marks.size() / together;
        SimpleMatrix off = new SimpleMatrix(2 * n, 1);
        SimpleMatrix moves = new SimpleMatrix(2 * n, 9);
        SimpleMatrix noise = new SimpleMatrix(2 * n, 1);
        List<Point> places = new ArrayList<>();
        LensModel other = lens.with(lens.kappa() + LENS_STEP, 0);
        for (int i = 0; i < n; i++) {
            Seen seen = Seen.of(marks.subList(i * together, (i + 1) * together), first, lens, other);
            places.add(seen.place);
            off.setColumn(0, 2 * i, seen.off.x(), seen.off.y());
            double[][] by = moves(seen.place);
            for (int k = 0; k < 8; k++) {
                moves.set(2 * i, k, by[0][k]);
                moves.set(2 * i + 1, k, by[1][k]);
            }
            moves.set(2 * i, 8, seen.byLens.x());
            moves.set(2 * i + 1, 8, seen.byLens.y());
            noise.setColumn(0, 2 * i, seen.variance, seen.variance);
        }
        places.addAll(alongRim());
        return new SheetSight(first, eye, List.copyOf(places), off, moves, noise, lens.deviation());
    }

    private static List<Point> alongRim() {
        return IntStream.range(0, 9)
                .filter(i -> i != 4)
                .mapToObj(i -> new Point(
                        MIDDLE.x() * (i % 3) + RIM_X * (i % 3 - 1),
                        MIDDLE.y() * Math.floorDiv(i, 3) + RIM_Y * (i / 3 - 1)))
                .toList();
    }

    /** One place: a mark's middle, or a corner of it. */
    private record Seen(Point place, Point off, Point byLens, double variance) {

        static Seen of(List<MarkedSheet.Placed> corners, FloorPlane first, LensModel lens, LensModel other) {
            double[] sum = new double[7];
            for (MarkedSheet.Placed corner : corners) {
                Point lies = corner.print();
                Point seen = first.ofStraight(lens.straight(corner.raw()));
                Point bent = first.ofStraight(other.straight(corner.raw()));
                double mm = corner.deviation() / first.pixelsPerMm(corner.raw());
                double[] all = {
                    lies.x(),
                    lies.y(),
                    seen.x() - lies.x(),
                    seen.y() - lies.y(),
                    (seen.x() - bent.x()) / LENS_STEP,
                    (seen.y() - bent.y()) / LENS_STEP,
                    mm * mm / corners.size()
                };
                for (int k = 0; k < sum.length; k++) {
                    sum[k] += all[k] / corners.size();
                }
            }
            return new Seen(
                    new Point(sum[0], sum[1]),
                    new Point(sum[2], sum[3]),
                    new Point(sum[4], sum[5]),
                    sum[6] + PRINT_MM * PRINT_MM);
        }
    }

    /** How a place moves when each of the eight numbers of the plane grows by one. */
    static double[][] moves(Point at) {
        double x = (at.x() - MIDDLE.x()) / UNIT_MM;
        double y = (at.y() - MIDDLE.y()) / UNIT_MM;
        return new double[][] {{1, 0, x, 0, y, 0, x * x, x * y}, {0, 1, 0, x, 0, y, x * y, y * y}};
    }

    /** How many places are seen. */
    int seen() {
        return noise.getNumRows() / 2;
    }

    /** How far each place that is seen moves away from the camera's foot for each millimetre that it is lifted. */
    SimpleMatrix parallax() {
        SimpleMatrix out = new SimpleMatrix(noise.getNumRows(), places.size());
        for (int i = 0; i < seen(); i++) {
            out.set(2 * i, i, (places.get(i).x() - eye.foot().x()) / eye.height());
            out.set(2 * i + 1, i, (places.get(i).y() - eye.foot().y()) / eye.height());
        }
        return out;
    }
}
