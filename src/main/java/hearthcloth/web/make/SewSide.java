package hearthcloth.web.make;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.MeasureException;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.making.MakingWords;
import hearthcloth.work.Project;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.SewingSoFar;
import hearthcloth.work.deed.SewnWrongly;
import hearthcloth.work.deed.SewnWrongly.Wrong;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A bar that was sewn on wrongly: what leaving it so looks like, and what unpicking touches.
 *
 * @param unpicked the steps that are undone to get at it, in the order they were sewn
 * @param front the cloth with the bar left as it is; empty where it cannot be
 * @param left what leaving it so does; empty where it cannot be
 */
public record SewSide(SavedCloth cloth, Bar which, List<String> unpicked, String front, Optional<Deed> left) {

    /**
     * The bar that is sewn on wrongly.
     *
     * @param step that sewed it on, from 0
     * @param name of the bar
     */
    public record Bar(int step, String name, Wrong wrong) {}

    /** Whether it makes a difference: empty where both sides of the bar look alike. */
    static Optional<SewSide> of(SavedCloth cloth, List<AtTheMachine> steps, int step, Wrong wrong, MakingWords words) {
        if (step >= steps.size() || step >= cloth.document().bench().sewn()) {
            throw new MeasureException(words.sideNotSewn());
        }
        String bar = SewingSoFar.bar(steps.get(step)).orElseThrow(() -> new MeasureException(words.sideNoBar()));
        SewnWrongly sewn = new SewnWrongly(new SewingSoFar(cloth.document(), steps), bar, wrong);
        if (sewn.isAlike()) {
            return Optional.empty();
        }
        List<String> unpicked = steps.subList(step, cloth.document().bench().sewn()).stream()
                .filter(one -> one.seam().isPresent() || one.kind() == AtTheMachine.Kind.HEM)
                .map(one -> one.task().title())
                .toList();
        Optional<Deed> left = sewn.left();
        String front = left.flatMap(Deed::edited)
                .flatMap(Project::plan)
                .map(other -> ClothDrawing.still(
                        other.cloth(),
                        Face.FRONT,
                        new Swatches(other.fabrics(), Map.of()),
                        words.sidePicture(bar, wrong.key())))
                .orElse("");
        return Optional.of(new SewSide(cloth, new Bar(step, bar, wrong), unpicked, front, left));
    }

    public int step() {
        return which.step();
    }

    public String bar() {
        return which.name();
    }

    public Wrong wrong() {
        return which.wrong();
    }
}
