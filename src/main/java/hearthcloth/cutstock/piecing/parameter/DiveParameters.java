package hearthcloth.cutstock.piecing.parameter;

import java.util.List;

/**
 * How dives are made: blocks are laid one after another, then the last rectangle is searched as a whole.
 *
 * @param rough content with much loss, for a smaller cloth that is there at once
 * @param exact where the heap gives just the cloth's area
 * @param tight where nearly all of it is needed
 * @param plenty where there is something to spare
 * @param bolder once the cloth is covered, to cover it with less loss
 */
public record DiveParameters(Dive rough, Dive exact, Dive tight, Dive plenty, Dive bolder) {

    /** The values that the search works with. */
    public static DiveParameters standard() {
        Ends usual = new Ends(24, 0, 16);
        return new DiveParameters(
                new Dive(List.of(0.06, 0.25, 1.0), fixed(60, 300), fixed(60, 300), new Ends(20, 0, 16), Cuts.NONE),
                new Dive(List.of(0.01), fixed(400, 1000), widening(4000, 16_000), new Ends(58, -4, 34), Cuts.ALL),
                new Dive(List.of(0.06), fixed(100, 300), widening(1000, 3000), usual, Cuts.ALL),
                new Dive(
                        List.of(0.0, 0.004, 0.012, 0.03, 0.06, 0.1, 0.15, 0.25),
                        widening(200, 1000),
                        widening(200, 1000),
                        usual,
                        Cuts.LAST),
                new Dive(
                        List.of(0.0, 0.3, 0.8, 1.5),
                        widening(100, 600),
                        widening(100, 600),
                        new Ends(16, 6, 16),
                        Cuts.LAST));
    }

    private static Beams fixed(int each, int spanning) {
        return new Beams(each, spanning, false);
    }

    private static Beams widening(int each, int spanning) {
        return new Beams(each, spanning, true);
    }

    /**
     * One kind of dive. All values were tuned.
     *
     * @param caps the most a block may lose, as shares of its own area, in turn; strictest first, since small shares that look
     *     alike let in floods of blocks. A bolder dive takes one by lot, as a share of what the cover loses
     * @param laying how many blocks are followed to find some that are laid
     * @param last how many in the last rectangle, where choice is least and everything depends on it
     * @param ends when the last rectangle is reached
     * @param cuts where scraps may be cut in two
     */
    public record Dive(List<Double> caps, Beams laying, Beams last, Ends ends, Cuts cuts) {

        public Dive {
            caps = List.copyOf(caps);
        }
    }

    /** Where a scrap may be cut in two so that its offcut goes back. */
    public enum Cuts {
        /** Nowhere. */
        NONE,
        /** In the last rectangle, where few scraps are left to choose from. */
        LAST,
        /** Everywhere. */
        ALL
    }

    /**
     * When the last rectangle is reached.
     *
     * @param scraps where it needs about so many; fewer are too little choice, more take too long; tuned
     * @param step so many more, or fewer, each time a dive looks more widely; tuned
     * @param leave a laid block leaves at least about so many, so that the rest is varied enough; tuned
     */
    public record Ends(int scraps, int step, int leave) {}
}
