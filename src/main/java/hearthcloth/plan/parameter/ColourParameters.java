package hearthcloth.plan.parameter;

import hearthcloth.plan.model.Contrast;

/**
 * The values by which colours are judged and laid. "Chosen" means ours, found by looking at cloths (docs/sources.md#colour-figures);
 * "tuned" means set by trial, on the heaps of docs/colour.md where nothing else is said.
 *
 * @param looks from when on the eye sees a difference
 * @param dial what an edge counts, for each wished contrast
 * @param faults what else counts beside edges
 * @param names when the name of a plan of colour is true
 * @param choosing how a fabric is chosen for each bar before anything is cut
 * @param search how long and in what steps is searched
 */
public record ColourParameters(Looks looks, Dial dial, Faults faults, Names names, Choosing choosing, Search search) {

    /** The values that planning works with. */
    public static ColourParameters standard() {
        return new ColourParameters(
                Looks.standard(),
                Dial.standard(),
                Faults.standard(),
                Names.standard(),
                Choosing.standard(),
                Search.standard());
    }

    /**
     * From when on the eye sees a difference.
     *
     * @param standsOut a hearth stands out from this CIEDE2000 on; chosen
     * @param standsOutLightness and from so many points of L*, since edges are seen by lightness first; chosen
     * @param alike two neighbours look nearly alike below this CIEDE2000; chosen
     * @param unlike from this CIEDE2000 on two fabrics count as wholly unlike, where a quiet cloth is wished or a lively one; chosen
     * @param figures how surely the edge of a figured fabric is seen
     */
    public record Looks(double standsOut, double standsOutLightness, double alike, double unlike, Figures figures) {

        private static Looks standard() {
            return new Looks(20, 15, 15, 40, new Figures(4, 40));
        }
    }

    /**
     * How surely the edge of a figured fabric is seen: it comes nearer to its neighbour by its own spread, as one of two colours in
     * equal parts does, as far as its figures are seen one by one.
     *
     * @param blendedMm figures that repeat closer blend into one colour, in millimetres: a repeat of 4 mm is near 12 cycles to
     *     the degree from 3 m, beyond which colours are not told apart (docs/sources.md#colour-acuity)
     * @param wholeMm figures that repeat farther count wholly, since along a bar of their breadth there may be but one; chosen
     */
    public record Figures(double blendedMm, double wholeMm) {

        /** The share of a spread that counts, from 0 to 1. */
        public double seen(double repeatMm) {
            return Math.max(0, Math.min(1, (repeatMm - blendedMm) / (wholeMm - blendedMm)));
        }
    }

    /**
     * What a millimetre of edge counts, in millimetres that are amiss.
     *
     * @param unseen of the hearth's edge that does not stand out
     * @param own of the hearth's edge that meets its own fabric, on top of that
     * @param same between two bars of one fabric
     * @param alike between two bars of other fabrics that look wholly alike; less, the more they differ
     * @param unlike between two that look wholly unlike, the hearth twice; less, the more they are alike; negative where
     *     it is wished
     */
    public record Edges(double unseen, double own, double same, double alike, double unlike) {}

    /**
     * The edges for each wished contrast; chosen. A fabric that meets itself is one, by which the others are measured: a hearth
     * lost in its neighbours is twice that, since she looks there first, and two fabrics that pass for one are half of it.
     *
     * @param most as contrasty as can be
     * @param reads the log cabin reads
     * @param easy the same, and fabrics that look alike may lie beside each other
     * @param quiet as calm as can be, with a hearth of another fabric
     * @param melts one field
     */
    public record Dial(Edges most, Edges reads, Edges easy, Edges quiet, Edges melts) {

        private static Dial standard() {
            return new Dial(
                    new Edges(2, 2, 1, 0.5, -0.5),
                    new Edges(2, 2, 1, 0.5, 0),
                    new Edges(1, 2, 1, 0, 0),
                    new Edges(0, 0.5, 0.5, 0, 1),
                    new Edges(0, 0, 0, 0, 1));
        }

