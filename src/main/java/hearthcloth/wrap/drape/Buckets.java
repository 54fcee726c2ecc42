package hearthcloth.wrap.drape;

import java.util.Arrays;

/** Places in space sorted into an even grid of cells, each cell's in their own order. */
final class Buckets {
    private double cell = 1;
    private final double[] low = new double[3];
    private final int[] size = new int[3];
    private int[] first = new int[1];
    private int[] sorted = new int[1];

    /** Coarser where the cloth reaches far, so that there are never more than this many cells. */
    private static final int MOST = 400_000;

    void fill(double[] x, int count, double edge) {
        double[] high = new double[3];
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
        for (int k = 0; k < 3 * count; k++) {
            low[k % 3] = Math.min(low[k % 3], x[k]);
            high[k % 3] = Math.max(high[k % 3], x[k]);
        }
        cell = edge;
        size(high);
        while ((double) size[0] * size[1] * size[2] > MOST) {
            cell *= 1.5;
            size(high);
        }
        int cells = size[0] * size[1] * size[2];
        first = new int[cells + 2];
        sorted = new int[count];
        for (int k = 0; k < count; k++) {
            first[at(x, k) + 2]++;
        }
        for (int c = 2; c < first.length; c++) {
            first[c] += first[c - 1];
        }
        for (int k = 0; k < count; k++) {
            sorted[first[at(x, k) + 1]++] = k;
        }
    }

    private void size(double[] high) {
        for (int i = 0; i < 3; i++) {
            size[i] = 1 + (int) ((high[i] - low[i]) / cell);
        }
    }

    private int at(double[] x, int k) {
        return (index(x[3 * k + 2], 2) * size[1] + index(x[3 * k + 1], 1)) * size[0] + index(x[3 * k], 0);
    }

    private int index(double place, int i) {
        return Math.max(0, Math.min(size[i] - 1, (int) Math.floor((place - low[i]) / cell)));
    }

    int[] gathered = new int[256];

    /** Fills {@link #gathered} with what may lie in a box; the number of them. */
    int gather(Box box) {
        int count = 0;
        int left = index(box.low[0], 0);
        int right = index(box.high[0], 0);
        int top = index(box.high[2], 2);
        int far = index(box.high[1], 1);
        for (int z = index(box.low[2], 2); z <= top; z++) {
            for (int y = index(box.low[1], 1); y <= far; y++) {
                int row = (z * size[1] + y) * size[0];
                int from = first[row + left];
                int more = first[row + right + 1] - from;
                if (count + more > gathered.length) {
                    gathered = Arrays.copyOf(gathered, 2 * (count + more));
                }
                System.arraycopy(sorted, from, gathered, count, more);
                count += more;
            }
        }
        return count;
    }

    /** An upright box in space. */
    static final class Box {
        final double[] low = new double[3];
        final double[] high = new double[3];

        void of(double[] x, int a, int b) {
            for (int i = 0; i < 3; i++) {
                low[i] = Math.min(x[3 * a + i], x[3 * b + i]);
                high[i] = Math.max(x[3 * a + i], x[3 * b + i]);
            }
        }

        void with(double[] x, int c) {
            for (int i = 0; i < 3; i++) {
                low[i] = Math.min(low[i], x[3 * c + i]);
                high[i] = Math.max(high[i], x[3 * c + i]);
            }
        }

        void grow(double by) {
            for (int i = 0; i < 3; i++) {
                low[i] -= by;
                high[i] += by;
            }
        }

        boolean holds(double[] x, int k) {
            return x[3 * k] >= low[0]
                    && x[3 * k] <= high[0]
                    && x[3 * k + 1] >= low[1]
                    && x[3 * k + 1] <= high[1]
                    && x[3 * k + 2] >= low[2]
                    && x[3 * k + 2] <= high[2];
        }

        boolean meets(double[] x, int c, int d) {
            for (int i = 0; i < 3; i++) {
                double p = x[3 * c + i];
                double q = x[3 * d + i];
                if ((p < low[i] && q < low[i]) || (p > high[i] && q > high[i])) {
                    return false;
                }
            }
            return true;
        }
    }
}
