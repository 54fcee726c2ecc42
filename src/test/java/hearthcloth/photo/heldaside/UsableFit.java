package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import java.util.List;

/** Whether a rectangle of a given size can be laid into a scrap near where a reader said, and by how much it cannot. */
final class UsableFit {

    private final List<Point> rim;
    private final Rim edge;
    private final double width;
    private final double height;

    UsableFit(List<Point> rim, double width, double height) {
        this.rim = List.copyOf(rim);
        this.edge = Rim.straight(rim);
        this.width = width;
        this.height = height;
    }

    /** How far, mm, the rectangle must stick out at least, started from a place and direction and moved about for the best. */
    double overhang(Point middle, double angle) {
        double[] pose = {middle.x(), middle.y(), angle};
        double best = out(pose);
        double[] step = {4, 4, 4.0 / Math.max(width, height)};
        for (int round = 0; round < 60 && best > 0; round++) {
            boolean better = false;
            for (int k = 0; k < 12; k++) {
                double[] next = moved(pose, step, k);
                double out = out(next);
                if (out < best) {
                    best = out;
                    pose = next;
                    better = true;
                }
            }
            if (!better) {
                for (int i = 0; i < 3; i++) {
                    step[i] /= 2;
                }
            }
        }
        return Math.max(0, best);
    }

    /** Six single moves, then six of two at once in the rectangle's own directions. */
    private static double[] moved(double[] pose, double[] step, int k) {
        double[] next = pose.clone();
        double sign = (k & 1) == 0 ? 1 : -1;
        int which = k / 2;
        if (which < 3) {
            next[which] += sign * step[which];
        } else if (which == 3) {
            next[0] += sign * step[0] * Math.cos(pose[2]);
            next[1] += sign * step[1] * Math.sin(pose[2]);
        } else if (which == 4) {
            next[0] -= sign * step[0] * Math.sin(pose[2]);
            next[1] += sign * step[1] * Math.cos(pose[2]);
        } else {
            next[2] += sign * step[2];
            next[0] -= sign * step[0] * Math.sin(pose[2]) / 2;
            next[1] += sign * step[1] * Math.cos(pose[2]) / 2;
        }
        return next;
    }

    /** The deepest that the rectangle's rim is outside, or a corner of the scrap is inside the rectangle. */
    private double out(double[] pose) {
        double c = Math.cos(pose[2]);
        double s = Math.sin(pose[2]);
        double worst = 0;
        for (Point p : rim) {
            double u = c * (p.x() - pose[0]) + s * (p.y() - pose[1]);
            double v = -s * (p.x() - pose[0]) + c * (p.y() - pose[1]);
            worst = Math.max(worst, Math.min(width / 2 - Math.abs(u), height / 2 - Math.abs(v)));
        }
        for (int k = 0; k < 40; k++) {
            double t = (k % 10) / 10.0 - 0.5;
            boolean lower = k / 10 % 2 == 1;
            double u = k < 20 ? t * width * (lower ? -1 : 1) : (lower ? width : -width) / 2;
            double v = k < 20 ? (lower ? height : -height) / 2 : t * height * (lower ? 1 : -1);
            worst = Math.max(worst, -edge.inside(pose[0] + c * u - s * v, pose[1] + s * u + c * v));
        }
        return worst;
    }
}
