package hearthcloth.wrap.tie;

import hearthcloth.cloth.Cloth;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import java.util.Optional;

/**
 * What a planned cloth is to be tied round, and how. A cloth a little below the least is tied with shorter ends, or shown
 * round a gift a little smaller, and says so: a few millimetres never take the picture away.
 *
 * @param tail what each knotted end needs, with the range it may honestly lie in
 */
public record Wrapped(Gift gift, Tie tie, Tail tail, Placing placing) {

    /** A gift smaller than this share of hers is another gift, and is not shown for it: 19 of 20 (ours). */
    private static final int NEAR = 20;

    /** The gift in the middle, the cloth's front outside. */
    public static Wrapped of(Gift gift, Tie tie, Tail tail) {
        return new Wrapped(gift, tie, tail, Placing.CENTRED);
    }

    /** How a cloth fits the gift, with its ends as long as it has them. */
    public Fit fit(Cloth cloth) {
        return fit(cloth.finished());
    }

    private Fit fit(Size finished) {
        return tie.fit(gift, finished, tail, placing);
    }

    /** The cloth tied; round a gift a little smaller where it is a little too small; empty where it is far too small. */
    public Optional<Fold> fold(Cloth cloth) {
        Fit fit = fit(cloth);
        return (fit.holds() ? Optional.of(fit) : nearly(cloth.finished())).map(TiedFold::of);
    }

    /** Tied round the largest gift of these proportions, where that is nearly hers; by bisection to the nanometre. */
    private Optional<Fit> nearly(Size finished) {
        long high = gift.leading().nm();
        long low = high - high / NEAR;
        boolean isTiny = gift.longestSide()
                .minus(gift.longestSide().dividedBy(NEAR, Rounding.UP))
                .isLessThan(Gift.SHORTEST);
        if (isTiny || !smaller(low, finished).holds()) {
            return Optional.empty();
        }
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (smaller(middle, finished).holds()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(smaller(low, finished));
    }

    private Fit smaller(long leading, Size finished) {
        return tie.fit(gift.like(new Length(leading)), finished, tail, placing);
    }

    /** How a cloth of this size does: that it ties and what is to spare, or what is short and what happens then. */
    public String sentence(Size finished, Ruler ruler) {
        Fit fit = fit(finished);
        if (!fit.holds()) {
            return fit.sentence(ruler)
                    + nearly(finished)
                            .map(near -> " It does tie round " + marked(near.gift(), ruler) + ".")
                            .orElse("");
        }
        return fit.tail().isLessThan(tail.usual()) && tie.isKnotted() ? shorter(fit, ruler) : fit.sentence(ruler);
    }

    private String shorter(Fit fit, Ruler ruler) {
        Length least = tie.smallest(gift, tail.usual(), fit.cloth(), placing).width();
        String largest = tie.largest(gift, fit.cloth(), tail.usual())
                .map(other -> " With the usual ends it ties round " + marked(other, ruler) + ".")
                .orElse("");
        return "This cloth is " + ruler.write(least.minus(fit.cloth().width()), Rounding.UP)
                + " smaller than it should be for " + gift.describe(ruler) + " with the " + tie.words()
                + ". It still ties: " + ruler.write(fit.tail(), Rounding.DOWN)
                + " is left at each knotted corner for the knot and its end, instead of "
                + ruler.write(tail.usual(), Rounding.NEAREST) + "." + largest;
    }

    private static String marked(Gift gift, Ruler ruler) {
        Length leading = ruler.mark(gift.leading(), Rounding.DOWN);
        return (leading.isPositive() ? gift.like(leading) : gift).describe(ruler);
    }
}
