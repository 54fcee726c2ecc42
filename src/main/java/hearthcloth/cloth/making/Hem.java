package hearthcloth.cloth.making;

import hearthcloth.measure.Length;

/**
 * A twice-turned hem: the first fold u hides the raw edge, the second fold h is what shows. It takes u + h from each
 * edge (docs/sources.md#hem-fold).
 *
 * <p>A mitred corner is sewn along x + y = 2(u + h), measured from the two raw edges; the row starts at the finished
 * corner and is √2·h long (docs/sources.md#mitre).
 */
public record Hem(Length first, Length second, Corner corner) {

    /** How a corner is finished. */
    public enum Corner {
        SQUARE,
        MITRED
    }

    /** Plies of a twice-turned edge for each ply of the cloth. */
    public static final int PLIES = 3;

    public Hem {
        if (first.isNegative() || second.isNegative()) {
            throw new IllegalArgumentException("the folds of a hem are zero or more");
        }
    }

    public static Hem square(Length first, Length second) {
        return new Hem(first, second, Corner.SQUARE);
    }

    /** What the hem eats of each edge. */
    public Length allowance() {
        return first.plus(second);
    }

    /** Where the mitre line meets either raw edge, from the raw corner: 2(u + h). */
    public Length mitreIntercept() {
        return allowance().times(2);
    }

    /** Length of the stitched mitre in millimetres: √2·h. */
    public double mitreStitchMm() {
        return Math.sqrt(2) * second.in(hearthcloth.measure.Unit.MILLIMETRE);
    }

    /** Where the trim line meets the raw edges, in millimetres, leaving {@code allowance} beside the mitre. */
    public double mitreTrimMm(Length allowance) {
        return mitreIntercept().in(hearthcloth.measure.Unit.MILLIMETRE)
                - Math.sqrt(2) * allowance.in(hearthcloth.measure.Unit.MILLIMETRE);
    }
}
