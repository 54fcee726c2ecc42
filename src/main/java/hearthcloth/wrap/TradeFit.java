package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
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
    public static String sentence(List<TradeFit> fits, Ruler ruler) {
        String small = listed(fits, false, ruler);
        String enough = listed(fits, true, ruler);
        if (enough.isEmpty()) {
            return "Every ready-made size for gifts is too small here: " + small + ".";
        }
        return "Ready-made sizes that are large enough: " + enough
                + (small.isEmpty() ? "." : ". Too small: " + small + ".");
    }

    private static String listed(List<TradeFit> fits, boolean enough, Ruler ruler) {
        return fits.stream()
                .filter(fit -> fit.enough == enough)
                .map(fit -> ruler.write(fit.size.least(), Rounding.NEAREST))
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
