package hearthcloth.photo.ground;

import hearthcloth.photo.image.LabTiles;
import hearthcloth.photo.parameter.GroundParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;

/**
 * One of the kinds of ground that the scraps lie on, with its light from place to place.
 *
 * <p>The ground spreads from tile to tile, from a start and from all tiles at the rim that resemble it. A tile's own
 * ground colour is the mean of those of its pixels that are near the colour of its known neighbours. In this way it
 * follows uneven light and soft shadows and stops at the sharp edge of a scrap. Tiles that it never reaches are filled
 * in from around. Colours are CIELAB.
 */
public final class GroundLayer {

    private static final int TILE = LabTiles.TILE;
    private final LabTiles tiles;
    private final GroundParameters parameters;
    private final int across;
    private final int down;
    /** The ground's own colour in each tile, in three planes. */
    private final float[][] colour;

    private final boolean[] known;
    private double reach;

    /** Tiles in which this layer cannot be. */
    private final boolean[] closed;

    /**
     * A layer that has not spread yet.
     *
     * @param closed tiles that belong to another layer
     */
    GroundLayer(LabTiles tiles, boolean[] closed, GroundParameters parameters) {
        this.tiles = tiles;
        this.parameters = parameters;
        this.closed = closed.clone();
        across = tiles.across;
        down = tiles.down;
        colour = new float[3][across * down];
        known = new boolean[across * down];
    }

    /**
     * The most that this layer's pixels differ from its colour in their tile, in CIELAB units; known once it has grown.
     */
    public double reach() {
        return reach;
    }

    /** Whether the layer was found in each tile. */
    boolean[] known() {
        return known.clone();
    }

    /** The share of all tiles where it was found. */
    double share() {
        return LabTiles.share(known);
    }

    /** Marks in {@code tiles} those where it was found. */
    void addTo(boolean[] tiles) {
        for (int t = 0; t < known.length; t++) {
            tiles[t] |= known[t];
        }
    }

    /** One of L*, a* and b* of its colour in a tile. */
    float colour(int plane, int tile) {
        return colour[plane][tile];
    }

    /** Whether a tile neither belongs to this layer nor is closed to it. */
    boolean isOpen(int tile) {
        return !known[tile] && !closed[tile];
    }

    /** What this layer and another one found, together, as one ground in two lights. */
    GroundLayer and(GroundLayer other) {
        GroundLayer both = new GroundLayer(tiles, closed, parameters);
        both.reach = Math.max(reach, other.reach);
        for (int t = 0; t < known.length; t++) {
            both.known[t] = known[t] || other.known[t];
            for (int c = 0; c < 3; c++) {
                both.colour[c][t] = known[t] ? colour[c][t] : other.colour[c][t];
            }
        }
        return both;
    }

    /** Fills in, once everything is found, the tiles where the layer was not seen. */
    void complete() {
        new GroundInpainting(colour, known, across, down).complete();
    }

    /** A tile that the ground may spread to, and how much it differs from its neighbour. */
    private record Offer(int tile, double gap) {}

    /** Spreads from a tile and from all tiles at the rim that resemble it. */
    void grow(int seed) {
        List<Float> spreads = new ArrayList<>();
        PriorityQueue<Offer> offers = new PriorityQueue<>((a, b) -> Double.compare(a.gap, b.gap));
        for (int t = 0; t < known.length; t++) {
            if (!closed[t] && tiles.apart(t, seed) < parameters.spreading().alike()) {
                spreads.add(tiles.spread[t]);
            }
        }
        spreads.sort(null);
        double texture = spreads.get(spreads.size() / 2);
        GroundParameters.Reach far = parameters.reach();
        reach = Math.max(far.least(), Math.min(far.most(), far.base() + far.perTexture() * texture));
        accept(seed, offers);
        for (int t = 0; t < known.length; t++) {
            if (!closed[t]
                    && !known[t]
                    && tiles.isAtRim(t)
                    && tiles.apart(t, seed) < reach
                    && tiles.spread[t] < parameters.spreading().restless() * texture + 0.5) {
                accept(t, offers);
            }
        }
        spread(offers);
        while (crossed(texture, offers)) {
            spread(offers);
        }
    }

    private void spread(PriorityQueue<Offer> offers) {
        while (!offers.isEmpty()) {
            Offer offer = offers.poll();
            if (!known[offer.tile] && settle(offer.tile)) {
                offer(offer.tile, offers);
            }
        }
    }

