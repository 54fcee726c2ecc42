package hearthcloth.web.cloth;

import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Order;
import hearthcloth.guideline.ClothFacts;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.web.kit.ExampleMark;
import java.util.UUID;

/** Names for cloths that are new in the store. */
public final class NewCloth {

    private NewCloth() {}

    /** A name no other cloth has; one of the example is marked as such. */
    public static String id(boolean example) {
        return (example ? ExampleMark.MARK : "")
                + UUID.randomUUID().toString().replace("-", "").substring(0, 12);
    }

    /** What is decided of a cloth that was planned: bar by bar, or of scraps as a whole. */
    public static Design design(Plan plan) {
        boolean barred = plan.cloth().patches().stream()
                .allMatch(patch -> patch.place() instanceof Place.Hearth || patch.place() instanceof Place.Bar);
        return barred
                ? DesignEdits.settled(plan, ClothFacts.of(plan.cloth()).order().orElse(Order.ROUND))
                : Design.undivided(plan);
    }
}
