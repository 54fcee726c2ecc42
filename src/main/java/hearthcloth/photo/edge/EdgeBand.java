package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What shows on both sides of one side of a piece: how much each place looks like cloth, by position along the side and
 * by pixels outwards.
 */
final class EdgeBand {

    private static final int[][] MOVES = {{-1, -1}, {-1, 0}, {-1, 1}, {0, -1}, {0, 1}, {1, -1}, {1, 0}, {1, 1}};

    private final int reach;

    private final Point a;
    private final Point b;
    private final LensModel lens;
    private final EdgeParameters parameters;
    private final double nx;
    private final double ny;
    private final double length;
    private final List<double[]> levels = new ArrayList<>();
    private final List<float[]> colours = new ArrayList<>();
    /** The position of each place along the side, from 0 to 1. */
    private double[] shares = new double[0];

    private double[][] gains = new double[0][0];
    private double most;
    private double[] placed = {0, 0};

    /**
     * Reads the strip.
     *
     * @param outwards the sign that {@link Line#off} has outside the piece
     */
    EdgeBand(
            PieceColourClassifier telling,
            Point a,
            Point b,
            int outwards,
            LensModel lens,
            int reach,
            EdgeParameters parameters) {
        this.a = a;
        this.b = b;
        this.lens = lens;
        this.reach = reach;
        this.parameters = parameters;
        length = Math.max(1, a.to(b));
        nx = -(b.y() - a.y()) / length * outwards;
        ny = (b.x() - a.x()) / length * outwards;
        read(telling);
        normalise();
    }

    private void read(PieceColourClassifier telling) {
        double skip = Math.min(length / 4, Math.max(3, Math.max(reach * 0.5, length * 0.06)));
        int count = (int) Math.max(
                parameters.band().leastPlaces(), Math.min(parameters.band().mostPlaces(), length - 2 * skip));
        double[] colour = new double[3];
        double[] held = new double[count];
        for (int i = 0; i < count; i++) {
            double share = (skip + (length - 2 * skip) * i / (count - 1)) / length;
            Point at = lens.bent(a.towards(b, share));
            if (!telling.holds(at)) {
                continue;
            }
            double[] level = new double[2 * reach + 1];
            float[] seen = new float[3 * level.length];
            for (int t = -reach; t <= reach; t++) {
                double x = at.x() + t * nx;
                double y = at.y() + t * ny;
                boolean other = t > 0 && telling.isOthers(x, y);
                level[t + reach] = other ? Double.NaN : telling.at(x, y, colour);
                for (int c = 0; c < 3; c++) {
                    seen[3 * (t + reach) + c] = other ? Float.NaN : (float) colour[c];
                }
            }
            held[levels.size()] = share;
            colours.add(seen);
            levels.add(level);
        }
        shares = Arrays.copyOf(held, levels.size());
    }

    /**
     * Scales the levels so that the inside is one and the outside zero on the whole; another piece counts as ground.
     */
    private void normalise() {
        double in = mean(0, reach / 2);
        double out = mean(2 * reach + 1 - reach / 2, 2 * reach + 1);
        double span = Math.max(0.15, in - out);
        for (double[] level : levels) {
            for (int t = 0; t < level.length; t++) {
                level[t] = Double.isNaN(level[t]) ? 0 : (level[t] - out) / span;
            }
        }
    }

