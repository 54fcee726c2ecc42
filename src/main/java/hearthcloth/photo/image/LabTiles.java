package hearthcloth.photo.image;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A coarse picture in small square tiles: the mean colour of each, in CIELAB, and how much it varies within. */
public final class LabTiles {

    /** The side of a tile, in coarse pixels. */
    public static final int TILE = 8;

    /** Tiles whose means differ by less than this have one colour, in CIELAB units. */
    private static final double ALIKE = 8;
    /** One tile in this many is tried for all of those round it. */
    private static final int SOME = 7;

    public final LabThumbnail coarse;
    public final int across;
    public final int down;
    /** The planes of L*, a* and b* of the tiles' means. */
    public final float[][] mean;

    public final float[] spread;

    public LabTiles(LabThumbnail coarse) {
        this.coarse = coarse;
        across = coarse.width / TILE;
        down = coarse.height / TILE;
        mean = new float[3][across * down];
        spread = new float[across * down];
        IntStream.range(0, spread.length)
                .parallel()
                .forEach(t -> spread[t] = (float) Math.sqrt(Math.max(0, measured(t))));
    }

    /** Stores a tile's mean and returns its variance. */
    private double measured(int tile) {
        double variance = 0;
        for (int c = 0; c < 3; c++) {
            double sum = 0;
            double squares = 0;
            for (int row = 0; row < TILE; row++) {
                int from = pixel(tile, row * TILE);
                for (int p = from; p < from + TILE; p++) {
                    double v = coarse.lab[c].data[p];
                    sum += v;
                    squares += v * v;
                }
            }
            double m = sum / (TILE * TILE);
            mean[c][tile] = (float) m;
            variance += squares / (TILE * TILE) - m * m;
        }
        return variance;
    }

    /** The index of the i-th pixel of a tile in the coarse picture's planes. */
    public int pixel(int tile, int i) {
        return (tile / across * TILE + i / TILE) * coarse.width + tile % across * TILE + i % TILE;
    }

    public boolean isAtRim(int tile) {
        int x = tile % across;
        int y = tile / across;
        return x < 2 || y < 2 || x >= across - 2 || y >= down - 2;
    }

    /**
     * The tile at the rim that most other tiles resemble. Those at the rim count four times, since a sheet of paper too
     * is large and even.
     *
     * @param closed tiles that do not count
     */
    public int commonest(boolean[] closed) {
        return commonest(closed, IntStream.range(0, spread.length).filter(this::isAtRim));
    }

    /** The same for a tile anywhere. */
    public int commonestAnywhere(boolean[] closed) {
        return commonest(closed, IntStream.iterate(0, t -> t < spread.length, t -> t + SOME));
    }

    private int commonest(boolean[] closed, IntStream among) {
        int[] open = among.filter(t -> !closed[t]).toArray();
        int[] votes = Arrays.stream(open).parallel().map(t -> votes(t, closed)).toArray();
        int best = 0;
        for (int i = 0; i < open.length; i++) {
            best = votes[i] > votes[best] ? i : best;
        }
        return open.length == 0 ? 0 : open[best];
    }

    private int votes(int tile, boolean[] closed) {
        int votes = 0;
        for (int other = 0; other < spread.length; other += 3) {
            if (!closed[other] && apart(tile, other) < ALIKE) {
                votes += isAtRim(other) ? 4 : 1;
            }
        }
        return votes;
    }

    public static double share(boolean[] of) {
        return (double) IntStream.range(0, of.length).filter(t -> of[t]).count() / of.length;
    }

    /** The tiles of which some part lies inside one of some shapes. */
    public boolean[] touching(List<List<Point>> shapes) {
        boolean[] out = new boolean[spread.length];
        for (int t = 0; t < out.length; t++) {
            out[t] = touches(t, shapes);
        }
        return out;
    }

    private boolean touches(int tile, List<List<Point>> shapes) {
        double side = TILE * coarse.step;
        Point corner = new Point(tile % across * side, Math.floorDiv(tile, across) * side);
        return IntStream.range(0, 9)
                .mapToObj(i -> corner.plus(i % 3 * side / 2, Math.floorDiv(i, 3) * side / 2))
                .anyMatch(at -> shapes.stream().anyMatch(shape -> Polygons.inside(shape, at.x(), at.y())));
    }

    /** The difference of two tiles' means. */
    public double apart(int tile, int other) {
        return apart(tile, mean, other);
    }

    /** The difference of a tile's mean from a place in other planes. */
    public double apart(int tile, float[][] planes, int at) {
        return apart(tile, planes[0][at], planes[1][at], planes[2][at]);
    }

    public double apart(int tile, float[] lab) {
        return apart(tile, lab[0], lab[1], lab[2]);
    }

    private double apart(int tile, double l, double a, double b) {
        double dl = mean[0][tile] - l;
        double da = mean[1][tile] - a;
        double db = mean[2][tile] - b;
        return Math.sqrt(dl * dl + da * da + db * db);
    }
}
