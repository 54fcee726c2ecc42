package hearthcloth.photo.edge;

import hearthcloth.photo.image.SrgbLinear;

/**
 * Where cloth ends in the mean profile across a side: cloth of one colour, then ground in a shade that is deepest beside the
 * cloth and fades outwards, both through a lens with some blur. Shade takes the same share of every colour, so that it is not
 * taken for a part of the cloth. For each place and blur the depth of the shade follows by least squares without negative
 * parts; the place that leaves least is taken.
 *
 * <p>All distances are in units of a coarse pixel, outwards from the line along which the profile was read.
 */
final class ShadeFit {

    /** The profile starts so far inside. */
    static final double INSIDE = 10;
    /** Two samples of the profile lie so far apart. */
    static final double APART = 0.5;

    /** How far from the line cloth may end. */
    private static final double FARTHEST = 6;
    /** Places are tried so far apart, the best again at half of that. */
    private static final double COARSE = 0.5;

    private static final double FINE = COARSE / 2;
    /** Cloth surely shows so far inside of where it ends, and the ground's own colour at the last so many units. */
    private static final double CLEAR = 3.5;

    /** From here on the profile is compared. */
    private static final double FROM = -8;
    /** Cloth's colour is taken from farther in than this, before it is known where it ends. */
    private static final double SURE = -6;
    /** How far a shade reaches; a sum of such ramps fades as shades do, fast beside the cloth and slower farther off. */
    private static final double[] REACHES = {2, 5, 9, 14};

    private static final double[] BLURS = {0.35, 0.5, 0.8, 1.1, 1.4, 1.7, 2.0, 2.3};
    /** The table of blurred steps and ramps begins so far inside of the step and ends so far outside. */
    private static final double EDGE = 16;

    private static final int ENTRIES = (int) Math.round((EDGE + 26) / FINE) + 1;
    /** For each blur the share of cloth and then each ramp, by distance outwards of the step. */
    private static final double[][][] TABLE = table();

    private final double[][] steps;
    private final double[][] light;
    private final int last;
    private final int first = (int) Math.round((FROM + INSIDE) / APART);

    /**
     * Prepares the fit of a profile.
     *
     * @param profile mean colours from {@link #INSIDE} on, in steps of 255, {@link #APART} from each other
     */
    ShadeFit(double[][] profile) {
        steps = new double[profile.length][3];
        light = new double[profile.length][3];
        for (int i = 0; i < profile.length; i++) {
            for (int c = 0; c < 3; c++) {
                steps[i][c] = profile[i][c] / 255;
                light[i][c] = SrgbLinear.ofSteps(profile[i][c]);
            }
        }
        last = profile.length - 1;
    }

    /**
     * Where cloth ends.
     *
     * @param at outwards of the line
     * @param apart how far the places apart lie that are told by light and by the colours' values, between which the truth lies
     * @param misfit what the fit leaves, as a share of the difference between cloth and ground
     * @param blur the lens's, as a place in the list of those tried
     */
    record Found(double at, double apart, double misfit, int blur) {}

    /** Where cloth ends, with any blur. */
    Found found() {
        Found rough = found(within(-FARTHEST, FARTHEST - 2, SURE), 0, BLURS.length - 1);
        return rough.at < SURE + CLEAR
                ? found(within(-FARTHEST, FARTHEST - 2, rough.at - CLEAR), 0, BLURS.length - 1)
                : rough;
    }

    /** The same near a place that is known and with a blur that is known. */
    Found near(Found known) {
        return found(within(known.at - 2, known.at + 2, Math.min(SURE, known.at - CLEAR)), known.blur, known.blur);
    }

    /**
     * Where to look.
     *
     * @param cloth farther in than this there is surely cloth
     */
    private record Search(double from, double to, double cloth) {}

    private static Search within(double from, double to, double cloth) {
        return new Search(
                Math.max(-FARTHEST, Math.round(from / COARSE) * COARSE),
                Math.min(FARTHEST - 2, Math.round(to / COARSE) * COARSE),
                Math.max(1 - INSIDE, cloth));
    }

    private Found found(Search search, int leastBlur, int mostBlur) {
        Side values = new Side(steps, search.cloth, false);
        double best = search.from;
        int blur = leastBlur;
        double least = Double.MAX_VALUE;
        for (int b = leastBlur; b <= mostBlur; b++) {
            for (double at = search.from; at <= search.to + 1e-9; at += COARSE) {
                double left = values.left(at, b);
                if (left < least) {
                    least = left;
                    best = at;
                    blur = b;
                }
            }
        }
        double byValue = values.closer(best, blur);
        double byLight = new Side(light, search.cloth, true).closest(best, blur);
        double misfit = Math.sqrt(values.left(Math.round(byValue / FINE) * FINE, blur) / (3.0 * (last - first + 1)));
        return new Found(
                (byValue + byLight) / 2, Math.abs(byValue - byLight), misfit / Math.max(1e-6, values.contrast()), blur);
    }

