package hearthcloth.photo;

import hearthcloth.geometry.Point;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the scraps lie on, as it is lit from place to place: one kind of ground, or two where the edge of a mat or of a hard
 * shadow crosses the picture. Colours are CIELAB.
 */
final class Ground {

    private static final int TILE = Tiles.TILE;
    /** So many tiles round the edge of a mat either kind may lie, and round the softer one of a shadow. */
    private static final int EDGE = 1;

    private static final int SOFT_EDGE = 3;

    /** What spreads over less of the picture is no ground, and so often another seed is tried. */
    private static final double LEAST = 0.02;

    private static final int SEEDS = 4;

    /** As it would be if all were of the first kind; where the second is the first in shade, as it is. */
    private final Layer lit;

    private final List<Layer> kinds;
    private final boolean shaded;
    /** For each tile a bit for each kind that may lie there. */
    private final byte[] which;

    private final int across;
    private final int down;

    private Ground(Tiles tiles, Layer lit, List<Layer> kinds, boolean shaded, byte[] which) {
        this.lit = lit;
        this.kinds = kinds;
        this.shaded = shaded;
        this.which = which;
        across = tiles.across;
        down = tiles.down;
    }

    static Ground of(Coarse coarse) {
        return without(List.of(), coarse);
    }

    /**
     * The ground where paper hardly differs from it.
     *
     * @param sheets corners of what is no ground, in raw pixels
     */
    static Ground without(List<List<Point>> sheets, Coarse coarse) {
        Tiles tiles = new Tiles(coarse);
        boolean[] closed = tiles.touching(sheets);
        Layer first = first(tiles, closed);
        return SecondGround.beside(first, tiles)
                .map(second -> both(first, second, tiles))
                .orElseGet(() -> only(first, tiles));
    }

    /** Floor and a mat that lies whole in the picture; empty where there is none such. */
    static Optional<Ground> withMat(Coarse coarse) {
        Tiles tiles = new Tiles(coarse);
        Layer first = first(tiles, new boolean[tiles.spread.length]);
        return SecondGround.within(first, tiles).map(mat -> both(first, mat, tiles));
    }

    /** What most lies along the rim; a tile there that the edge of a mat crosses is like much and spreads nowhere. */
    private static Layer first(Tiles tiles, boolean[] closed) {
        boolean[] tried = closed.clone();
        Layer first = null;
        for (int round = 0; round < SEEDS && (first == null || first.share() < LEAST); round++) {
            first = new Layer(tiles, closed);
            first.grow(tiles.commonest(tried));
            first.addTo(tried);
        }
        return Objects.requireNonNull(first);
    }

    private static Ground only(Layer first, Tiles tiles) {
        first.complete();
        return new Ground(tiles, first, List.of(first), false, new byte[0]);
    }

    private static Ground both(Layer first, Layer second, Tiles tiles) {
        Layer both = first.and(second);
        byte[] edge = SecondGround.which(first, second, tiles, EDGE);
        byte[] softEdge = SecondGround.which(first, second, tiles, SOFT_EDGE);
        Stream.of(first, second, both).forEach(Layer::complete);
        boolean shaded = SecondGround.isShade(first, second, edge);
        return new Ground(tiles, shaded ? both : first, List.of(first, second), shaded, shaded ? softEdge : edge);
    }

    /** The kinds of ground, one or two. */
    List<Layer> kinds() {
        return kinds;
    }

    /** Whether the second kind is the first in shade or in sun, so that between them are all colours between theirs. */
    boolean shaded() {
        return shaded;
    }

    /** Whether a kind may lie at a coarse pixel, by its place in {@link #kinds}. */
    boolean mayBe(int kind, int x, int y) {
        return which.length == 0 || (which[tile(x, y)] & 1 << kind) != 0;
    }

    private int tile(int x, int y) {
        return Math.min(down - 1, y / TILE) * across + Math.min(across - 1, x / TILE);
    }

    /** The ground's colour under a coarse pixel, as the light makes it; of the first kind, were that everywhere. */
    void at(int x, int y, float[] out) {
        lit.at(x, y, out);
    }
}
