package hearthcloth.photo.ground;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LabTiles;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The ground the scraps lie on, with its light from place to place: one kind of ground, or two where the edge of a mat
 * or of a hard shadow crosses the picture. Colours are CIELAB.
 */
public final class GroundModel {

    private static final int TILE = LabTiles.TILE;
    /**
     * Within this many tiles of the edge of a mat either kind may lie; within {@link #SOFT_EDGE} of the softer edge of
     * a shadow.
     */
    private static final int EDGE = 1;

    private static final int SOFT_EDGE = 3;

    /**
     * A layer that spreads over a smaller share of the picture is no ground; another start is then tried, up to {@link
     * #SEEDS} times.
     */
    private static final double LEAST = 0.02;

    private static final int SEEDS = 4;

    /** The colour as if all were of the first kind; where the second kind is the first in shade, as it really is. */
    private final GroundLayer lit;

    private final List<GroundLayer> kinds;
    private final boolean shaded;
    /** For each tile one bit for each kind that may lie there. */
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
     * The ground of a picture in which paper hardly differs from it.
     *
     * @param sheets corners, in raw pixels, of what does not belong to the ground
     */
    public static GroundModel without(List<List<Point>> sheets, LabThumbnail coarse) {
        LabTiles tiles = new LabTiles(coarse);
        boolean[] closed = tiles.touching(sheets);
        GroundLayer first = first(tiles, closed);
        return SecondGround.beside(first, tiles)
                .map(second -> both(first, second, tiles))
                .orElseGet(() -> only(first, tiles));
    }

    /** Floor and a mat that lies wholly inside the picture; empty where there is no such mat. */
    public static Optional<GroundModel> withMat(LabThumbnail coarse) {
        LabTiles tiles = new LabTiles(coarse);
        GroundLayer first = first(tiles, new boolean[tiles.spread.length]);
        return SecondGround.within(first, tiles).map(mat -> both(first, mat, tiles));
    }

    /**
     * The layer of what is commonest along the rim. A tile there that is crossed by the edge of a mat resembles many
     * others and spreads nowhere, so several starts are tried.
     */
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

    /** Whether the second kind is the first in shade or in sun, so that all colours between the two occur as well. */
    public boolean shaded() {
        return shaded;
    }

    /** Whether a kind, by its index in {@link #kinds}, may lie at a coarse pixel. */
    public boolean mayBe(int kind, int x, int y) {
        return which.length == 0 || (which[tile(x, y)] & 1 << kind) != 0;
    }

    private int tile(int x, int y) {
        return Math.min(down - 1, y / TILE) * across + Math.min(across - 1, x / TILE);
    }

    /** Writes the ground's colour under a coarse pixel, as lit there; of the first kind, as if that lay everywhere. */
    public void at(int x, int y, float[] out) {
        lit.at(x, y, out);
    }
}
