package hearthcloth.plan.parameter;

import java.util.List;

/**
 * The values by which the planner decides what to try and what to show. "Tuned" means set by trial; "chosen" means ours, by looking at what was proposed.
 *
 * @param effort how many drafts are searched, and for how long
 * @param drafting which drafts there are, and in which order they are tried
 * @param hearth when a hearth is seen, and what may be paid for it
 * @param gallery which of those found stand beside each other
 * @param shortage what is done where fabric is short
 */
public record ProposalParameters(Effort effort, Drafting drafting, Hearth hearth, Gallery gallery, Shortage shortage) {

    /** The values that the planner works with. */
    public static ProposalParameters standard() {
        return new ProposalParameters(
                Effort.standard(), Drafting.standard(), Hearth.standard(), Gallery.standard(), Shortage.standard());
    }

    /**
     * How many drafts the planner searches and how long. Each was tuned; what more of it earns, {@code ./check ablate search}
     * tells for the search itself.
     *
     * @param tries drafts that are searched for a wished size; half as many for each of two sizes
     * @param quickTries drafts that are searched to learn whether a size can be made at all
     * @param hearths layouts tried for a hearth that stands out
     * @param firstSteps steps of the search for each draft
     * @param laterSteps steps of the longer search of the best, for each unit of effort
     */
    public record Effort(int tries, int quickTries, int hearths, long firstSteps, long laterSteps) {

        /** The effort that the planner works with. */
        public static Effort standard() {
            return new Effort(96, 24, 3, 60, 150);
        }
    }

    /**
     * Which drafts there are, and in which order they are tried.
     *
     * @param layouts which widths, rounds and hearths are tried
     * @param colours how many plans of colour are tried
     * @param estimate what a draft costs before it is searched
     * @param outside how a wished fabric is brought where it shows
     */
    public record Drafting(Layouts layouts, Colours colours, Estimate estimate, Outside outside) {

        private static Drafting standard() {
            return new Drafting(
                    new Layouts(8, new Steps(5, 16), new Steps(4, 12), new Steps(2, 8)),
                    new Colours(8, 5, 25, 3, 16),
                    new Estimate(10, 20, 6, 0.36, 3),
                    new Outside(List.of(0.8, 0.5), 0.05));
        }
    }

    /**
     * Which widths, rounds and hearths are tried where the wish leaves them open; chosen.
     *
     * @param mostRounds the most rounds that are proposed
     * @param centimetres widths of bars as they are cut, in whole centimetres
     * @param halfInches the same in half inches
     * @param hearths sides of hearths where no size is wished, in fours of centimetres or whole twos of inches
     */
    public record Layouts(int mostRounds, Steps centimetres, Steps halfInches, Steps hearths) {}

    /** Whole steps of a ruler, from the first to the last. */
    public record Steps(int first, int last) {}

    /**
     * How many plans of colour are tried; tuned, since each takes a share of the time.
     *
     * @param chosenEach drafts of each look whose bars are chosen before anything is cut
     * @param keptEach those of them that are kept, under a name that is true
     * @param wishedEach drafts of each look where such a plan of colour is wished
     * @param hearths fabrics that are tried for the hearth of each layout
     * @param compared fabrics that are compared for it
     */
    public record Colours(int chosenEach, int keptEach, int wishedEach, int hearths, int compared) {}

    /**
     * What a draft costs before it is searched, in joins; it only sorts. Tuned.
     *
     * @param tight a fabric of which all is wanted counts so many joins, and far less where less is, by the fourth power
     * @param bars so many bars count like a join
     * @param unlike a hearth so many times as broad as the cloth would count like one join less than this: taste
     * @param hearth the breadth of the best hearth, as a share of the cloth's: a good third
     * @param ready taste counts so many times less where strips are there in their width already
     */
    public record Estimate(double tight, double bars, double unlike, double hearth, double ready) {}

    /**
     * How a wished fabric is brought where it shows on the tied gift; chosen.
     *
     * @param shares of the fabric that may be used up, each tried: seams, joins and leeway take some of it
     * @param step less than this share of all that is seen is not worth a join
     */
    public record Outside(List<Double> shares, double step) {
        public Outside {
            shares = List.copyOf(shares);
        }
    }

    /**
     * When a hearth is seen, and what may be paid for it.
     *
     * @param tried the most fabrics tried for the hearth of one layout; tuned
     * @param little less than this is amiss in colours that lie well, in millimetres of edge; chosen
     * @param seen the least share of its edge at which a hearth is seen; chosen
     * @param moreCuts the share of cuts that the first may have more than the fewest, if its hearth then stands out; chosen
     * @param fewMore so many cuts more are always allowed for it; chosen
     */
    public record Hearth(int tried, double little, double seen, double moreCuts, int fewMore) {

        private static Hearth standard() {
            return new Hearth(4, 100, 0.8, 0.1, 2);
        }
    }

    /**
     * Which of those found stand beside each other.
     *
     * @param worth what faults count like
     * @param apart how different they are to be
     * @param unlike when two cloths differ
     * @param asLarge the first is at least this share of the largest of its joins; chosen
     * @param points the most things said of one proposal; chosen
     */
    public record Gallery(Worth worth, Apart apart, Unlike unlike, double asLarge, int points) {

        private static Gallery standard() {
            return new Gallery(new Worth(20, 3, 1000), new Apart(6, 3, 3, 4), new Unlike(8, 12, 0.2, 0.4), 0.98, 2);
        }
    }

    /**
     * What faults count like; chosen.
     *
     * @param cuts so many cuts count like a join
     * @param mixedBars so many bars of chance mixtures do
     * @param amissMm so many millimetres of edge do that are amiss in their colours
     */
    public record Worth(double cuts, double mixedBars, double amissMm) {

        /** What a cut counts like, in millimetres of edge that are amiss. */
        public double mmOfCut() {
            return amissMm / cuts;
        }
    }

    /**
     * How different proposals are to be, paid in joins; chosen.
     *
     * @param samePicture so many joins more are taken before two pictures that pass for one stand beside each other
     * @param moreJoins joins that a proposal may have above the best because it is different
     * @param steps the most steps of what is seen that count, a join each
     * @param ways the most ways of differing that count, half a join each
     */
    public record Apart(double samePicture, int moreJoins, int steps, int ways) {}

    /**
     * When two cloths differ; chosen.
     *
     * @param looks below this mean distance in CIELAB two pictures pass for one cloth
     * @param grid both are compared at so many places along each side
     * @param bars a bar wider or narrower by this share is a visible difference
     * @param fabrics two cloths differ in fabric when this share of them is in other fabrics
     */
    public record Unlike(double looks, int grid, double bars, double fabrics) {}

    /**
     * What is done where fabric is short.
     *
     * @param turns the most times that fabric is added until a draft can be made; tuned
     * @param said the most shortages that are named; chosen
     * @param beyond steps of size tried beyond the one that bisection found, since sometimes a larger cloth can be made where
     *     a smaller one cannot; tuned
     */
    public record Shortage(int turns, int said, int beyond) {

        private static Shortage standard() {
            return new Shortage(6, 3, 3);
        }
    }
}