        /** What edges count where this contrast is wished. */
        public Edges of(Contrast wanted) {
            return switch (wanted) {
                case MOST -> most;
                case READS -> reads;
                case EASY -> easy;
                case QUIET -> quiet;
                case MELTS -> melts;
            };
        }
    }

    /**
     * What else counts beside edges.
     *
     * @param less what a millimetre counts on the back and on the tied gift, beside one on the flat front; chosen, since the
     *     front is looked at most
     * @param mixed what a bar of several fabrics counts, in millimetres of edge; chosen
     * @param balanced how far lightness may lie off the middle at no cost, as a share of the side; chosen
     * @param unbalanced what a whole side beyond that would count, in millimetres of edge: 10 for each hundredth; chosen
     * @param worth less edge than this that shows when tied is not worth a word, in millimetres; chosen
     * @param proven so near to the bound a cloth counts as proven, in millimetres of edge, since half a one is nothing to see
     */
    public record Faults(double less, double mixed, double balanced, double unbalanced, double worth, double proven) {

        private static Faults standard() {
            return new Faults(0.5, 100, 0.03, 1000, 20, 0.5);
        }
    }

    /**
     * When the name of a plan of colour is true; all chosen.
     *
     * @param lightAndDark the least points of L* between the darkest light and the lightest dark fabric
     * @param bright the least chroma of a bright fabric, C* of CIELAB
     * @param scattered the most of the seams between bars at which a scattered fabric may meet itself, as a share
     * @param leastAccent an accent is at least this share of the cloth
     * @param mostAccent and at most this; both a hundredth wider than what is planned ({@link Accent})
     * @param arm bars in the arm of a spiral: one more than go round once
     */
    public record Names(
            double lightAndDark, double bright, double scattered, double leastAccent, double mostAccent, int arm) {

        private static Names standard() {
            return new Names(10, 30, 0.03, 0.02, 0.09, 5);
        }
    }

    /**
     * How a fabric is chosen for each bar before anything is cut.
     *
     * @param usable the share of a fabric's area that may be planned with: seams, joins and odd shapes take the rest; chosen
     * @param join what a join costs beside colour, in millimetres of edge: more than any bar's colour is worth
     * @param mostFabrics the most fabrics that are scattered; chosen
     * @param accent where one bright scrap goes
     */
    public record Choosing(double usable, double join, int mostFabrics, Accent accent) {

        private static Choosing standard() {
            return new Choosing(0.7, 2000, 12, new Accent(0.03, 0.08, 3, 100, 10));
        }
    }

    /**
     * Where one bright scrap goes; chosen.
     *
     * @param least the least share of the cloth that it takes
     * @param most the most
     * @param places the most bars
     * @param side what a side that it lies on is worth, beside one round farther out, which is 1: sides come first
     * @param place what each bar costs in the same terms, since fewer are seen sooner
     */
    public record Accent(double least, double most, int places, int side, int place) {}

    /**
     * How long and in what steps is searched. Each was tuned; a look is one change or branch.
     *
     * @param chosen looks at the bars of one layout, before anything is cut: a fraction of a millisecond
     * @param exchanged looks at the exchanges of one cloth that is cut: some milliseconds
     * @param turned looks at which face of a patch lies outside, where that is free: some milliseconds
     * @param bound looks for the bound of a finished cloth: some milliseconds
     * @param shaken exchanges tried at random before a new descent
     * @param branching how bars are branched over
     */
    public record Search(long chosen, int exchanged, int turned, long bound, int shaken, Branching branching) {

        private static Search standard() {
            return new Search(1000, 1500, 4000, 20_000, 4, new Branching(3, 2000, 200, 2000, 8));
        }
    }

    /**
     * How the fabrics of bars are branched over; tuned on the jobs of {@code benchmarks/run colour-cpsat}.
     *
     * @param shaken bars given another fabric at random before a new descent
     * @param descents the most looks for descents; the rest is for branches
     * @param quick the most branches before any descent but the first: most problems end here
     * @param many from so many looks on costs are spread, which takes as long as a thousand of them
     * @param rounds of spreading costs: after these hardly anything moves any more
     */
    public record Branching(int shaken, long descents, long quick, long many, int rounds) {}
}
