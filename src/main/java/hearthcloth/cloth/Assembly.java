package hearthcloth.cloth;

import hearthcloth.measure.Size;

/**
 * A flat rectangle of work: one patch, or two assemblies joined by one straight seam. Immutable.
 *
 * <p>Sizes are finished sizes, joining line to joining line; folds that need what seams and hem take ask {@link
 * Making}. Every answer about a cloth is a {@link Fold}; nothing is stored beside the tree.
 */
public sealed interface Assembly permits Patch, Seam {

    /**
     * One question asked of a whole tree. A third kind of node would add a method here, so that no fold could forget
     * it.
     */
    interface Fold<R> {
        R patch(Patch patch);

        R seam(Seam seam, R first, R second);
    }

    /** Answers {@code fold} bottom-up: every patch and every seam once, children before parents. */
    <R> R fold(Fold<R> fold);

    /** The finished size: what shows once every seam is sewn. */
    Size size();
}
