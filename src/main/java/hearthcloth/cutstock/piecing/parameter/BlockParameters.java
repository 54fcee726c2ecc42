package hearthcloth.cutstock.piecing.parameter;

/**
 * How blocks are searched: two without a common scrap whose edges differ by little make a larger one.
 *
 * @param slack edges may differ by so many times the share that a block may lose: a block wider than the strip that is trimmed
 *     off one of its parts loses less of its own area; tuned
 * @param keys which block is followed first
 * @param spare the price of what the heap has to spare
 * @param blocks so many blocks are made at most, for memory's sake: some 40 megabytes
 * @param same so many blocks of the same scraps are kept, in different sizes and arrangements; tuned
 */
public record BlockParameters(double slack, Keys keys, Spare spare, int blocks, int same) {

    /** The values that the search works with. */
    public static BlockParameters standard() {
        return new BlockParameters(3, Keys.standard(), Spare.standard(), 400_000, 24);
    }

    /**
     * Which block is followed first: the one that loses the least share of its own area, with these exceptions.
     *
     * @param jumble chance makes a share up to so much larger, as a share of it, so that no search is as the last; tuned
     * @param jitter what tells apart blocks that lose the same counts as so large a share; far below a share that can be seen
     * @param lot of that, so much is chance; tuned
     * @param ease and one part in so many is how easily its scraps find partners, hard ones first; tuned
     * @param keen so much less a block seems to lose that has all scraps which must be in, as a share; tuned
     */
    public record Keys(double jumble, double jitter, double lot, int ease, double keen) {

        private static Keys standard() {
            return new Keys(0.1, 1e-5, 0.3, 3, 0.4);
        }
    }

    /**
     * The price of scraps' area that becomes neither patch nor loss but goes back, though what the heap has to spare is not
     * endless.
     *
     * @param price all there is to spare counts as so large a share of the rectangle; tuned
     * @param dearest a unit of it never counts as more than this share of a unit lost; tuned
     */
    public record Spare(double price, double dearest) {

        private static Spare standard() {
            return new Spare(0.03, 0.3);
        }
    }
}