    private double mean(int from, int to) {
        double sum = 0;
        int count = 0;
        for (double[] level : levels) {
            for (int t = from; t < to; t++) {
                if (!Double.isNaN(level[t])) {
                    sum += level[t];
                    count++;
                }
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    /**
     * How far outwards the best line lies at both ends of the side, in pixels.
     *
     * @param solid the level above which a place counts as cloth
     */
    double[] best(double solid) {
        int n = 2 * reach + 1;
        gains = new double[levels.size()][n + 1];
        for (int s = 0; s < gains.length; s++) {
            for (int t = 0; t < n; t++) {
                double says = Math.max(
                        -parameters.band().clip(), Math.min(parameters.band().clip(), levels.get(s)[t] - solid));
                gains[s][t + 1] = gains[s][t] + says;
            }
        }
        double[] best = {0, 0};
        most = -1e9;
        int step = Math.max(1, reach / 8);
        int thinned = Math.max(1, reach / 10);
        for (int p = -reach; p <= reach; p += step) {
            for (int q = -reach; q <= reach; q += step) {
                double gain = gain(p, q, thinned);
                if (gain > most) {
                    most = gain;
                    best = new double[] {p, q};
                }
            }
        }
        for (double fine = step / 2.0; fine >= 0.25; fine /= 2) {
            best = polished(best, fine);
        }
        most = gain(best[0], best[1], 1);
        return best;
    }

    private double[] polished(double[] start, double step) {
        double[] best = start;
        double highest = gain(best[0], best[1], 1);
        boolean better = true;
        while (better) {
            better = false;
            for (int[] move : MOVES) {
                double p = best[0] + step * move[0];
                double q = best[1] + step * move[1];
                double gain = gain(p, q, 1);
                if (gain > highest + 1e-9 && Math.abs(p) <= reach && Math.abs(q) <= reach) {
                    highest = gain;
                    best = new double[] {p, q};
                    better = true;
                }
            }
        }
        return best;
    }

    /** What a line gains, counted at every {@code every}-th place. */
    private double gain(double p, double q, int every) {
        return gain(p, q, 0, every);
    }

    /**
     * What a line gains.
     *
     * @param bow how far farther out the line runs in its middle than straight between its ends, in pixels
     */
    private double gain(double p, double q, double bow, int every) {
        double sum = 0;
        for (int s = 0; s < gains.length; s += every) {
            double share = shares[s];
            double out = p + (q - p) * share + 4 * bow * share * (1 - share);
            double at = Math.max(0, Math.min(2.0 * reach, reach + 0.5 + out));
            int t = (int) at;
            sum += gains[s][t] + (gains[s][t + 1] - gains[s][t]) * (at - t);
        }
        return sum * every - 0.02 * (Math.abs(p) + Math.abs(q));
    }

    /**
     * How much worse another line separates cloth from ground than the line last found, in pixels of certain cloth or
     * ground, as the mean over all places.
     *
     * @param other in pixels as straightened by {@code with}
     */
    double loss(Line other, LensModel with) {
        double p = outwards(other, a, with);
        double q = outwards(other, b, with);
        double bow = outwards(other, a.towards(b, 0.5), with) - (p + q) / 2;
        double gain = gain(p, q, bow, 1);
        return (most - gain) / parameters.band().clip() / Math.max(1, levels.size());
    }

    /** How far outwards of a place on this strip's middle line another line runs, in pixels. */
    private double outwards(Line line, Point place, LensModel with) {
        Point raw = lens.bent(place);
        double here = line.off(with.straight(raw));
        double further = line.off(with.straight(raw.plus(nx, ny)));
        return Math.abs(further - here) < 1e-6 ? 0 : here / (here - further);
    }

    /** The share of places with cloth just inside the line last found and ground just outside it. */
    double clear() {
        int clear = 0;
        for (int s = 0; s < levels.size(); s++) {
            int at = reach + (int) Math.round(placed[0] + (placed[1] - placed[0]) * shares[s]);
            clear += beside(s, at - parameters.band().beside(), at) > 0.5
                            && beside(s, at + 2, at + 2 + parameters.band().beside()) < 0.5
                    ? 1
                    : 0;
        }
        return clear / Math.max(1.0, levels.size());
    }

    private double beside(int place, int from, int to) {
        double[] own = levels.get(place);
        double sum = 0;
        for (int t = from; t < to; t++) {
            sum += own[Math.max(0, Math.min(own.length - 1, t))];
        }
        return sum / (to - from);
    }

    EdgeLocaliser.Rim rim(double[] ends) {
        placed = ends.clone();
        Point one = lens.straight(lens.bent(a).plus(ends[0] * nx, ends[0] * ny));
        Point two = lens.straight(lens.bent(b).plus(ends[1] * nx, ends[1] * ny));
        double[] mean = aligned(ends);
        int last = reach + 1;
        for (int t = reach + 1; t < mean.length && mean[t] > parameters.band().threads(); t++) {
            last = t;
        }
        double soft = Math.max(0, last - reach - parameters.band().soft());
        EdgeFringe beyond = new EdgeFringe(
                reach, levels, colours, shares, parameters.placing().threads());
        double threads = beyond.threads(ends);
        double fringe = soft > threads && beyond.isThreaded(ends, last) ? soft : threads;
        return new EdgeLocaliser.Rim(Line.through(one, two), fringe, Math.max(soft, fringe), this);
    }

    /** Mean level of cloth by distance from the line. */
    private double[] aligned(double[] ends) {
        double[] sum = new double[2 * reach + 1];
        double[] count = new double[2 * reach + 1];
        for (int s = 0; s < levels.size(); s++) {
            int shift = (int) Math.round(ends[0] + (ends[1] - ends[0]) * shares[s]);
            for (int t = 0; t < sum.length; t++) {
                int from = t + shift;
                if (from >= 0 && from < sum.length) {
                    sum[t] += Math.max(0, Math.min(1, levels.get(s)[from]));
                    count[t]++;
                }
            }
        }
        for (int t = 0; t < sum.length; t++) {
            sum[t] /= Math.max(1, count[t]);
        }
        return sum;
    }
}
