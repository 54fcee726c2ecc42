package hearthcloth.cutstock.search;

/**
 * The values by which the search for the fewest joins decides, by what they decide. "Tuned" means set by trial on the problem
 * sets of benchmarks/, whose results lie beside them; what each earns {@code ./check ablate search} tells. No value changes what
 * a plan is allowed to be, only how soon a good one is found.
 *
 * @param attempts how many ways to begin are searched, and for how long
 * @param costs what is weighed beside joins while searching
 * @param piecing how one bar is pieced
 * @param reduction how often whole sets of strips and bars are divided anew
 * @param walk how much worse an attempt may become on the way
 */
public record SearchParameters(Attempts attempts, Costs costs, Piecing piecing, Reduction reduction, Walk walk) {

    /** The values that the search works with. */
    public static SearchParameters standard() {
        return new SearchParameters(
                Attempts.standard(), Costs.standard(), Piecing.standard(), Reduction.standard(), Walk.standard());
    }

    /**
     * How many ways to begin are searched, and for how long.
     *
     * @param placings placings of the blocks that are searched; tuned
     * @param mostPlacings placings that are tried at most to get as many different ones; tuned
     * @param kept attempts that are searched to the end; tuned
     * @param variety of all placings but the first: 0 is always the best spot, 1 any of the best; tuned
     * @param firstWalk steps of the first search from each attempt; tuned
     * @param generous so many times more pieces are considered when no plan is found; tuned
     */
    public record Attempts(int placings, int mostPlacings, int kept, double variety, int firstWalk, int generous) {

        private static Attempts standard() {
            return new Attempts(4, 16, 3, 0.4, 200, 4);
        }
    }

    /**
     * What is weighed beside joins while searching, in joins. All are far below one join, so that no saving of fabric is bought
     * with a join; but for what is lacking, which is more.
     *
     * @param perCut a cut; tuned
     * @param perSliver losing as much area in slivers as all demands have together; tuned
     * @param perTouched cutting into plots of as much area as all demands have together; tuned
     * @param second the weight of all these in the order of plans; tuned
     * @param lacking a mean bar's length that is lacking, at least; tuned
     * @param smallFirst the weight of a free rectangle's area beside the room that a block spoils, so that of equal spots the
     *     smaller is used
     */
    public record Costs(
            double perCut, double perSliver, double perTouched, double second, double lacking, double smallFirst) {

        private static Costs standard() {
            return new Costs(0.02, 0.01, 0.004, 0.05, 4, 1e-3);
        }
    }

    /**
     * How one bar is pieced.
     *
     * @param stepwise one bar in so many is pieced part by part; tuned
     * @param attempts tries for one bar; tuned
     * @param spread the cost, in joins, of the squared length used of a strip, in mean bars: it favours exact fits and long
     *     remainders; tuned
     */
    public record Piecing(int stepwise, int attempts, double spread) {

        private static Piecing standard() {
            return new Piecing(3, 3, 0.1);
        }
    }

    /**
     * How often whole sets of strips and bars are divided anew to save a join.
     *
     * @param first reworks before the first time; tuned
     * @param every reworks between two times; tuned
     * @param divisions divisions tried for one set; tuned
     * @param fresh the most strips not opened yet that take part; tuned
     */
    public record Reduction(int first, int every, int divisions, int fresh) {

        private static Reduction standard() {
            return new Reduction(32, 256, 300, 64);
        }
    }

    /**
     * How much worse an attempt may become on the way, in joins ({@link RuinAndRecreate}).
     *
     * @param warmest the tolerance at the start of a round: less than half a join; tuned
     * @param coolest at its end: half a cut; tuned
     */
    public record Walk(double warmest, double coolest) {

        private static Walk standard() {
            return new Walk(0.4, 0.01);
        }
    }
}