    /** A profile, by light or by the colours' values. */
    private final class Side {

        private final double[][] seen;
        private final double[] cloth;
        private final double[] ground;
        private final double[] weight = {1, 1, 1};
        private final double groundSquares;

        Side(double[][] seen, double surely, boolean weighed) {
            this.seen = seen;
            cloth = mean(seen, 0, (int) Math.floor((surely + INSIDE) / APART));
            ground = mean(seen, last - (int) Math.round(CLEAR / APART) + 1, last);
            double squares = 0;
            for (int c = 0; c < 3; c++) {
                weight[c] = weighed ? 1 / Math.max(0.02, mean(seen, first, last)[c]) : 1;
                squares += Math.pow(ground[c] * weight[c], 2);
            }
            groundSquares = squares;
        }

        double contrast() {
            double squares = 0;
            for (int c = 0; c < 3; c++) {
                squares += Math.pow((cloth[c] - ground[c]) * weight[c], 2);
            }
            return Math.sqrt(squares / 3);
        }

        /** The best place near one that is known, told to less than the places tried are apart. */
        double closest(double near, int blur) {
            double best = near;
            double least = Double.MAX_VALUE;
            for (double at = near - 1.5; at <= near + 1.5 + 1e-9; at += COARSE) {
                double left = left(at, blur);
                if (left < least) {
                    least = left;
                    best = at;
                }
            }
            return closer(best, blur);
        }

        double closer(double near, int blur) {
            double best = near;
            for (double at : new double[] {near - FINE, near + FINE}) {
                best = left(at, blur) < left(best, blur) ? at : best;
            }
            double before = left(best - FINE, blur);
            double here = left(best, blur);
            double after = left(best + FINE, blur);
            double bend = before - 2 * here + after;
            return bend <= 0 ? best : best + FINE * Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend)));
        }

        /** What is left of the profile's squares if cloth ends there. */
        double left(double at, int blur) {
            double[][] table = TABLE[blur];
            double[] toward = new double[REACHES.length];
            double[][] gram = new double[REACHES.length][REACHES.length];
            double squares = 0;
            int offset = (int) Math.round((EDGE - INSIDE - at) / FINE);
            int every = (int) Math.round(APART / FINE);
            for (int k = first; k <= last; k++) {
                int entry = offset + every * k;
                double share = table[0][entry];
                double along = 0;
                for (int c = 0; c < 3; c++) {
                    double off = (seen[k][c] - share * cloth[c] - (1 - share) * ground[c]) * weight[c];
                    squares += off * off;
                    along -= off * ground[c] * weight[c];
                }
                for (int i = 0; i < REACHES.length; i++) {
                    toward[i] += table[i + 1][entry] * along;
                    for (int j = 0; j <= i; j++) {
                        gram[i][j] += table[i + 1][entry] * table[j + 1][entry] * groundSquares;
                    }
                }
            }
            return squares - explained(gram, toward);
        }
    }

    /** By how much the squares fall with the best depths that are not negative: one after the other until they stand. */
    private static double explained(double[][] gram, double[] toward) {
        int n = toward.length;
        double[] depth = new double[n];
        for (int round = 0; round < 40; round++) {
            for (int i = 0; i < n; i++) {
                depth[i] =
                        Math.max(0, (toward[i] - times(gram, depth, i) + gram[i][i] * depth[i]) / (gram[i][i] + 1e-12));
            }
        }
        double fall = 0;
        for (int i = 0; i < n; i++) {
            fall += depth[i] * (2 * toward[i] - times(gram, depth, i));
        }
        return fall;
    }

    private static double times(double[][] gram, double[] depth, int i) {
        double sum = 0;
        for (int j = 0; j < depth.length; j++) {
            sum += (j <= i ? gram[i][j] : gram[j][i]) * depth[j];
        }
        return sum;
    }

    private static double[] mean(double[][] seen, int from, int to) {
        double[] sum = new double[3];
        for (int k = from; k <= to; k++) {
            for (int c = 0; c < 3; c++) {
                sum[c] += seen[k][c] / (to - from + 1);
            }
        }
        return sum;
    }

    private static double[][][] table() {
        double[][][] out = new double[BLURS.length][REACHES.length + 1][ENTRIES];
        for (int b = 0; b < BLURS.length; b++) {
            for (int i = 0; i < ENTRIES; i++) {
                double outwards = i * FINE - EDGE;
                double weights = 0;
                for (double y = -4; y <= 4; y += 0.05) {
                    double weight = Math.exp(-y * y / 2);
                    double from = outwards + y * BLURS[b];
                    weights += weight;
                    out[b][0][i] += from < 0 ? weight : 0;
                    for (int r = 0; r < REACHES.length; r++) {
                        out[b][r + 1][i] += from < 0 ? 0 : weight * Math.max(0, 1 - from / REACHES[r]);
                    }
                }
                for (double[] row : out[b]) {
                    row[i] /= weights;
                }
            }
        }
        return out;
    }
}
