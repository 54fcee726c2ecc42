package hearthcloth.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays each side of a piece where the piece's colours stop and the ground's begin, the side as a whole: of all straight
 * lines within reach, the one that has most cloth inside it and most ground outside. Figures that look like the ground,
 * a joint of the floor and the shade beside a piece weigh little against the rest of a side; threads of a frayed edge
 * cover too little to count as cloth.
 */
final class Rims {

    /** Where less than this share shows cloth, the cloth has ended: threads cover less, a figured rim more. */
    private static final double SOLID = 0.62;
    /** The same where threads stick out: they lie thick at their root. */
    private static final double FRAYED = 0.7;
    /** A fringe worth speaking of, in pixels. */
    private static final double FRINGE = 1.5;
    /** One place says no more than this for or against. */
    private static final double CLIP = 0.4;

    /** Colours change this much more among threads than on the ground, and by as many steps of 255 at least. */
    private static final double RESTLESS = 1.6;

    private static final double LEAST_UNREST = 6;

    private static final int MOST_PLACES = 160;
    private static final double LEAST_PLACES = 8;
    /** A line may turn by this share of the reach at its ends. */
    private static final double TURN = 1.0;
    /** Levels beyond a line up to which threads are looked for. */
    private static final double THREADS = 0.1;
    /** What the picture's own softness covers beyond a line, in pixels. */
    private static final double SOFT = 1.2;

    private final Picture picture;
    private final EvenLight light;
    private final Occupied occupied;
    private final int reach;

    /** @param reach how far a side may be from where it seems to be, in pixels */
    Rims(Picture picture, EvenLight light, Occupied occupied, int reach) {
        this.picture = picture;
        this.light = light;
        this.occupied = occupied;
        this.reach = reach;
    }

    /**
     * One side as laid.
     *
     * @param line in straightened pixels
     * @param fringe how far threads reach beyond it, in pixels
     * @param crisp how much more cloth shows just inside than just outside, nought to one
     */
    record Rim(Line line, double fringe, double crisp) {}

    /** @param moved the farthest that a side has moved, in pixels */
    record Laid(List<Spot> corners, List<Rim> rims, double moved) {}

    /** Lays all sides, again from where they came to lie while they move. */
    Laid of(List<Spot> rough, int own, Lens lens) {
        Laid laid = once(rough, own, lens);
        for (int round = 0; round < 3 && laid.moved() > 1.5; round++) {
            laid = once(laid.corners(), own, lens);
        }
        return laid;
    }

    private Laid once(List<Spot> corners, int own, Lens lens) {
        Telling telling = Telling.of(light, occupied, corners, own, reach);
        int outwards = Shapes.signedArea(corners) > 0 ? -1 : 1;
        List<Rim> rims = new ArrayList<>();
        double moved = 0;
        for (int i = 0; i < corners.size(); i++) {
            Spot a = lens.straight(corners.get(i));
            Spot b = lens.straight(corners.get((i + 1) % corners.size()));
            Strip strip = new Strip(telling, a, b, outwards, own, lens);
            double[] ends = strip.best(SOLID);
            moved = Math.max(moved, Math.max(Math.abs(ends[0]), Math.abs(ends[1])));
            Rim rim = strip.rim(ends);
            rims.add(rim.fringe() < FRINGE ? rim : strip.rim(strip.best(FRAYED)));
        }
        return new Laid(crossed(corners, rims, lens), rims, moved);
    }

