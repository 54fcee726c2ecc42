package hearthcloth.cutstock.piecing.parameter;

import java.util.List;

/**
 * What is offered where the heap does not suffice for the wished cloth, or not soon.
 *
 * @param smaller cloths smaller than wished
 * @param fabric how much fabric more would be enough
 */
public record ShortHeapParameters(Smaller smaller, Fabric fabric) {

    /** The values that the search works with. */
    public static ShortHeapParameters standard() {
        return new ShortHeapParameters(Smaller.standard(), Fabric.standard());
    }

    /**
     * Cloths smaller than wished.
     *
     * @param shares of the wished sides, tried in turn until one is found: the first is soon found in nearly every heap
     * @param nearer so much of what lacks of the wished sides is tried next after one was found; halving, since the next may
     *     be found as well
     * @param careful so much of it after one was not found; tuned
     * @param smallHeap where a heap of nearly all needed has no more scraps, the wished cloth itself is found as soon as a
     *     smaller one, so none is looked for at first; tuned
     * @param vain how often a nearer one is looked for where the wished one is known to be impossible; tuned
     */
    public record Smaller(List<Double> shares, double nearer, double careful, int smallHeap, int vain) {

        public Smaller {
            shares = List.copyOf(shares);
        }

        private static Smaller standard() {
            return new Smaller(List.of(0.9, 0.8, 0.65, 0.5, 0.35, 0.2, 0.1), 0.5, 0.2, 15, 24);
        }
    }

    /**
     * How much fabric more would be enough.
     *
     * @param steps of the search beside each strip; tuned: a second or two
     * @param growth the next strip is broader by this share of the last, as a divisor: a third more tells the need to within
     *     a third, in few trials
     */
    public record Fabric(long steps, int growth) {

        private static Fabric standard() {
            return new Fabric(20_000, 3);
        }
    }
}
