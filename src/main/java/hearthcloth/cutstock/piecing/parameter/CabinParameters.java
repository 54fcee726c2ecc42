package hearthcloth.cutstock.piecing.parameter;

/**
 * How log cabins are filled from a heap.
 *
 * @param costs what is weighed beside area lost
 * @param bars how broad bars are
 * @param lot by how much chance passes over the best way to cut a bar: the mean of how many, drawn so that fewer are likelier;
 *     tuned
 * @param patches the most patches out of one scrap: more are hard to follow at the cutting board
 */
public record CabinParameters(Costs costs, Bars bars, double lot, int patches) {

    /** The values that the search works with. */
    public static CabinParameters standard() {
        return new CabinParameters(Costs.standard(), Bars.standard(), 1.2, 4);
    }

    /**
     * What is weighed beside area lost.
     *
     * @param join a join within a bar, in units of length, times what a seam takes; tuned
     * @param uneven a bar broader or narrower than the others, as a share of the area by which it differs; tuned
     * @param alike a bar, or a hearth, that lies against its own fabric, as a share of its area: they melt into each other, and
     *     the log cabin does not read; tuned
     */
    public record Costs(double join, double uneven, double alike) {

        private static Costs standard() {
            return new Costs(60, 0.4, 0.15);
        }
    }

    /**
     * How broad bars are, and of how many parts.
     *
     * @param hearth so many bars' breadth is left for the middle; tuned by eye
     * @param broader a bar may be so much broader than usual, as a divisor: half as much more
     * @param parts the most parts of a bar, end to end
     */
    public record Bars(double hearth, int broader, int parts) {

        private static Bars standard() {
            return new Bars(1.25, 2, 3);
        }
    }
}
