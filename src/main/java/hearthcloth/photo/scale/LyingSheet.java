package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import java.util.List;
import org.ejml.simple.SimpleMatrix;

/**
 * One sheet by itself.
 *
 * @param corners as they show, or would if it lay flat, in raw pixels
 * @param seen covariance of these corners, x and y in turn, by what the picture leaves open
 * @param all the same and what is open because it may not lie flat
 */
record LyingSheet(List<Point> corners, SimpleMatrix seen, SimpleMatrix all, FloorPlane.Turned size) {

    /** No corner is known better than this, in pixels. */
    private static final double LEAST_PIXELS = 0.02;

    /**
     * The sheet by the planes that it would make alone.
     *
     * @param planes the likeliest first
     * @param open how many of them, from the first on, are open by the picture
     * @param sizes how many after them are of other sizes of the sheet
     */
    static LyingSheet of(List<FloorPlane> planes, int open, int sizes, FloorPlane.Turned size) {
        List<Point> corners = corners(planes.get(0), size);
        SimpleMatrix seen = SimpleMatrix.identity(8).scale(LEAST_PIXELS * LEAST_PIXELS);
        for (FloorPlane plane : planes.subList(1, open)) {
            seen = seen.plus(moved(corners, corners(plane, size)));
        }
        SimpleMatrix all = seen;
        for (FloorPlane plane : planes.subList(open + sizes, planes.size())) {
            all = all.plus(moved(corners, corners(plane, size)));
        }
        return new LyingSheet(corners, seen, all, size);
    }

    private static List<Point> corners(FloorPlane plane, FloorPlane.Turned size) {
        return FloorPlane.rectangle(size.width(), size.height()).stream()
                .map(plane::raw)
                .toList();
    }

    private static SimpleMatrix moved(List<Point> from, List<Point> to) {
        SimpleMatrix by = column(to).minus(column(from));
        return by.mult(by.transpose());
    }

    /** All places, x and y in turn. */
    static SimpleMatrix column(List<Point> corners) {
        SimpleMatrix out = new SimpleMatrix(2 * corners.size(), 1);
        for (int i = 0; i < corners.size(); i++) {
            out.set(2 * i, corners.get(i).x());
            out.set(2 * i + 1, corners.get(i).y());
        }
        return out;
    }
}
