package hearthcloth.wrap.tie;

import hearthcloth.cloth.Cloth;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import java.util.List;
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
    public String sentence(Size finished, Voice voice) {
        Fit fit = fit(finished);
        if (!fit.holds()) {
            String nearly = nearly(finished)
                    .map(near -> voice.tying().fitNearly(marked(near.gift(), voice)))
                    .orElse("");
            return voice.sentences(List.of(fit.sentence(voice), nearly));
        }
        return fit.tail().isLessThan(tail.usual()) && tie.isKnotted() ? shorter(fit, voice) : fit.sentence(voice);
    }

    private String shorter(Fit fit, Voice voice) {
        TyingWords words = voice.tying();
        Length least = tie.smallest(gift, tail.usual(), fit.cloth(), placing).width();
        String largest = tie.largest(gift, fit.cloth(), tail.usual())
                .map(other -> words.fitUsualEnds(marked(other, voice)))
                .orElse("");
        String shorter = words.fitShorter(
                gift.describe(voice),
                voice.write(least.minus(fit.cloth().width()), Rounding.UP),
                voice.write(fit.tail(), Rounding.DOWN),
                words.tieName(tie.name()),
                voice.write(tail.usual(), Rounding.NEAREST));
        return voice.sentences(List.of(shorter, largest));
    }

    private static String marked(Gift gift, Voice voice) {
        Length leading = voice.ruler().mark(gift.leading(), Rounding.DOWN);
        return (leading.isPositive() ? gift.like(leading) : gift).describe(voice);
    }
}
