package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.ArrayList;
import java.util.List;

/**
 * Gives a shape back the corners that shade and a soft lens have blunted: where a short side joins two others and cloth shows
 * between it and the place at which these would meet, they do meet there. A corner that was cut off shows ground.
 */
final class BluntCorners {

    /** The corner's triangle is looked at in rows of so many places. */
    private static final int ROWS = 6;

    private final PieceColourClassifier telling;
    private final double shortest;
    private final EdgeParameters.Blunt parameters;

    BluntCorners(PieceColourClassifier telling, int reach, EdgeParameters.Blunt parameters) {
        this.telling = telling;
        this.parameters = parameters;
        this.shortest = parameters.shortest() * reach;
    }

    List<Point> sharpened(List<Point> corners) {
        List<Point> out = new ArrayList<>(corners);
        for (int i = 0; i < out.size() && out.size() > 3; i++) {
            int next = (i + 1) % out.size();
            Point from = out.get(i);
            Point to = out.get(next);
            Point meet = meeting(out, i);
            double length = from.to(to);
            boolean near = length < shortest && Math.max(meet.to(from), meet.to(to)) < parameters.leash() * length;
            if (near && isBeyond(out, i, meet) && cloth(from, meet, to) > parameters.cloth()) {
                out.set(i, meet);
                out.remove(next);
                i = -1;
            }
        }
        return out;
    }

    private static Point meeting(List<Point> corners, int i) {
        int n = corners.size();
        Line before = Line.through(corners.get(Math.floorMod(i - 1, n)), corners.get(i));
        Line after = Line.through(corners.get((i + 1) % n), corners.get((i + 2) % n));
        return before.crossing(after);
    }

    /** Whether both neighbours reach their meeting place by being lengthened. */
    private static boolean isBeyond(List<Point> corners, int i, Point meet) {
        int n = corners.size();
        return isPast(corners.get(Math.floorMod(i - 1, n)), corners.get(i), meet)
                && isPast(corners.get((i + 2) % n), corners.get((i + 1) % n), meet);
    }

    private static boolean isPast(Point start, Point end, Point place) {
        Point along = end.minus(start);
        Point further = place.minus(end);
        return along.x() * further.x() + along.y() * further.y() > 0;
    }

    private double cloth(Point a, Point b, Point c) {
        double[] colour = new double[3];
        double sum = 0;
        int count = 0;
        for (int row = 0; row < ROWS; row++) {
            for (int k = 0; k <= row; k++) {
                double toA = (row - k + 1.0 / 3) / ROWS;
                double toC = (k + 1.0 / 3) / ROWS;
                Point at = new Point(
                        toA * a.x() + toC * c.x() + (1 - toA - toC) * b.x(),
                        toA * a.y() + toC * c.y() + (1 - toA - toC) * b.y());
                if (telling.holds(at)) {
                    sum += telling.at(at.x(), at.y(), colour);
                    count++;
                }
            }
        }
        return sum / Math.max(1, count);
    }
}
