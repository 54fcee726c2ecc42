package hearthcloth.work.deed;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.OtherEdge;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.Optional;

/**
 * A bar was sewn on wrongly.
 *
 * @param bar its name
 */
public record SewnWrongly(SewingSoFar sewing, String bar, Wrong wrong) {

    /** What is wrong about it. */
    public enum Wrong {
        /** It lies the other side up. */
        FACE,
        /** It is on another side of the work. */
        EDGE;

        /** As a form says it. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        public static Wrong named(String key) {
            return key.equals(EDGE.key()) ? EDGE : FACE;
        }
    }

    /** True where it makes no difference: both sides of the bar look alike. */
    public boolean isAlike() {
        return wrong == Wrong.FACE
                && plan().cloth().patches().stream()
                        .filter(this::isOfBar)
                        .allMatch(patch -> patch.showing() == Showing.SAME);
    }

    private boolean isOfBar(Patch patch) {
        return patch.place() instanceof Place.Bar place && place.bar().equals(bar);
    }

    private Plan plan() {
        return sewing.cloth().plan().orElseThrow();
    }

    /** The bar left as it was sewn; empty where the rest would not fit it. */
    public Optional<Deed> left() {
        Project was = sewing.cloth();
        Sentence label = MendingSentences.deedLeft(Argument.text(bar), wrong.name());
        if (wrong == Wrong.FACE) {
            return Optional.of(Deed.of(
                    label, Deed.planned(was, was.design(), OtherEdge.otherSideUp(plan(), bar)), Deed.Pieces.NONE));
        }
        return was.isFree()
                ? Optional.empty()
                : OtherEdge.of(was.design(), plan(), bar, sewing.bars())
                        .map(other ->
                                Deed.of(label, Deed.planned(was, other.design(), other.plan()), Deed.Pieces.NONE));
    }
}
