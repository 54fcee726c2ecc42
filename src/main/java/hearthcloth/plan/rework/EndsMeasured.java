package hearthcloth.plan.rework;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import java.util.Optional;

/**
 * One side of the work as she measured it at both ends, for example its width along the top and along the bottom.
 *
 * @param planned what it was to measure
 */
public record EndsMeasured(Length first, Length second, Length planned) {

    /** Two ends that differ by no more than this are averaged: 4 mm, about an eighth of an inch each way (ours). */
    private static final Length AVERAGED = Length.mm(4);
    /** A measure farther than this share of the plan is asked about: a quarter (ours). */
    private static final int FAR = 4;
    /** A slip is recognised where it brings the measure this near to the plan: a tenth (ours). */
    private static final int NEAR = 10;

    /** What the two ends say. */
    public sealed interface Reading {

        /** The side measures this; the average where the two ends differ a little. */
        record Agreed(Length side, boolean averaged) implements Reading {}

        /** The work is out of square: its longer end is to be trimmed to {@code trimTo} before it is measured again. */
        record OutOfSquare(Length trimTo, Length by) implements Reading {}

        /** The measure is far from the plan. {@code meant} is what she may have meant, where a slip is recognised. */
        record Doubtful(Length written, Slip slip, Optional<Length> meant) implements Reading {}
    }

    /** A slip of the pen that explains a measure far from the plan. */
    public enum Slip {
        A_TENTH,
        TEN_TIMES,
        INCHES_FOR_CENTIMETRES,
        CENTIMETRES_FOR_INCHES,
        UNKNOWN
    }

    /** What to make of it: first whether it can be meant, then whether the work is square. */
    public Reading reading() {
        for (Length one : new Length[] {first, second}) {
            if (apart(one, planned).times(FAR).isMoreThan(planned)) {
                return doubtful(one);
            }
        }
        Length apart = apart(first, second);
        if (apart.isMoreThan(AVERAGED)) {
            return new Reading.OutOfSquare(first.min(second), apart);
        }
        return new Reading.Agreed(first.plus(second).dividedBy(2, Rounding.NEAREST), apart.isPositive());
    }

    private Reading doubtful(Length written) {
        Length inches = written.times(254).dividedBy(100, Rounding.NEAREST);
        Length centimetres = written.times(100).dividedBy(254, Rounding.NEAREST);
        Length tenfold = written.times(10);
        Length tenth = written.dividedBy(10, Rounding.NEAREST);
        if (isNear(tenfold)) {
            return new Reading.Doubtful(written, Slip.A_TENTH, Optional.of(tenfold));
        }
        if (isNear(tenth)) {
            return new Reading.Doubtful(written, Slip.TEN_TIMES, Optional.of(tenth));
        }
        if (isNear(inches)) {
            return new Reading.Doubtful(written, Slip.INCHES_FOR_CENTIMETRES, Optional.of(inches));
        }
        if (isNear(centimetres)) {
            return new Reading.Doubtful(written, Slip.CENTIMETRES_FOR_INCHES, Optional.of(centimetres));
        }
        return new Reading.Doubtful(written, Slip.UNKNOWN, Optional.empty());
    }

    private boolean isNear(Length length) {
        return !apart(length, planned).times(NEAR).isMoreThan(planned);
    }

    private static Length apart(Length one, Length other) {
        return one.max(other).minus(one.min(other));
    }

    /** Whether width and height were written the wrong way round: each is nearer to the other's plan than to its own. */
    public static boolean isSwapped(Size written, Size planned) {
        Length asWritten = apart(written.width(), planned.width()).plus(apart(written.height(), planned.height()));
        Size turned = written.turned();
        Length asTurned = apart(turned.width(), planned.width()).plus(apart(turned.height(), planned.height()));
        boolean far = asWritten.isMoreThan(AVERAGED.times(2));
        return far && asTurned.times(FAR).isLessThan(asWritten);
    }
}
