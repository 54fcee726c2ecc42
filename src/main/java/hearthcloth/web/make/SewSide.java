package hearthcloth.web.make;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.OtherEdge;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.making.MakingWords;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A bar that was sewn on wrongly: what leaving it so looks like, and what unpicking touches.
 *
 * @param unpicked the steps that are undone to get at it, in the order they were sewn
 * @param front the cloth with the bar left as it is; empty where it cannot be
 */
public record SewSide(SavedCloth cloth, int step, String bar, Wrong wrong, List<String> unpicked, String front) {

    /** What is wrong about it. */
    public enum Wrong {
        FACE("the other side up"),
        EDGE("on the other side of the work");

        private final String left;

        Wrong(String left) {
            this.left = left;
        }

        /** As a form says it. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        static Wrong named(String key) {
            return key.equals(EDGE.key()) ? EDGE : FACE;
        }
    }

    /** Whether it makes a difference: empty where both sides of the bar look alike. */
    static Optional<SewSide> of(
            SavedCloth cloth, List<AtTheMachine> steps, int step, Wrong wrong, MakingWords words) {
        if (step >= steps.size() || step >= cloth.document().bench().sewn()) {
            throw new MeasureException(words.sideNotSewn());
        }
        String bar = bar(steps.get(step))
                .orElseThrow(() -> new MeasureException(words.sideNoBar()));
        if (wrong == Wrong.FACE && isAlike(cloth, bar)) {
            return Optional.empty();
        }
        List<String> unpicked = steps.subList(step, cloth.document().bench().sewn()).stream()
                .filter(one -> one.seam().isPresent() || one.kind() == AtTheMachine.Kind.HEM)
                .map(one -> one.task().title())
                .toList();
        String front = left(cloth, steps, bar, wrong)
                .flatMap(ClothDocument::plan)
                .map(other -> ClothDrawing.still(
                        other.cloth(),
                        Face.FRONT,
                        new Swatches(other.fabrics(), Map.of()),
                        words.sidePicture(bar, wrong.key())))
                .orElse("");
        return Optional.of(new SewSide(cloth, step, bar, wrong, unpicked, front));
    }

    private static boolean isAlike(SavedCloth cloth, String bar) {
        return cloth.document().plan().orElseThrow().cloth().patches().stream()
                .filter(patch -> isOf(patch, bar))
                .allMatch(patch -> patch.showing() == Showing.SAME);
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

    /** The cloth with the bar left as it was sewn; empty where the rest would not fit it. */
    static Optional<ClothDocument> left(SavedCloth cloth, List<AtTheMachine> steps, String bar, Wrong wrong) {
        ClothDocument was = cloth.document();
        Plan plan = was.plan().orElseThrow();
        if (wrong == Wrong.FACE) {
            return Optional.of(with(was, was.design(), OtherEdge.otherSideUp(plan, bar)));
        }
        int sewn = SewMeasure.seams(steps.subList(0, Math.min(was.bench().sewn(), steps.size())));
        return was.isFree()
                ? Optional.empty()
                : OtherEdge.of(was.design(), plan, bar, sewn).map(other -> with(was, other.design(), other.plan()));
    }

    private static ClothDocument with(ClothDocument was, Design design, Plan plan) {
        return new ClothDocument(design, Optional.of(plan), List.of(), was.bench(), was.life());
    }

    /** What leaving it so is called in the journal. */
    String label() {
        return "bar " + bar + " left " + wrong.left;
    }
}