    /**
     * Goes on beyond a joint that stopped the spreading, where tiles close by are very similar; says whether it did.
     */
    private boolean crossed(double texture, PriorityQueue<Offer> offers) {
        boolean any = false;
        for (int t = 0; t < known.length; t++) {
            if (!known[t]
                    && !closed[t]
                    && tiles.spread[t] < parameters.spreading().restless() * texture + 0.5) {
                float[] guess = expected(t, parameters.spreading().across());
                if (guess.length > 0
                        && tiles.apart(t, guess) < parameters.spreading().like() * reach
                        && settle(t)) {
                    offer(t, offers);
                    any = true;
                }
            }
        }
        return any;
    }

    private void accept(int tile, PriorityQueue<Offer> offers) {
        for (int c = 0; c < 3; c++) {
            colour[c][tile] = tiles.mean[c][tile];
        }
        known[tile] = true;
        offer(tile, offers);
    }

    private void offer(int tile, PriorityQueue<Offer> offers) {
        int x = tile % across;
        int y = tile / across;
        for (int v = Math.max(0, y - 1); v <= Math.min(down - 1, y + 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(across - 1, x + 1); u++) {
                int n = v * across + u;
                if (!known[n] && !closed[n]) {
                    offers.add(new Offer(n, tiles.apart(n, colour, tile)));
                }
            }
        }
    }

    /**
     * Finds the tile's ground colour among its pixels, starting from the colour its known neighbours suggest; false if
     * too few pixels are near it.
     */
    private boolean settle(int tile) {
        float[] guess = expected(tile, parameters.spreading().across());
        if (guess.length == 0) {
            return false;
        }
        int count = 0;
        for (int round = 0; round < 2; round++) {
            count = recentre(tile, guess);
            if (count < TILE * TILE * parameters.spreading().settled()) {
                return false;
            }
        }
        for (int c = 0; c < 3; c++) {
            colour[c][tile] = guess[c];
        }
        known[tile] = true;
        return true;
    }

    /**
     * The colour that the known tiles up to a distance suggest, nearer ones with more weight; empty when there are
     * none.
     */
    private float[] expected(int tile, int far) {
        float[] guess = new float[3];
        int x = tile % across;
        int y = tile / across;
        double weight = 0;
        for (int v = Math.max(0, y - far); v <= Math.min(down - 1, y + far); v++) {
            for (int u = Math.max(0, x - far); u <= Math.min(across - 1, x + far); u++) {
                int n = v * across + u;
                if (known[n]) {
                    double w = 1.0 / (0.5 + (u - x) * (u - x) + (v - y) * (v - y));
                    weight += w;
                    for (int c = 0; c < 3; c++) {
                        guess[c] += (float) (w * colour[c][n]);
                    }
                }
            }
        }
        if (weight == 0) {
            return new float[0];
        }
        for (int c = 0; c < 3; c++) {
            guess[c] /= (float) weight;
        }
        return guess;
    }

    private int recentre(int tile, float[] guess) {
        float[] l = tiles.coarse.lab[0].data;
        float[] a = tiles.coarse.lab[1].data;
        float[] b = tiles.coarse.lab[2].data;
        double sumL = 0;
        double sumA = 0;
        double sumB = 0;
        int count = 0;
        for (int row = 0; row < TILE; row++) {
            int from = tiles.pixel(tile, row * TILE);
            for (int p = from; p < from + TILE; p++) {
                double dl = l[p] - guess[0];
                double da = a[p] - guess[1];
                double db = b[p] - guess[2];
                if (dl * dl + da * da + db * db < reach * reach) {
                    sumL += dl;
                    sumA += da;
                    sumB += db;
                    count++;
                }
            }
        }
        if (count > 0) {
            guess[0] += (float) (sumL / count);
            guess[1] += (float) (sumA / count);
            guess[2] += (float) (sumB / count);
        }
        return count;
    }

    /** Writes the ground's colour under a coarse pixel to {@code out}. */
    public void at(int x, int y, float[] out) {
        double tx = Math.max(0, Math.min(across - 1.001, (x + 0.5) / TILE - 0.5));
        double ty = Math.max(0, Math.min(down - 1.001, (y + 0.5) / TILE - 0.5));
        int x0 = (int) tx;
        int y0 = (int) ty;
        double fx = tx - x0;
        double fy = ty - y0;
        int i = y0 * across + x0;
        int right = across > 1 ? 1 : 0;
        int below = down > 1 ? across : 0;
        for (int c = 0; c < 3; c++) {
            float[] p = colour[c];
            out[c] = (float) ((p[i] * (1 - fx) + p[i + right] * fx) * (1 - fy)
                    + (p[i + below] * (1 - fx) + p[i + below + right] * fx) * fy);
        }
    }

    /** Whether the ground was found in the tile under a coarse pixel and not filled in from around. */
    public boolean isFoundAt(int x, int y) {
        return known[Math.min(down - 1, y / TILE) * across + Math.min(across - 1, x / TILE)];
    }
}
