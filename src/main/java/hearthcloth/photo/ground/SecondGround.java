package hearthcloth.photo.ground;

import hearthcloth.photo.image.LabTiles;
import hearthcloth.photo.parameter.GroundParameters;
import java.util.Arrays;
import java.util.Optional;

/**
 * Looks for another kind of ground beside the first: one that lies along much of the picture's rim, as the table does
 * beyond a mat, or the rest of the floor in a hard shadow. A piece that runs off the picture takes up less of the rim.
 */
final class SecondGround {

    private SecondGround() {}

    /** The second ground along the rim; empty where there is none, which is found out first and quickly. */
    static Optional<GroundLayer> beside(GroundLayer first, LabTiles tiles, GroundParameters parameters) {
        boolean[] closed = taken(first, tiles);
        if (rimShare(inverse(closed), tiles) < parameters.second().least()) {
            return Optional.empty();
        }
        int seed = tiles.commonest(closed);
        GroundLayer second = new GroundLayer(tiles, closed, parameters);
        second.grow(seed);
        for (int t = 0; t < closed.length; t++) {
            if (tiles.isAtRim(t)
                    && second.isOpen(t)
                    && isAlike(tiles, t, seed, parameters)
                    && tiles.spread[t] < second.reach() / 2) {
                second.grow(t);
            }
        }
        return Optional.of(second)
                .filter(s -> rimShare(s.known(), tiles) >= parameters.second().least());
    }

    /** A mat that lies wholly inside the picture with the scraps on it; empty where nothing so large has one colour. */
    static Optional<GroundLayer> within(GroundLayer first, LabTiles tiles, GroundParameters parameters) {
        boolean[] closed = taken(first, tiles);
        if (LabTiles.share(inverse(closed)) < parameters.second().leastMat()) {
            return Optional.empty();
        }
        GroundLayer mat = new GroundLayer(tiles, closed, parameters);
        mat.grow(tiles.commonestAnywhere(closed));
        return Optional.of(mat).filter(m -> m.share() >= parameters.second().leastMat());
    }

    private static boolean[] taken(GroundLayer first, LabTiles tiles) {
        boolean[] out = new boolean[tiles.spread.length];
        for (int t = 0; t < out.length; t++) {
            out[t] = !first.isOpen(t);
        }
        return out;
    }

    private static boolean isAlike(LabTiles tiles, int tile, int seed, GroundParameters parameters) {
        return Math.abs(tiles.mean[0][tile] - tiles.mean[0][seed])
                        < parameters.second().lightness()
                && Math.hypot(tiles.mean[1][tile] - tiles.mean[1][seed], tiles.mean[2][tile] - tiles.mean[2][seed])
                        < parameters.second().hue();
    }

    private static boolean[] inverse(boolean[] of) {
        boolean[] out = new boolean[of.length];
        for (int i = 0; i < of.length; i++) {
            out[i] = !of[i];
        }
        return out;
    }

    private static double rimShare(boolean[] of, LabTiles tiles) {
        int all = 0;
        int in = 0;
        for (int t = 0; t < of.length; t++) {
            if (tiles.isAtRim(t)) {
                all++;
                in += of[t] ? 1 : 0;
            }
        }
        return (double) in / Math.max(1, all);
    }

    /**
     * For each tile one bit for the kind that was found nearest to it; both bits where their distances differ by no
     * more than {@code edge} tiles.
     */
    static byte[] which(GroundLayer first, GroundLayer second, LabTiles tiles, int edge) {
        int[] one = distances(first.known(), tiles);
        int[] two = distances(second.known(), tiles);
        byte[] which = new byte[one.length];
        for (int t = 0; t < which.length; t++) {
            which[t] = (byte) ((one[t] <= two[t] + edge ? 1 : 0) | (two[t] <= one[t] + edge ? 2 : 0));
        }
        return which;
    }

    /** For each tile the number of tiles to the nearest of some, diagonals counting as one. */
    private static int[] distances(boolean[] from, LabTiles tiles) {
        int[] out = new int[from.length];
        Arrays.fill(out, Integer.MAX_VALUE / 2);
        int[] queue = new int[from.length];
        int end = 0;
        for (int t = 0; t < from.length; t++) {
            if (from[t]) {
                out[t] = 0;
                queue[end++] = t;
            }
        }
        for (int next = 0; next < end; next++) {
            int x = queue[next] % tiles.across;
            int y = queue[next] / tiles.across;
            for (int v = Math.max(0, y - 1); v <= Math.min(tiles.down - 1, y + 1); v++) {
                for (int u = Math.max(0, x - 1); u <= Math.min(tiles.across - 1, x + 1); u++) {
                    int n = v * tiles.across + u;
                    if (out[n] > out[queue[next]] + 1) {
                        out[n] = out[queue[next]] + 1;
                        queue[end++] = n;
                    }
                }
            }
        }
        return out;
    }

    /** Whether one is the other in shade: the same cloth or wood with less light of every colour. */
    static boolean isShade(GroundLayer first, GroundLayer second, byte[] which, GroundParameters.Second shade) {
        double[] one = new double[3];
        double[] two = new double[3];
        for (int t = 0; t < which.length; t++) {
            if (which[t] == 3) {
                addLight(first, t, one);
                addLight(second, t, two);
            }
        }
        double most = 0;
        double least = Double.MAX_VALUE;
        for (int c = 0; c < 3; c++) {
            double ratio = two[c] / Math.max(1e-9, one[c]);
            most = Math.max(most, ratio);
            least = Math.min(least, ratio);
        }
        return most < shade.bluer() * least && least > shade.darkest() && most < 1 / shade.darkest();
    }

    /**
     * Adds X, Y and Z of a tile from CIELAB's cube roots (CIE 15, docs/sources.md#lab), which is close enough for a
     * ratio.
     */
    private static void addLight(GroundLayer layer, int tile, double[] sum) {
        double y = (layer.colour(0, tile) + 16) / 116;
        sum[0] += Math.pow(y + layer.colour(1, tile) / 500, 3);
        sum[1] += Math.pow(y, 3);
        sum[2] += Math.pow(y - layer.colour(2, tile) / 200, 3);
    }
}
