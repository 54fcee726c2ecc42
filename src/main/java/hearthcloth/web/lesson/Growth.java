package hearthcloth.web.lesson;

import hearthcloth.cloth.Step;
import hearthcloth.plan.model.Plan;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.Swatches;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A student's cloth as it grows: what is sewn stands in its colours, the rest is pale; all of it before the first seam. */
final class Growth {

    private Growth() {}

    /**
     * The front; empty where there is no cloth.
     *
     * @param words what it is, for who hears the page
     */
    static String drawn(Workplace place, String words) {
        return place.plan()
                .map(plan -> ClothDrawing.soFar(
                        plan.cloth(),
                        new Swatches(plan.fabrics(), Map.of()),
                        words,
                        sewn(plan, place.growing().sewn()),
                        Set.of()))
                .orElse("");
    }

    private static Set<String> sewn(Plan plan, int seams) {
        List<Step> steps = plan.cloth().steps();
        Set<String> ids = new HashSet<>();
        List<Step> done = steps.subList(0, Math.min(seams, steps.size()));
        for (Step step : done.isEmpty() ? steps : done) {
            step.patches(step.added()).forEach(patch -> ids.add(patch.place().id()));
            step.patches(step.added().other())
                    .forEach(patch -> ids.add(patch.place().id()));
        }
        return ids;
    }
}
