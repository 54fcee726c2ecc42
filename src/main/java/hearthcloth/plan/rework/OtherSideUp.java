package hearthcloth.plan.rework;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Seam;

/** The same work with one bar, of this name, turned to its other side. */
record OtherSideUp(String name) implements Assembly.Fold<Assembly> {

    @Override
    public Assembly patch(Patch patch) {
        return RemainingPlan.bar(patch.place()).equals(name)
                ? new Patch(
                        patch.place(),
                        patch.fabric(),
                        patch.size(),
                        patch.showing().turnedOver())
                : patch;
    }

    @Override
    public Assembly seam(Seam seam, Assembly first, Assembly second) {
        return Seam.of(seam.join(), seam.wraps(), first, second);
    }
}
