package hearthcloth.photo.ground;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LabTiles;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;


/**
 * What the scraps lie on, as it is lit from place to place: one kind of ground, or two where the edge of a mat or of a hard
 * shadow crosses the picture. Colours are CIELAB.
 */
public final class GroundModel {

    private static final int TILE = LabTiles.TILE;
    /** So many tiles round the edge of a mat either kind may lie, and round the softer one of a shadow. */
    private static final int EDGE = 1;

    private static final int SOFT_EDGE = 3;

    /** What spreads over less of the picture is no ground, and so often another seed is tried. */
    private static final double LEAST = 0.02;

    private static final int SEEDS = 4;

    /** As it would be if all were of the first kind; where the second is the first in shade, as it is. */
    private final GroundLayer lit;

    private final List<GroundLayer> kinds;
    private final boolean shaded;
    /** For each tile a bit for each kind that may lie there. */
    private final byte[] which;

    private final int across;
    private final int down;

    private GroundModel(LabTiles tiles, GroundLayer lit, List<GroundLayer> kinds, boolean shaded, byte[] which) {
        this.lit = lit;
        this.kinds = kinds;
        this.shaded = shaded;
        this.which = which;
        across = tiles.across;
        down = tiles.down;
    }

    public static GroundModel of(LabThumbnail coarse) {
        return without(List.of(), coarse);
    }

    /**
     * The ground where paper hardly differs from it.
     *
     * @param sheets corners of what is no ground, in raw pixels
     */
    public static GroundModel without(List<List<Point>> sheets, LabThumbnail coarse) {
        LabTiles tiles = new LabTiles(coarse);
        boolean[] closed = tiles.touching(sheets);
        GroundLayer first = first(tiles, closed);
        return SecondGround.beside(first, tiles)
                .map(second -> both(first, second, tiles))
                .orElseGet(() -> only(first, tiles));
    }

    /** Floor and a mat that lies whole in the picture; empty where there is none such. */
    public static Optional<GroundModel> withMat(LabThumbnail coarse) {
        LabTiles tiles = new LabTiles(coarse);
        GroundLayer first = first(tiles, new boolean[tiles.spread.length]);
        return SecondGround.within(first, tiles).map(mat -> both(first, mat, tiles));
    }

    /** What most lies along the rim; a tile there that the edge of a mat crosses is like much and spreads nowhere. */
    private static GroundLayer first(LabTiles tiles, boolean[] closed) {
        boolean[] tried = closed.clone();
        GroundLayer first = null;
        for (int round = 0; round < SEEDS && (first == null || first.share() < LEAST); round++) {
            first = new GroundLayer(tiles, closed);
            first.grow(tiles.commonest(tried));
            first.addTo(tried);
        }
        return Objects.requireNonNull(first);
    }

    private static GroundModel only(GroundLayer first, LabTiles tiles) {
        first.complete();
        return new GroundModel(tiles, first, List.of(first), false, new byte[0]);
    }

    private static GroundModel both(GroundLayer first, GroundLayer second, LabTiles tiles) {
        GroundLayer both = first.and(second);
        byte[] edge = SecondGround.which(first, second, tiles, EDGE);
        byte[] softEdge = SecondGround.which(first, second, tiles, SOFT_EDGE);
        Stream.of(first, second, both).forEach(GroundLayer::complete);
        boolean shaded = SecondGround.isShade(first, second, edge);
        return new GroundModel(tiles, shaded ? both : first, List.of(first, second), shaded, shaded ? softEdge : edge);
    }

    /** The kinds of ground, one or two. */
    public List<GroundLayer> kinds() {
        return kinds;
    }

    /** Whether the second kind is the first in shade or in sun, so that between them are all colours between theirs. */
    public boolean shaded() {
        return shaded;
    }

    /** Whether a kind may lie at a coarse pixel, by its place in {@link #kinds}. */
    public boolean mayBe(int kind, int x, int y) {
        return which.length == 0 || (which[tile(x, y)] & 1 << kind) != 0;
    }

    private int tile(int x, int y) {
        return Math.min(down - 1, y / TILE) * across + Math.min(across - 1, x / TILE);
    }

    /** The ground's colour under a coarse pixel, as the light makes it; of the first kind, were that everywhere. */
    public void at(int x, int y, float[] out) {
        lit.at(x, y, out);
    }
}
