package hearthcloth.photo.segment;

import hearthcloth.colour.Lab;
import hearthcloth.photo.image.LabThumbnail;

/** Colours read on a grid inside a piece; lightness is also kept as it would be under even light. */
final class InteriorSamples {

    final int across;
    final int down;
    private final boolean[] filled;
    /** The planes of lightness under even light, a* and b*. */
    private final double[][] even;

    private final double[] sum = new double[3];
    private final double[] under = new double[3];
    private double apart;
    private int count;

    InteriorSamples(int across, int down) {
        this.across = across;
        this.down = down;
        filled = new boolean[across * down];
        even = new double[3][across * down];
    }

    void put(int u, int v, LabThumbnail coarse, int pixel, float[] ground) {
        int i = v * across + u;
        filled[i] = true;
        count++;
        for (int c = 0; c < 3; c++) {
            double value = coarse.lab[c].data[pixel];
            sum[c] += value;
            under[c] += ground[c];
            apart += (value - ground[c]) * (value - ground[c]);
            even[c][i] = c == 0 ? value / Math.max(5, ground[0]) : value;
        }
    }

    InteriorColour interior() {
        if (count == 0) {
            return new InteriorColour(
                    Lab.BLACK, Lab.BLACK, 0, 0, new InteriorColour.Halves(Lab.BLACK, Lab.BLACK, 0, 9));
        }
        double shade = under[0] / count;
        for (int i = 0; i < filled.length; i++) {
            even[0][i] *= shade;
        }
        return new InteriorColour(
                lab(sum[0] / count, sum[1] / count, sum[2] / count),
                lab(shade, under[1] / count, under[2] / count),
                spread(),
                Math.sqrt(apart / count),
                halves());
    }

    private static Lab lab(double l, double a, double b) {
        return new Lab(Math.max(0, Math.min(100, l)), a, b);
    }

    private double spread() {
        double squares = 0;
        for (int c = 0; c < 3; c++) {
            double mean = 0;
            double square = 0;
            for (int i = 0; i < filled.length; i++) {
                if (filled[i]) {
                    mean += even[c][i];
                    square += even[c][i] * even[c][i];
                }
            }
            squares += square / count - mean / count * (mean / count);
        }
        return Math.sqrt(Math.max(0, squares));
    }

    /**
     * Two-means clustering, started from the two ends of the direction of largest spread: lightest and darkest, reddest
     * and greenest, or yellowest and bluest.
     */
    private InteriorColour.Halves halves() {
        double[][] means = ends();
        boolean[] second = new boolean[filled.length];
        double share = 0;
        for (int round = 0; round < 8; round++) {
            double[][] sums = new double[2][4];
            for (int i = 0; i < filled.length; i++) {
                if (filled[i]) {
                    second[i] = gap(i, means[1]) < gap(i, means[0]);
                    double[] to = sums[second[i] ? 1 : 0];
                    for (int c = 0; c < 3; c++) {
                        to[c] += even[c][i];
                    }
                    to[3]++;
                }
            }
            share = Math.min(sums[0][3], sums[1][3]) / count;
            for (int k = 0; k < 2; k++) {
                for (int c = 0; c < 3 && sums[k][3] > 0; c++) {
                    means[k][c] = sums[k][c] / sums[k][3];
                }
            }
        }
        return new InteriorColour.Halves(
                lab(means[0][0], means[0][1], means[0][2]),
                lab(means[1][0], means[1][1], means[1][2]),
                share,
                border(second) / Math.sqrt(count));
    }

    private double[][] ends() {
        double[][] best = new double[2][3];
        double widest = -1;
        for (int c = 0; c < 3; c++) {
            int low = -1;
            int high = -1;
            for (int i = 0; i < filled.length; i++) {
                if (filled[i]) {
                    low = low < 0 || even[c][i] < even[c][low] ? i : low;
                    high = high < 0 || even[c][i] > even[c][high] ? i : high;
                }
            }
            if (even[c][high] - even[c][low] > widest) {
                widest = even[c][high] - even[c][low];
                for (int k = 0; k < 3; k++) {
                    best[0][k] = even[k][low];
                    best[1][k] = even[k][high];
                }
            }
        }
        return best;
    }

    private double gap(int i, double[] mean) {
        double l = even[0][i] - mean[0];
        double a = even[1][i] - mean[1];
        double b = even[2][i] - mean[2];
        return l * l + a * a + b * b;
    }

    private int border(boolean[] second) {
        int changes = 0;
        for (int i = 0; i < filled.length; i++) {
            boolean right = i % across < across - 1 && filled[i] && filled[i + 1] && second[i] != second[i + 1];
            boolean below =
                    i + across < filled.length && filled[i] && filled[i + across] && second[i] != second[i + across];
            changes += (right ? 1 : 0) + (below ? 1 : 0);
        }
        return changes;
    }
}
