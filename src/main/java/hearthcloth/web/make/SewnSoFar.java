package hearthcloth.web.make;

import hearthcloth.cloth.Step;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.making.MakingWords;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The cloth as its own progress bar: sewn parts solid, the part of this step ringed, the rest pale. */
final class SewnSoFar {

    private SewnSoFar() {}

    /** The picture at step {@code at}, counted from 0. */
    static String drawn(SavedCloth cloth, List<AtTheMachine> steps, int at, MakingWords said) {
        Plan plan = ClothAsked.plan(cloth);
        Set<String> sewn = new HashSet<>();
        for (AtTheMachine step : steps.subList(0, at)) {
            step.seam().ifPresent(seam -> {
                sewn.addAll(ids(seam, false));
                sewn.addAll(ids(seam, true));
            });
        }
        AtTheMachine now = steps.get(at);
        Set<String> ringed = now.seam().map(seam -> ids(seam, true)).orElse(Set.of());
        now.seam().ifPresent(seam -> sewn.addAll(ids(seam, false)));
        String words = said.sewWhole(String.valueOf(steps.size()), String.valueOf(at));
        return ClothDrawing.soFar(plan.cloth(), new Swatches(plan.fabrics(), Map.of()), words, sewn, ringed);
    }

    private static Set<String> ids(Step seam, boolean added) {
        Set<String> ids = new HashSet<>();
        seam.patches(added ? seam.added() : seam.added().other())
                .forEach(patch -> ids.add(patch.place().id()));
        return ids;
    }
}
