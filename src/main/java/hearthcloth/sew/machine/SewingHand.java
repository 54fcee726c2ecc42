package hearthcloth.sew.machine;

import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;


/**
 * How a maker sews, learnt from what her work measured: how much fabric one of her seams really eats.
 *
 * <p>The median, since one slip moves it little, with the median of the distances from it as its spread (the median
 * absolute deviation; Hampel, "The influence curve and its role in robust estimation", 1974, from memory).
 *
 * @param seams how many were measured
 * @param eats the median of what they ate
 * @param spread half of them lie within this of the median
 */
public record SewingHand(int seams, Length eats, Length spread) {

    /** From fewer seams than this nothing is concluded (ours). */
    public static final int FEWEST = 6;

    /** From what each seam ate; empty where there are too few. */
    public static Optional<SewingHand> of(List<Length> eaten) {
        if (eaten.size() < FEWEST) {
            return Optional.empty();
        }
        Length median = median(eaten);
        List<Length> off = eaten.stream()
                .map(one -> one.minus(median))
                .map(one -> one.isNegative() ? Length.ZERO.minus(one) : one)
                .toList();
        return Optional.of(new SewingHand(eaten.size(), median, median(off)));
    }

    private static Length median(List<Length> lengths) {
        List<Length> sorted = new ArrayList<>(lengths);
        Collections.sort(sorted);
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1
                ? sorted.get(half)
                : sorted.get(half - 1).plus(sorted.get(half)).dividedBy(2, Rounding.NEAREST);
    }

    /** True where {@code seam} is not hers: its loss is farther from the median than half of her seams are. */
    public boolean differsFrom(SeamKind seam) {
        Length more = eats.minus(seam.loss());
        Length far = more.isNegative() ? Length.ZERO.minus(more) : more;
        return far.isPositive() && !far.isLessThan(spread);
    }

    /** The seam as she sews it: both edges take half of the difference, since the row lies that much farther in. */
    public Optional<SeamKind> applied(SeamKind seam) {
        Length more = eats.minus(seam.loss());
        Length half = more.dividedBy(2, Rounding.NEAREST);
        Length narrow = seam.narrow().plus(half);
        Length wide = seam.wide().plus(more.minus(half));
        return seam.build() == SeamKind.Build.FELLED && narrow.isPositive() && wide.isMoreThan(narrow)
                ? Optional.of(SeamKind.felled(narrow, wide))
                : Optional.empty();
    }
}
