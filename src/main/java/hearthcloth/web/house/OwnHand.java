package hearthcloth.web.house;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.sew.machine.SewingHand;
import hearthcloth.store.Store;
import hearthcloth.web.gift.MeasuredSeams;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.framing.FramingWords;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What her seams eat, with the measures it was learnt from.
 *
 * @param from one line a cloth that was measured
 */
public record OwnHand(List<From> from, Optional<SewingHand> hand, Settings settings) {

    /** The seams of one cloth: what each ate, in her unit. */
    public record From(String cloth, String eaten) {}

    static OwnHand of(Store store, Settings settings) {
        MeasuredSeams seams = MeasuredSeams.of(store);
        List<From> from = seams.cloths().stream()
                .map(cloth -> new From(
                        cloth.name(),
                        cloth.eaten().stream().map(one -> fine(settings, one)).collect(Collectors.joining(", "))))
                .toList();
        return new OwnHand(from, seams.hand(), settings);
    }

    private static String fine(Settings settings, Length length) {
        Ruler ruler = settings.ruler().isMetric() ? settings.ruler() : Ruler.SIXTEENTHS;
        return settings.voice().by(ruler).write(length, Rounding.NEAREST);
    }

    public String sentence() {
        FramingWords words = FramingWords.in(settings.pages());
        return hand.map(hand -> words.handEats(
                        fine(settings, hand.eats()),
                        String.valueOf(hand.seams()),
                        fine(settings, hand.spread()),
                        fine(settings, settings.usualSeam().loss())))
                .orElseGet(() -> words.handUnknown(String.valueOf(SewingHand.FEWEST)));
    }

    /** True where planning with her own figure makes a difference that is more than scatter. */
    public boolean isOffered() {
        return hand.filter(hand -> hand.differsFrom(settings.usualSeam())).isPresent();
    }

    public boolean isUsed() {
        return settings.eats().isPresent();
    }
}
