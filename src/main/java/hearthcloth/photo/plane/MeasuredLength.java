package hearthcloth.photo.plane;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;

/**
 * A length read from the picture and its uncertainty: the truth lies within it in 95 of 100 cases.
 *
 * @param giveOrTake worked out from how sharply the edges show, the sheet's place and tolerance, the lens and the pixel
 *     size
 */
public record MeasuredLength(Length length, Length giveOrTake) {

    public static MeasuredLength mm(double millimetres, double deviationMm) {
        return new MeasuredLength(
                new Length(Rounding.NEAREST.whole(millimetres * 1e6)),
                new Length(Rounding.UP.whole(deviationMm * 1.96e6)));
    }
}
