package hearthcloth.web.house;

import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.sew.machine.SewingHand;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What her seams eat, with the measures it was learnt from.
 *
 * @param from one line a cloth that was measured
 */
public record OwnHand(List<From> from, Optional<SewingHand> hand, Settings settings) {

    /** The seams of one cloth: what each ate, in her unit. */
    public record From(String cloth, String eaten) {}

    static OwnHand of(Store store, Settings settings) {
        List<From> from = new ArrayList<>();
        List<Length> all = new ArrayList<>();
        for (SavedCloth cloth : store.cloths().all()) {
            SeamKind seam = cloth.document().design().making().seam();
            if (seam.build() != SeamKind.Build.FELLED || ExampleMark.isOn(cloth.id())) {
                continue;
            }
            List<Length> eaten = cloth.document().bench().measures().stream()
                    .map(measure -> seam.loss().plus(measure.planned()).minus(measure.real()))
                    .toList();
            if (!eaten.isEmpty()) {
                all.addAll(eaten);
                from.add(new From(
                        cloth.name(),
                        String.join(
                                ", ",
                                eaten.stream().map(one -> fine(settings, one)).toList())));
            }
        }
        return new OwnHand(from, SewingHand.of(all), settings);
    }

    private static String fine(Settings settings, Length length) {
        Ruler ruler = settings.ruler().isMetric() ? settings.ruler() : Ruler.SIXTEENTHS;
        return ruler.write(length, Rounding.NEAREST);
    }

    public String sentence() {
        return hand.map(hand -> "Your seams take up " + fine(settings, hand.eats()) + " on average (median of "
                        + hand.seams() + "); half of them were within " + fine(settings, hand.spread())
                        + " of that. The usual seam takes up "
                        + fine(settings, settings.usualSeam().loss()) + ".")
                .orElseGet(() -> "Once " + SewingHand.FEWEST
                        + " seams are measured on the Sew page, this says what your seams really take up.");
    }

    /** True where planning with her own figure makes a difference that is more than scatter. */
    public boolean isOffered() {
        return hand.filter(hand -> hand.differsFrom(settings.usualSeam())).isPresent();
    }

    public boolean isUsed() {
        return settings.eats().isPresent();
    }
}