    private List<Spot> crossed(List<Spot> corners, List<Rim> rims, Lens lens) {
        List<Spot> out = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Line before = rims.get(Math.floorMod(i - 1, rims.size())).line();
            Spot cross = lens.bent(before.crossing(rims.get(i).line()));
            out.add(cross.to(corners.get(i)) < 3 * reach ? cross : corners.get(i));
        }
        return out;
    }

    /** What shows on both sides of one side: levels of cloth, by place along it and by pixels outwards. */
    private final class Strip {

        private final Spot a;
        private final Spot b;
        private final Lens lens;
        private final double nx;
        private final double ny;
        private final double length;
        private final List<double[]> levels = new ArrayList<>();
        private final List<float[]> colours = new ArrayList<>();
        private final List<Double> shares = new ArrayList<>();

        Strip(Telling telling, Spot a, Spot b, int outwards, int own, Lens lens) {
            this.a = a;
            this.b = b;
            this.lens = lens;
            length = Math.max(1, a.to(b));
            nx = -(b.y() - a.y()) / length * outwards;
            ny = (b.x() - a.x()) / length * outwards;
            read(telling, own);
            normalise();
        }

        private void read(Telling telling, int own) {
            double skip = Math.min(length / 4, Math.max(3, Math.max(reach * 0.5, length * 0.06)));
            int count = (int) Math.max(LEAST_PLACES, Math.min(MOST_PLACES, length - 2 * skip));
            double[] colour = new double[3];
            for (int i = 0; i < count; i++) {
                double share = (skip + (length - 2 * skip) * i / (count - 1)) / length;
                Spot at = lens.bent(a.towards(b, share));
                if (!picture.holds(at.x(), at.y(), 2)) {
                    continue;
                }
                double[] level = new double[2 * reach + 1];
                float[] seen = new float[3 * level.length];
                for (int t = -reach; t <= reach; t++) {
                    double x = at.x() + t * nx;
                    double y = at.y() + t * ny;
                    boolean other = t > 0 && occupied.byOther(x, y, own);
                    level[t + reach] = other ? Double.NaN : telling.at(x, y, colour);
                    for (int c = 0; c < 3; c++) {
                        seen[3 * (t + reach) + c] = (float) colour[c];
                    }
                }
                colours.add(seen);
                levels.add(level);
                shares.add(share);
            }
        }

        /** So that the inside is one and the outside nought on the whole; what is another piece's is ground. */
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

        /** How far outwards the best line lies at both ends of the side. */
        double[] best(double solid) {
            int n = 2 * reach + 1;
            double[][] gains = new double[levels.size()][n + 1];
            for (int s = 0; s < gains.length; s++) {
                for (int t = 0; t < n; t++) {
                    double says = Math.max(-CLIP, Math.min(CLIP, levels.get(s)[t] - solid));
                    gains[s][t + 1] = gains[s][t] + says;
                }
            }
            double[] best = {0, 0};
            double most = -1e9;
            int step = Math.max(1, reach / 8);
            for (int p = -reach; p <= reach; p += step) {
                for (int q = -reach; q <= reach; q += step) {
                    double gain = Math.abs(p - q) > 2 * TURN * reach ? -1e9 : gain(gains, p, q);
                    if (gain > most) {
                        most = gain;
                        best = new double[] {p, q};
                    }
                }
            }
            for (double fine = step / 2.0; fine >= 0.25; fine /= 2) {
                best = polished(gains, best, fine);
            }
            return best;
        }

        private double[] polished(double[][] gains, double[] start, double step) {
            double[] best = start;
            double most = gain(gains, best[0], best[1]);
            boolean better = true;
            while (better) {
                better = false;
                for (int move = 0; move < 8; move++) {
                    double p = best[0] + step * (move < 3 ? -1 : move < 5 ? 0 : 1);
                    double q = best[1]
                            + step * (move == 0 || move == 3 || move == 5 ? -1 : move == 1 || move == 6 ? 0 : 1);
                    double gain = gain(gains, p, q);
                    if (gain > most + 1e-9 && Math.abs(p) <= reach && Math.abs(q) <= reach) {
                        most = gain;
                        best = new double[] {p, q};
                        better = true;
                    }
                }
            }
            return best;
        }

        private double gain(double[][] gains, double p, double q) {
            double sum = 0;
            for (int s = 0; s < gains.length; s++) {
                double at = Math.max(0, Math.min(2.0 * reach, reach + 0.5 + p + (q - p) * shares.get(s)));
                int t = (int) at;
                sum += gains[s][t] + (gains[s][t + 1] - gains[s][t]) * (at - t);
            }
            return sum - 0.02 * (Math.abs(p) + Math.abs(q));
        }

        Rim rim(double[] ends) {
            Spot one = lens.straight(lens.bent(a).plus(ends[0] * nx, ends[0] * ny));
            Spot two = lens.straight(lens.bent(b).plus(ends[1] * nx, ends[1] * ny));
            double[] mean = aligned(ends);
            double crisp = (mean[reach - 2] + mean[reach - 3] - mean[reach + 2] - mean[reach + 3]) / 2;
            int last = reach + 1;
            for (int t = reach + 1; t < mean.length && mean[t] > THREADS; t++) {
                last = t;
            }
            double fringe = Math.max(last - reach - SOFT, threads(ends));
            return new Rim(Line.through(one, two), Math.max(0, fringe), Math.max(0, Math.min(1, crisp)));
        }

        /** How far out colours change along the side more than the ground's do: threads do, shade does not. */
        private double threads(double[] ends) {
            double calm = Double.MAX_VALUE;
            for (int t = reach + reach / 2; t <= 2 * reach - 2; t++) {
                calm = Math.min(calm, unrest(t, ends));
            }
            int t = reach + 2;
            while (t < 2 * reach && unrest(t, ends) > RESTLESS * calm + LEAST_UNREST) {
                t++;
            }
            return t - reach - 2;
        }

        /** Root mean square difference from the mean colour, at one distance all along the side. */
        private double unrest(int t, double[] ends) {
            double[] sum = new double[3];
            double squares = 0;
            int count = 0;
            for (int s = 0; s < levels.size(); s++) {
                int at = t + (int) Math.round(ends[0] + (ends[1] - ends[0]) * shares.get(s));
                if (at >= 0 && at <= 2 * reach) {
                    for (int c = 0; c < 3; c++) {
                        double v = colours.get(s)[3 * at + c];
                        sum[c] += v;
                        squares += v * v;
                    }
                    count++;
                }
            }
            double mean = sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2];
            return count == 0 ? 0 : Math.sqrt(Math.max(0, squares - mean / count) / count);
        }

        /** Mean levels by distance from the line. */
        private double[] aligned(double[] ends) {
            double[] sum = new double[2 * reach + 1];
            double[] count = new double[2 * reach + 1];
            for (int s = 0; s < levels.size(); s++) {
                int shift = (int) Math.round(ends[0] + (ends[1] - ends[0]) * shares.get(s));
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
}
