package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;

/**
 * Converts between lengths and real millimetres: lengths of cloth are rounded up, what is left of a cloth is rounded
 * down.
 */
final class Outward {

    /** In nanometres: far above the error of a double at these sizes (about 1e-6 nm), far below anything measurable. */
    private static final double GUARD = 0.01;

    private static final double NM_PER_MM = Unit.MILLIMETRE.nanometres();

    private Outward() {}

    static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    /** A length of cloth that is certainly enough. */
    static Length enough(double mm) {
        return new Length(Rounding.UP.whole(mm * NM_PER_MM + GUARD));
    }

    /** A length that is certainly there; also for negative lengths, so that a shortage is never understated. */
    static Length there(double mm) {
        return new Length(Rounding.DOWN.whole(mm * NM_PER_MM + GUARD));
    }
}
