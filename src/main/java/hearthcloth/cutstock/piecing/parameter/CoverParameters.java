package hearthcloth.cutstock.piecing.parameter;

import java.util.List;

/**
 * How one cloth is covered from a heap of any size.
 *
 * @param heaps what kinds of heaps are told apart
 * @param must how scraps that have to be in get there
 * @param dives how dives are made
 * @param laying which block a dive lays
 * @param repair how a part of a cover is made anew
 */
public record CoverParameters(Heaps heaps, Must must, DiveParameters dives, Laying laying, Repair repair) {

    /** The values that the search works with. */
    public static CoverParameters standard() {
        return new CoverParameters(
                Heaps.standard(), Must.standard(), DiveParameters.standard(), Laying.standard(), Repair.standard());
    }

    /**
     * What kinds of heaps are told apart, and how often each is tried.
     *
     * @param tight a heap is tight where what it has to spare is less than this share of the cloth: then nearly all scraps are
     *     needed; tuned
     * @param few up to so many scraps everything is tried: more take longer than anyone waits
     * @param tries dives into a tight heap before a smaller cloth is looked at and before dives look wider; tuned
     * @param widest so often a dive looks more widely than the last; tuned
     */
    public record Heaps(double tight, int few, int tries, int widest) {

        private static Heaps standard() {
            return new Heaps(0.12, 9, 4, 3);
        }
    }

    /**
     * How scraps that have to be in get there: a cover of a whole large heap would hardly ever have all of them.
     *
     * @param beside so much more net area than the cloth's is tried at a time, as shares of the cloth's in turn, of scraps that
     *     must be in and some others by lot; tuned
     * @param keen a block with all scraps that must be in may lose so much more of its area and is laid still; tuned
     */
    public record Must(List<Double> beside, double keen) {

        public Must {
            beside = List.copyOf(beside);
        }

        private static Must standard() {
            return new Must(List.of(0.3, 0.6, 0.15, 1.2), 0.01);
        }
    }

    /**
     * Which block a dive lays: the one that loses least of its area.
     *
     * @param most a block may take so much of the rectangle at least, however few scraps that leaves; tuned
     * @param perScrap of two that lose the same share the one with larger scraps goes first, so that small ones, which fit in
     *     many places, are left: a share of loss for each square unit of a mean scrap; far below a share that can be seen
     * @param lot one block in so many is passed over by lot, so that no dive is as the last; tuned
     */
    public record Laying(double most, double perScrap, int lot) {

        private static Laying standard() {
            return new Laying(0.2, 1e-6, 3);
        }
    }

    /**
     * How a part of a cover is made anew.
     *
     * @param patches how large the part is
     * @param scraps its own and unused ones are tried, so many in all; tuned
     * @param lossless a part that loses nothing is made anew once in so many times, to shake up; tuned
     * @param caps what its blocks may lose
     * @param beams how many of them are followed; tuned
     */
    public record Repair(Patches patches, int scraps, int lossless, Caps caps, Beams beams) {

        private static Repair standard() {
            return new Repair(new Patches(3, 14), 40, 4, new Caps(0.01, 0.1, 6), new Beams(60, 200, false));
        }
    }

    /**
     * How many patches the part has, by lot.
     *
     * @param fewest with fewer hardly anything else is possible
     * @param most with more the search of blocks takes too long; tuned
     */
    public record Patches(int fewest, int most) {}

    /**
     * What a repair's blocks may lose, as a share of their own area.
     *
     * @param least whatever the cover loses; tuned
     * @param most likewise; tuned
     * @param wider by lot up to so many times more than the cover loses, and once that; tuned
     */
    public record Caps(double least, double most, double wider) {}
}
