package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import java.util.ArrayList;
import java.util.List;
import org.ejml.simple.SimpleEVD;
import org.ejml.simple.SimpleMatrix;

/**
 * Several sheets of one kind on one floor. Each tells of the floor by where its corners show; how the others lie to the first is
 * unknown, and how much larger or smaller they are. The floor, as a camera can show it, that explains all corners best is found by
 * weighted least squares, step by step (docs/sources.md#least-squares).
 *
 * @param shown how the first sheet's rectangle shows on that floor and through which lens: as likeliest, then with each thing that
 *     the picture leaves open one deviation off
 * @param lying the same with each thing off that is open because a sheet may not lie flat
 * @param sizes of each other sheet, how it compares with the first
 */
record SheetsTogether(List<SheetBend.Shown> shown, List<SheetBend.Shown> lying, List<Compared> sizes) {

    /** The corners of the first sheet, and the lens: what a floor is told by. */
    private static final int TOLD = 9;
    /** What is looked for of each other sheet: its place, its turn, and the logarithm of its size over what it should be. */
    private static final int OTHER = 4;
    /** Steps until the floor does not move any more by what a picture shows. */
    private static final int ROUNDS = 5;
    /** The deviation of a telephone's focal length from the usual one, as a share; and from what its file says. */
    private static final double ANY_FOCAL = 0.15;

    private static final double SAID_FOCAL = 0.03;
    /** No camera is quite as the model of it, by this share: the middle of its picture is a little elsewhere. */
    private static final double CAMERA = 0.002;
    /** Sheets of one kind, of one pack or one printer, differ in size by this share. */
    static final double ONE_KIND = 0.002;
    /** Any rectangle may differ by this. */
    private static final double ANY_SIZE = 0.3;

    /**
     * How much larger than it should be a sheet is, if the first is right, as the logarithm of a length.
     *
     * @param deviation of that
     */
    record Compared(double larger, double deviation) {

        /** Whether it may be of the first one's size. */
        boolean isOneSize(double most) {
            return Math.abs(larger) < Math.min(most, Math.max(2 * ONE_KIND, 2.5 * deviation));
        }
    }

    /**
     * The camera.
     *
     * @param focal its focal length, in pixels, about
     * @param said whether the picture's file tells it
     */
    record Eye(LensModel lens, double focal, boolean said) {}

    /** The floor under two sheets or more of one kind. */
    static SheetsTogether of(Eye eye, List<LyingSheet> sheets) {
        return new Search(eye, sheets, ONE_KIND).floor();
    }

    /** How the others compare with the first when nothing is known of their size. */
    static List<Compared> compared(Eye eye, List<LyingSheet> sheets) {
        return new Search(eye, sheets, ANY_SIZE).floor().sizes();
    }

    /**
     * The search: what is looked for are the first sheet's corners, the lens, each other sheet, and the logarithm of the focal
     * length.
     */
    private static final class Search {

        private final Eye eye;
        private final List<LyingSheet> sheets;
        private final SimpleMatrix seen;
        private final SimpleMatrix weights;
        private final SimpleMatrix firm;
        private final int focalAt;
        private SimpleMatrix told;

        Search(Eye eye, List<LyingSheet> sheets, double sizes) {
            this.eye = eye;
            this.sheets = sheets;
            this.focalAt = TOLD + OTHER * (sheets.size() - 1);
            this.seen = LyingSheet.column(sheets.stream()
                            .flatMap(sheet -> sheet.corners().stream())
                            .toList())
                    .concatRows(new SimpleMatrix(2, 1));
            this.weights =
                    blocks(sheets.stream().map(sheet -> sheet.all().invert()).toList(), 1 / (CAMERA * CAMERA));
            this.firm = firm(sizes);
            this.told = first();
        }

        /** Blocks of the sheets, then the camera's two parts. */
        private static SimpleMatrix blocks(List<SimpleMatrix> parts, double camera) {
            int n = 8 * parts.size();
            SimpleMatrix out = new SimpleMatrix(n + 2, n + 2);
            for (int i = 0; i < parts.size(); i++) {
                out.insertIntoThis(8 * i, 8 * i, parts.get(i));
            }
            out.set(n, n, camera);
            out.set(n + 1, n + 1, camera);
            return out;
        }

        /** How firmly each number is known before anything is seen. */
        private SimpleMatrix firm(double sizes) {
            SimpleMatrix out = new SimpleMatrix(focalAt + 1, focalAt + 1);
            out.set(TOLD - 1, TOLD - 1, Math.pow(Math.max(1e-4, eye.lens().deviation()), -2));
            for (int at = TOLD + OTHER - 1; at < focalAt; at += OTHER) {
                out.set(at, at, 1 / (sizes * sizes));
            }
            out.set(focalAt, focalAt, Math.pow(eye.said() ? SAID_FOCAL : ANY_FOCAL, -2));
            return out;
        }

        /** As the first sheet alone says; each other one lies there by its middle and its first side. */
        private SimpleMatrix first() {
            SimpleMatrix out = new SimpleMatrix(focalAt + 1, 1);
            out.insertIntoThis(0, 0, LyingSheet.column(sheets.get(0).corners()));
            out.set(TOLD - 1, eye.lens().kappa());
            out.set(focalAt, Math.log(eye.focal()));
            FloorPlane plane = plane(out);
            for (int s = 1; s < sheets.size(); s++) {
                List<Point> lies =
                        sheets.get(s).corners().stream().map(plane::floor).toList();
                Point middle = lies.get(0)
                        .towards(lies.get(2), 0.5)
                        .towards(lies.get(1).towards(lies.get(3), 0.5), 0.5);
                Point along = lies.get(1).plus(-lies.get(0).x(), -lies.get(0).y());
                int at = at(s);
                out.set(at, middle.x());
                out.set(at + 1, middle.y());
                out.set(at + 2, Math.atan2(along.y(), along.x()));
            }
            return out;
        }

