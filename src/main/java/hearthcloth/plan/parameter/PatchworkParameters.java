package hearthcloth.plan.parameter;

import java.util.List;

/**
 * The values by which cloths of scraps and of blocks are planned. "Tuned" means set by trial;
 * "chosen" means ours, by looking at what was proposed.
 *
 * @param effort how long is searched
 * @param free how arrangements of scraps are told apart, and which sizes are tried
 * @param blocks how large blocks are
 * @param bands how broad bands are
 * @param choice which scraps of a heap an arrangement is made of
 */
public record PatchworkParameters(Effort effort, Free free, Sizes blocks, Bands bands, Choice choice) {

    /** The values that patchwork is planned with. */
    public static PatchworkParameters standard() {
        return new PatchworkParameters(
                new Effort(30_000, 200_000, 30_000, 300_000, 300),
                new Free(0.85, 0.7, 0.9, List.of(0.99, 0.98, 0.97, 0.96, 0.94, 0.92, 0.9, 0.87), 1_500),
                new Sizes(0.55, 0.93, 0.85),
                new Bands(1.3, 2, 10, 0.15, List.of(0, -1, 1, -2)),
                new Choice(1.45, 9, 3));
    }

    /**
     * How long is searched, in steps of the search for a tree of scraps; all tuned.
     *
     * @param steps of one search, for each unit of effort
     * @param patient steps after which nobody waits for a first cloth any more: of sixty scraps that hardly suffice some take
     *     55 000
     * @param quick steps of a search that only asks whether a size can be made
     * @param fabric steps of the search for how much more fabric is enough
     * @param trials at all blocks of a cloth, for each unit of effort
     */
    public record Effort(long steps, long patient, long quick, long fabric, long trials) {}

    /**
     * How arrangements of scraps are told apart, and which sizes are tried.
     *
     * @param alike two arrangements of which more than this share of scraps is the same are one; chosen
     * @param manyMore one arrangement has many more patches than another where the other has less than this share of them;
     *     chosen
     * @param likely a cloth of this share of the net area can usually be made at once; tuned
     * @param smaller sides of the smaller cloths that are tried where the wished one is not found, as shares of it; chosen
     * @param changes of places that are tried in arranging, for each patch; tuned
     */
    public record Free(double alike, double manyMore, double likely, List<Double> smaller, long changes) {
        public Free {
            smaller = List.copyOf(smaller);
        }
    }

    /**
     * How large blocks are; chosen.
     *
     * @param middle the side of the blocks together, of the cloth's, where scraps lie round them
     * @param smaller sizes tried for the largest cloth, from the largest: each is so much of the one before
     * @param first the side of the first size tried, of what the fabric would make without any loss
     */
    public record Sizes(double middle, double smaller, double first) {}

    /**
     * How broad bands are.
     *
     * @param breadth a band is so much broader than the side of a square as large as the scrap in the middle; tuned
     * @param fewest the fewest bands; chosen
     * @param most the most; chosen
     * @param uneven the broadest band is so much of the even breadth more, the narrowest so much less, at most; chosen
     * @param more numbers of bands tried, in turn, beside the usual one; tuned
     */
    public record Bands(double breadth, int fewest, int most, double uneven, List<Integer> more) {
        public Bands {
            more = List.copyOf(more);
        }
    }

    /**
     * Which scraps of a heap an arrangement is made of; chosen.
     *
     * @param toChoose so much more than the cloth's net area is left to choose among
     * @param fewest about so many patches a cloth has at least where sizes are to be alike
     * @param parts the most patches out of one piece
     */
    public record Choice(double toChoose, double fewest, int parts) {}
}
