package hearthcloth.photo.ground;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;

/** Completes a ground's colours in tiles where it is not seen, and evens them out from tile to tile. */
final class GroundInpainting {

    /** The three planes of colour, completed in place. */
    private final float[][] colour;

    private final boolean[] fixed;
    private final boolean[] known;
    private final int across;
    private final int down;

    /**
     * Prepares the filling.
     *
     * @param found tiles whose colour is known and stays
     */
    GroundInpainting(float[][] colour, boolean[] found, int across, int down) {
        this.colour = colour;
        this.fixed = found;
        this.known = found.clone();
        this.across = across;
        this.down = down;
    }

    void complete() {
        fill();
        smooth();
    }

    /** Spreads known colours into unknown tiles, ring by ring, then lets those settle among themselves. */
    private void fill() {
        boolean more = true;
        while (more) {
            boolean[] next = known.clone();
            more = false;
            for (int t = 0; t < known.length; t++) {
                if (!known[t]) {
                    next[t] = average(t);
                    more |= next[t];
                }
            }
            System.arraycopy(next, 0, known, 0, next.length);
        }
        for (int round = 0; round < 30; round++) {
            for (int t = 0; t < known.length; t++) {
                if (!fixed[t]) {
                    average(t);
                }
            }
        }
    }

    private boolean average(int tile) {
        int x = tile % across;
        int y = tile / across;
        double[] sum = new double[3];
        int count = 0;
        for (int v = Math.max(0, y - 1); v <= Math.min(down - 1, y + 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(across - 1, x + 1); u++) {
                int n = v * across + u;
                if (n != tile && known[n]) {
                    count++;
                    for (int c = 0; c < 3; c++) {
                        sum[c] += colour[c][n];
                    }
                }
            }
        }
        for (int c = 0; c < 3 && count > 0; c++) {
            colour[c][tile] = (float) (sum[c] / count);
        }
        return count > 0;
    }

    private void smooth() {
        for (int c = 0; c < 3; c++) {
            GrayF32 plane = new GrayF32(across, down);
            System.arraycopy(colour[c], 0, plane.data, 0, plane.data.length);
            GrayF32 out = BlurImageOps.gaussian(plane, null, 0.8, -1, null);
            System.arraycopy(out.data, 0, colour[c], 0, out.data.length);
        }
    }
}
