package hearthcloth.sew.machine;

import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.wrap.Slack;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * How a maker sews, learnt from what her work measured: how much fabric one of her seams really takes.
 *
 * <p>The median is used, since one slip moves it little, with the median distance from it as its spread
 * (docs/sources.md#median-spread).
 *
 * @param seams how many were measured
 * @param eats the median of what they took
 * @param spread half of the seams lie within this of the median
 */
public record SewingHand(int seams, Length eats, Length spread) {

    /** With fewer seams than this nothing is concluded (ours). */
    public static final int FEWEST = 6;

    /** The hand learnt from what each seam took; empty where there are too few. */
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

    /** Whether {@code seam} does not fit her hand: its loss is farther from the median than half of her seams are. */
    public boolean differsFrom(SeamKind seam) {
        Length more = eats.minus(seam.loss());
        Length far = more.isNegative() ? Length.ZERO.minus(more) : more;
        return far.isPositive() && !far.isLessThan(spread);
    }

    /**
     * How much larger than the least she plans a cloth for a gift: what each of its rows takes more than {@code planned}
     * does, and three times what chance makes of rows that are off by her spread (docs/sources.md#slack).
     */
    public Slack slack(SeamKind planned) {
        Length more = eats.minus(planned.loss()).max(Length.ZERO);
        Length chance = new Length(Rounding.UP.whole(3 * Math.sqrt(Slack.ROWS) * spread.nm()));
        return new Slack(more.times(Slack.ROWS).plus(chance).min(Slack.MOST));
    }

    /** The seam as she sews it. Both edges take half of the difference, since the row lies that much farther in. */
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
