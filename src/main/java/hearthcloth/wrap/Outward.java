package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;


/** The one way in and out of real millimetres: cloth leaves rounded up, what is left of it rounded down. */
final class Outward {

    /** Nanometres: far above the error of a double at these sizes (some 1e-6 nm), far below anything measurable. */
    private static final double GUARD = 0.01;

    private static final double NM_PER_MM = Unit.MILLIMETRE.nanometres();

    private Outward() {}

    static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    /** A length of cloth that is surely enough. */
    static Length enough(double mm) {
        return new Length(Rounding.UP.whole(mm * NM_PER_MM + GUARD));
    }

    /** A length that is surely there; also for negative lengths (what is short is never understated). */
    static Length there(double mm) {
        return new Length(Rounding.DOWN.whole(mm * NM_PER_MM + GUARD));
    }
}