        private static int at(int sheet) {
            return TOLD + OTHER * (sheet - 1);
        }

        private SheetBend.Shown shown(SimpleMatrix numbers) {
            List<Point> corners = new ArrayList<>();
            for (int c = 0; c < 4; c++) {
                corners.add(new Point(numbers.get(2 * c), numbers.get(2 * c + 1)));
            }
            return new SheetBend.Shown(eye.lens().with(numbers.get(TOLD - 1), 0), corners);
        }

        private FloorPlane plane(SimpleMatrix numbers) {
            SheetBend.Shown shown = shown(numbers);
            FloorPlane.Turned size = sheets.get(0).size();
            return FloorPlane.of(shown.lens(), shown.corners(), size.width(), size.height());
        }

        /** Where all corners would show, and how far the floor is from what a camera can show. */
        private SimpleMatrix predicted(SimpleMatrix numbers) {
            FloorPlane plane = plane(numbers);
            List<Point> out = new ArrayList<>();
            for (int s = 0; s < sheets.size(); s++) {
                FloorPlane.Turned size = sheets.get(s).size();
                for (Point corner : FloorPlane.rectangle(size.width(), size.height())) {
                    out.add(plane.raw(s == 0 ? corner : laid(corner, size, numbers, at(s))));
                }
            }
            double[] off = plane.offCamera(sheets.get(0).size(), Math.exp(numbers.get(focalAt)));
            return LyingSheet.column(out).concatRows(new SimpleMatrix(2, 1, true, off[0], off[1]));
        }

        private static Point laid(Point corner, FloorPlane.Turned size, SimpleMatrix numbers, int at) {
            double times = Math.exp(numbers.get(at + OTHER - 1));
            double cos = times * Math.cos(numbers.get(at + 2));
            double sin = times * Math.sin(numbers.get(at + 2));
            double x = corner.x() - size.width() / 2;
            double y = corner.y() - size.height() / 2;
            return new Point(numbers.get(at) + x * cos - y * sin, numbers.get(at + 1) + x * sin + y * cos);
        }

        /** How what is seen changes with each number. */
        private SimpleMatrix changes() {
            SimpleMatrix out = new SimpleMatrix(seen.getNumRows(), told.getNumRows());
            for (int k = 0; k < told.getNumRows(); k++) {
                boolean isPlace = k < TOLD - 1 || (k < focalAt && (k - TOLD) % OTHER < 2);
                double step = k >= TOLD - 1 && !isPlace ? 1e-4 : 0.02;
                SimpleMatrix more = told.copy();
                SimpleMatrix less = told.copy();
                more.set(k, told.get(k) + step);
                less.set(k, told.get(k) - step);
                out.insertIntoThis(0, k, predicted(more).minus(predicted(less)).scale(1 / (2 * step)));
            }
            return out;
        }

        SheetsTogether floor() {
            SimpleMatrix before = told.copy();
            SimpleMatrix spread = firm;
            SimpleMatrix gain = firm;
            for (int round = 0; round < ROUNDS; round++) {
                SimpleMatrix by = changes();
                SimpleMatrix weighted = by.transpose().mult(weights);
                spread = weighted.mult(by).plus(firm).invert();
                gain = spread.mult(weighted);
                told = told.plus(gain.mult(seen.minus(predicted(told))))
                        .plus(spread.mult(firm).mult(before.minus(told)));
            }
            SimpleMatrix bent = gain.mult(blocks(
                            sheets.stream()
                                    .map(sheet -> sheet.all().minus(sheet.seen()))
                                    .toList(),
                            0))
                    .mult(gain.transpose());
            double wider = Math.max(1, off(before) / (5.0 * (sheets.size() - 1) + 2));
            List<SheetBend.Shown> views = new ArrayList<>(List.of(shown(told)));
            views.addAll(moved(spread.minus(bent).scale(wider)));
            return new SheetsTogether(views, moved(bent.scale(wider)), sizes(spread));
        }

        /** The sum of squares of how many deviations everything is off. */
        private double off(SimpleMatrix before) {
            SimpleMatrix left = seen.minus(predicted(told));
            SimpleMatrix moved = told.minus(before);
            return left.transpose().mult(weights).mult(left).get(0)
                    + moved.transpose().mult(firm).mult(moved).get(0);
        }

        private List<Compared> sizes(SimpleMatrix spread) {
            List<Compared> out = new ArrayList<>();
            for (int at = TOLD + OTHER - 1; at < focalAt; at += OTHER) {
                out.add(new Compared(told.get(at), Math.sqrt(Math.max(0, spread.get(at, at)))));
            }
            return out;
        }

        private List<SheetBend.Shown> moved(SimpleMatrix covariance) {
            SimpleMatrix own = covariance.extractMatrix(0, TOLD, 0, TOLD);
            SimpleEVD<SimpleMatrix> parts = own.plus(own.transpose()).scale(0.5).eig();
            SimpleMatrix likeliest = told.extractMatrix(0, TOLD, 0, 1);
            List<SheetBend.Shown> out = new ArrayList<>();
            for (int k = 0; k < TOLD; k++) {
                double deviation = Math.sqrt(Math.max(0, parts.getEigenvalue(k).getReal()));
                out.add(shown(likeliest.plus(parts.getEigenVector(k).scale(deviation))));
            }
            return out;
        }
    }
}
