package hearthcloth.web.make;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.Swatches;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A bar that was sewn wrong side up: what living with it looks like, and what unpicking touches. */
public record SewSide(SavedCloth cloth, int step, String bar, List<String> unpicked, String front) {

    /** Whether it makes a difference: empty where both sides of the bar look alike. */
    static Optional<SewSide> of(SavedCloth cloth, List<AtTheMachine> steps, int step) {
        if (step >= steps.size() || step >= cloth.document().bench().sewn()) {
            throw new MeasureException("this step is not sewn yet");
        }
        Plan plan = cloth.document().plan().orElseThrow();
        String bar = bar(steps.get(step))
                .orElseThrow(() -> new MeasureException("no bar is sewn on in this step; choose the step of the bar"));
        boolean alike = plan.cloth().patches().stream()
                .filter(patch -> isOf(patch, bar))
                .allMatch(patch -> patch.showing() == Showing.SAME);
        if (alike) {
            return Optional.empty();
        }
        List<String> unpicked = steps.subList(step, cloth.document().bench().sewn()).stream()
                .filter(one -> one.seam().isPresent() || one.kind() == AtTheMachine.Kind.HEM)
                .map(one -> one.task().title())
                .toList();
        Plan other = RemainingPlan.otherSideUp(plan, bar);
        String front = ClothDrawing.still(
                other.cloth(),
                Face.FRONT,
                new Swatches(other.fabrics(), Map.of()),
                "Front, with bar " + bar + " the other side up");
        return Optional.of(new SewSide(cloth, step, bar, unpicked, front));
    }

    /** The bar a seam sews on. */
    static Optional<String> bar(AtTheMachine step) {
        return step.kind() != AtTheMachine.Kind.SEAM
                ? Optional.empty()
                : step.seam()
                        .map(seam -> seam.patches(seam.added()).get(0).place())
                        .filter(place -> place instanceof Place.Bar)
                        .map(place -> ((Place.Bar) place).bar());
    }

    private static boolean isOf(Patch patch, String bar) {
        return patch.place() instanceof Place.Bar place && place.bar().equals(bar);
    }

    /** The cloth as it is when she lives with it. */
    ClothDocument livedWith() {
        ClothDocument was = cloth.document();
        Plan plan = RemainingPlan.otherSideUp(was.plan().orElseThrow(), bar);
        return new ClothDocument(was.design(), Optional.of(plan), List.of(), was.bench(), was.life());
    }
}
