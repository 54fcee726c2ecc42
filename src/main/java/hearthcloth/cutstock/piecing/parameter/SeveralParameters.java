package hearthcloth.cutstock.piecing.parameter;

/**
 * How several cloths are covered from one heap.
 *
 * @param reworks how often some are made anew together
 * @param covers how covers of each are looked for then
 * @param looks so many choices are looked at to pick covers that share no scrap: some tenths of a second
 * @param exact where the heap gives just the cloths' area
 */
public record SeveralParameters(Reworks reworks, Covers covers, long looks, Exact exact) {

    /** The values that the search works with. */
    public static SeveralParameters standard() {
        return new SeveralParameters(Reworks.standard(), Covers.standard(), 3_000_000, Exact.standard());
    }

    /**
     * How often some are made anew together.
     *
     * @param tries attempts at each cloth at first; tuned
     * @param together so many are made anew together at most: their covers have to share no scrap, so more are tried in vain;
     *     tuned
     * @param stuck after so many reworks in vain while one is lacking, another start is better; tuned
     */
    public record Reworks(int tries, int together, int stuck) {

        private static Reworks standard() {
            return new Reworks(4, 5, 48);
        }
    }

    /**
     * How covers of each are looked for.
     *
     * @param cap the most a block may lose, as a share of its own area; tuned
     * @param beams how many blocks are followed; tuned
     * @param vain after so many reworks in vain twice as many are followed; tuned
     * @param widest so often at most, for time's sake
     */
    public record Covers(double cap, Beams beams, int vain, int widest) {

        private static Covers standard() {
            return new Covers(0.08, new Beams(200, 1000, true), 6, 3);
        }
    }

    /**
     * Where the heap gives just the cloths' area, so that edges that meet are equally long.
     *
     * @param scraps the most scraps of one cloth: blocks of more are too many; tuned
     * @param looks so many picks are looked at for each number of scraps: some hundredths of a second
     * @param blocks so many blocks are made at most, for memory's sake: some hundred megabytes
     */
    public record Exact(int scraps, int looks, int blocks) {

        private static Exact standard() {
            return new Exact(16, 100_000, 300_000);
        }
    }
}
