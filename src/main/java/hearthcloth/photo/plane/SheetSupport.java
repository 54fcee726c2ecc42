package hearthcloth.photo.plane;

import hearthcloth.geometry.Point;
import java.util.List;

/**
 * The floor that a bent sheet stands on: the plane below all of it that touches it in three places with its middle between
 * them, since it would tip over otherwise.
 */
public record SheetSupport(double atOrigin, double perX, double perY) {

    /** A place may lie this far below the plane, in millimetres, since heights are not known exactly. */
    private static final double SLACK_MM = 0.05;

    /**
     * Finds the plane: of all that run below every place, the one that is highest under the middle.
     *
     * @param places in millimetres on the sheet
     * @param heights one for each, in millimetres
     */
    public static SheetSupport of(List<Point> places, double[] heights, Point middle) {
        SheetSupport best = new SheetSupport(lowest(heights), 0, 0);
        int n = places.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                for (int k = j + 1; k < n; k++) {
                    SheetSupport plane = through(places, heights, i, j, k);
                    if (plane.at(middle) > best.at(middle) && plane.isBelow(places, heights)) {
                        best = plane;
                    }
                }
            }
        }
        return best;
    }

    private static double lowest(double[] heights) {
        double least = heights[0];
        for (double height : heights) {
            least = Math.min(least, height);
        }
        return least;
    }

    private static SheetSupport through(List<Point> places, double[] heights, int i, int j, int k) {
        Point a = places.get(i);
        double x1 = places.get(j).x() - a.x();
        double y1 = places.get(j).y() - a.y();
        double x2 = places.get(k).x() - a.x();
        double y2 = places.get(k).y() - a.y();
        double area = x1 * y2 - x2 * y1;
        if (Math.abs(area) < 1) {
            return new SheetSupport(Double.NEGATIVE_INFINITY, 0, 0);
        }
        double one = heights[j] - heights[i];
        double two = heights[k] - heights[i];
        double perX = (one * y2 - two * y1) / area;
        double perY = (x1 * two - x2 * one) / area;
        return new SheetSupport(heights[i] - perX * a.x() - perY * a.y(), perX, perY);
    }

    private boolean isBelow(List<Point> places, double[] heights) {
        for (int i = 0; i < heights.length; i++) {
            if (heights[i] < at(places.get(i)) - SLACK_MM) {
                return false;
            }
        }
        return true;
    }

    /** The plane's height at a place. */
    public double at(Point place) {
        return atOrigin + perX * place.x() + perY * place.y();
    }
}
