package hearthcloth.cutstock.piecing.blocks;

/**
 * How widely a search looks.
 *
 * @param cap the most a block may lose, as a share of its own area
 * @param beam how many blocks of each number of scraps are followed
 * @param spanning how many of those that reach from side to side already
 * @param cutPrice what cutting a scrap counts as when its offcut goes back, in area; negative where no scrap may be cut so
 * @param seed of the chance by which blocks that lose about the same are told apart
 */
public record Effort(double cap, int beam, int spanning, double cutPrice, long seed) {

    private static final double ANY_LOSS = 1e9;

    /** Everything is followed; only for a handful of scraps. */
    public static Effort everything() {
        return new Effort(ANY_LOSS, Integer.MAX_VALUE, Integer.MAX_VALUE, -1, 0);
    }

    boolean all() {
        return beam == Integer.MAX_VALUE;
    }

    /** The same with another seed. */
    public Effort seeded(long other) {
        return new Effort(cap, beam, spanning, cutPrice, other);
    }
}
