package hearthcloth.web.gift;

import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.sew.machine.SewingHand;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.Settings;
import hearthcloth.wish.Usual;
import hearthcloth.wrap.Slack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the felled seams of her cloths took, as she measured them.
 *
 * @param cloths those that were measured
 */
public record MeasuredSeams(List<OfCloth> cloths) {

    /** The seams of one cloth. */
    public record OfCloth(String name, List<Length> eaten) {}

    public static MeasuredSeams of(Store store) {
        List<OfCloth> cloths = new ArrayList<>();
        for (SavedCloth cloth : store.cloths().all()) {
            SeamKind seam = cloth.document().design().making().seam();
            if (seam.build() != SeamKind.Build.FELLED || ExampleMark.isOn(cloth.id())) {
                continue;
            }
            List<Length> eaten = cloth.document().bench().measures().stream()
                    .map(measure -> seam.loss().plus(measure.planned()).minus(measure.real()))
                    .toList();
            if (!eaten.isEmpty()) {
                cloths.add(new OfCloth(cloth.name(), eaten));
            }
        }
        return new MeasuredSeams(cloths);
    }

    /** Her hand; empty where too few seams were measured. */
    public Optional<SewingHand> hand() {
        return SewingHand.of(
                cloths.stream().flatMap(cloth -> cloth.eaten().stream()).toList());
    }

    /** What holds for her where she wishes nothing else. */
    public Usual usual(Settings settings) {
        Slack slack =
                hand().map(hand -> hand.slack(settings.making().seam())).orElseGet(() -> Slack.usual(settings.ruler()));
        return new Usual(settings.ruler(), settings.making(), settings.rules(), slack);
    }
}
