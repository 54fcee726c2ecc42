package hearthcloth.photo.ground;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LabTiles;
import hearthcloth.photo.parameter.GroundParameters;
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

    public static GroundModel of(LabThumbnail coarse, GroundParameters parameters) {
        return without(List.of(), coarse, parameters);
    }

    /**
     * The ground of a picture in which paper hardly differs from it.
     *
     * @param sheets corners, in raw pixels, of what does not belong to the ground
     */
    public static GroundModel without(List<List<Point>> sheets, LabThumbnail coarse, GroundParameters parameters) {
        LabTiles tiles = new LabTiles(coarse);
        boolean[] closed = tiles.touching(sheets);
        GroundLayer first = first(tiles, closed, parameters);
        return SecondGround.beside(first, tiles, parameters)
                .map(second -> both(first, second, tiles, parameters))
                .orElseGet(() -> only(first, tiles));
    }

    /** Floor and a mat that lies wholly inside the picture; empty where there is no such mat. */
    public static Optional<GroundModel> withMat(LabThumbnail coarse, GroundParameters parameters) {
        LabTiles tiles = new LabTiles(coarse);
        GroundLayer first = first(tiles, new boolean[tiles.spread.length], parameters);
        return SecondGround.within(first, tiles, parameters).map(mat -> both(first, mat, tiles, parameters));
    }

    /**
     * The layer of what is commonest along the rim. A tile there that is crossed by the edge of a mat resembles many
     * others and spreads nowhere, so several starts are tried.
     */
    private static GroundLayer first(LabTiles tiles, boolean[] closed, GroundParameters parameters) {
        boolean[] tried = closed.clone();
        GroundLayer first = null;
        for (int round = 0;
                round < parameters.layers().seeds()
                        && (first == null || first.share() < parameters.layers().least());
                round++) {
            first = new GroundLayer(tiles, closed, parameters);
            first.grow(tiles.commonest(tried));
            first.addTo(tried);
        }
        return Objects.requireNonNull(first);
    }

    private static GroundModel only(GroundLayer first, LabTiles tiles) {
        first.complete();
        return new GroundModel(tiles, first, List.of(first), false, new byte[0]);
    }

    private static GroundModel both(
            GroundLayer first, GroundLayer second, LabTiles tiles, GroundParameters parameters) {
        GroundLayer both = first.and(second);
        byte[] edge =
                SecondGround.which(first, second, tiles, parameters.layers().edge());
        byte[] softEdge =
                SecondGround.which(first, second, tiles, parameters.layers().softEdge());
        Stream.of(first, second, both).forEach(GroundLayer::complete);
        boolean shaded = SecondGround.isShade(first, second, edge, parameters.second());
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
