package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a cloth of a size that is sold does round a gift, beside what it is sold for.
 *
 * @param largest gift of the same proportions that the smaller side ties; empty when it is too small for any
 * @param enough whether it ties the gift itself
 */
public record TradeFit(TradeSize size, Optional<Gift> largest, boolean enough) {

    /**
     * The sizes in which cloths for gifts are sold, 45 to 118 cm; larger ones are for bedding
     * (docs/sources.md#trade-sizes).
     */
    private static final List<TradeSize> FOR_GIFTS = Stream.of(TradeSize.values())
            .filter(size -> !size.least().isMoreThan(TradeSize.LARGE.least()))
            .toList();

    /** A sentence that says which of them are large enough for this gift. */
    public static String sentence(List<TradeFit> fits, Voice voice) {
        String small = listed(fits, false, voice);
        String enough = listed(fits, true, voice);
        if (enough.isEmpty()) {
            return voice.tying().tradeNone(small);
        }
        return small.isEmpty() ? voice.tying().tradeAll(enough) : voice.tying().tradeSome(enough, small);
    }

    private static String listed(List<TradeFit> fits, boolean enough, Voice voice) {
        return fits.stream()
                .filter(fit -> fit.enough == enough)
                .map(fit -> voice.write(fit.size.least(), Rounding.NEAREST))
                .collect(Collectors.joining(", "));
    }

    /** The results of all these sizes for one tie. */
    public static List<TradeFit> of(Tie tie, Gift gift, Length tail) {
        return FOR_GIFTS.stream()
                .map(size -> new TradeFit(
                        size,
                        tie.largest(gift, Size.square(size.least()), tail),
                        tie.fit(gift, Size.square(size.least()), tail).holds()))
                .toList();
    }
}
