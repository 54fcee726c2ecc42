package hearthcloth.photo.parameter;

/**
 * How the reader tells what the pieces lie on. A tile is 8 by 8 coarse pixels. "Tuned" means set by trial on the
 * drawers of drawn photographs, as docs/reading.md tells them.
 *
 * @param spreading how one ground spreads over the picture
 * @param reach how far its colours may differ from tile to tile
 * @param layers how many kinds there are, and where either may lie
 * @param second what makes a second kind of ground
 * @param own which shapes are the ground's own
 */
public record GroundParameters(Spreading spreading, Reach reach, Layers layers, Second second, Own own) {

    /** The values that the reader works with. */
    public static GroundParameters standard() {
        return new GroundParameters(
                Spreading.standard(), Reach.standard(), Layers.standard(), Second.standard(), Own.standard());
    }

    /**
     * How one ground spreads from tile to tile.
     *
     * @param alike tiles that differ from the first by less than this tell its texture, in CIELAB units; tuned
     * @param across how many tiles beyond a joint the ground is looked for; tuned
     * @param like beyond a joint it must differ by less than this share of the reach; tuned
     * @param settled the share of a tile that must have the ground's colour; tuned
     * @param restless a tile whose spread is this many times the texture, and half a unit, is no bare ground;
     *     tuned
     */
    public record Spreading(double alike, int across, double like, double settled, double restless) {
        private static Spreading standard() {
            return new Spreading(6, 3, 0.5, 0.4, 1.5);
        }
    }

    /**
     * How far a pixel may be from its tile's ground, in CIELAB units: a little more where the ground is restless.
     *
     * @param least the least reach; tuned
     * @param most the largest reach; tuned
     * @param base the reach of a ground without texture; tuned
     * @param perTexture what each unit of texture adds; tuned
     */
    public record Reach(double least, double most, double base, double perTexture) {
        private static Reach standard() {
            return new Reach(5, 11, 3, 1.6);
        }
    }

    /**
     * How many kinds of ground there are, and where either may lie.
     *
     * @param edge within so many tiles of the edge of a mat either kind may lie; tuned
     * @param softEdge the same for the softer edge of a shadow; tuned
     * @param least a layer over a smaller share of the picture is no ground; tuned
     * @param seeds how many starts are tried; tuned
     */
    public record Layers(int edge, int softEdge, double least, int seeds) {
        private static Layers standard() {
            return new Layers(1, 3, 0.02, 4);
        }
    }

    /**
     * What makes a second kind of ground: a mat's surroundings, or the first in shade.
     *
     * @param least the least share of the picture's rim that it takes up; tuned; a piece that runs off along
     *     as much is taken for ground
     * @param leastMat the least share of the picture that shows of a mat with scraps on it; no scrap has as much
     * @param lightness how far the same ground may differ in another corner, in L*; tuned
     * @param hue the same in a* and b*; tuned
     * @param darkest shade leaves at least this share of the light; tuned
     * @param bluer shade reduces X, Y and Z alike, except that the sky makes it bluer by this factor at most;
     *     tuned
     */
    public record Second(double least, double leastMat, double lightness, double hue, double darkest, double bluer) {
        private static Second standard() {
            return new Second(0.2, 0.15, 22, 7, 0.3, 1.35);
        }
    }

    /**
     * Which shapes are the ground's own: boards and tiles, whose long rims run on beyond them, and furniture, which reaches from
     * one rim of the picture to another.
     *
     * @param slender boards are so many times as long as wide, if they are whole; tuned
     * @param past so far past a corner the rim's continuation begins, in coarse pixels: shapes are kept clear of by 8
     * @param beyond so far past it ends, in coarse pixels; tuned
     * @param shown an edge shows on this share of it, or the rim does not run on; tuned
     * @param rims what touches so many of the picture's rims is no piece that can be measured
     */
    public record Own(double slender, double past, double beyond, double shown, int rims) {
        private static Own standard() {
            return new Own(3, 10, 60, 0.5, 2);
        }
    }
}
