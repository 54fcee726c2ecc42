package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import hearthcloth.stash.Piece;
import hearthcloth.words.speech.Voice;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What goes with the steps: thread, thick places, what can hurt, and washing. */
class AdviceTest {

    private static Plan plan(String notation, Making making) {
        Cloth cloth = new Cloth(Notation.parse(notation), making);
        return HandPlans.of(cloth, PiecingRules.metric(), List.of(Cloths.OAT, Cloths.KELP), Piece.Washed.NO);
    }

    private static Plan two(Making making) {
        return plan("(hearth \"Oat\" 80 x 80 same <| 1A right \"Kelp\" 40 x 80 same)", making);
    }

    /**
     * A seam of 80 mm and a hem of 400 mm in one round of four rows, by hand: 80 · (2 + 2·2·0.25/2.5) = 192 and 80 · (2 +
     * 2·4·0.25/2.5) = 224 for the seam, 400 · (2 + 2·3·0.25/2.5) = 1040 for the hem, and 6 rows of four tails of 100 mm:
     * 3856 mm, with 15 % 4434.4 mm (docs/sources.md#thread-model).
     */
    @Test
    void thread_is_told_in_all_and_half_of_it_for_the_bobbins() {
        Notes notes = Advice.notes(two(Making.metric()), new MakerWords(Voice.english(Ruler.MILLIMETRES)));

        assertThat(notes.thread().total().nm()).isEqualTo(4_434_400_000L);
        assertThat(notes.thread()).isEqualTo(ThreadNeed.of(two(Making.metric()).cloth(), Stitch.USUAL));
        assertThat(notes.threadWords())
                .startsWith("About 4.5 m in all; wind half of it, 2.3 m, on bobbins. Set your stitch length to 2.5 mm.")
                .contains("10 cm of thread left at both ends of every row, and 15 % extra.");
    }

    @Test
    void a_seam_sewn_by_hand_needs_no_bobbins() {
        Making whipped = Making.metric().withSeam(SeamKind.named("gamchimjil").orElseThrow());

        assertThat(Advice.notes(two(whipped), new MakerWords(Voice.english(Ruler.MILLIMETRES)))
                        .threadWords())
                .doesNotContain("bobbin");
        assertThat(Advice.notes(two(Making.inches()), new MakerWords(Voice.english(Ruler.EIGHTHS)))
                        .threadWords())
                .contains("on bobbins", "4 in of thread left at both ends");
    }

    /** Where a felled seam runs into a hem there are 12 layers, at a square corner 9 (docs/sources.md#plies). */
    @Test
    void thick_places_are_counted_the_thickest_first_with_their_height() {
        assertThat(Advice.notes(two(Making.metric()), new MakerWords(Voice.english(Ruler.MILLIMETRES)))
                        .thick())
                .startsWith(
                        "An ordinary stretch of seam has 4 layers.",
                        "Up to 12 layers at 2 places, about 3 mm thick.",
                        "Up to 9 layers at 4 places, about 2 mm thick.")
                .hasSize(5);
        assertThat(Advice.notes(two(Making.inches()), new MakerWords(Voice.english(Ruler.EIGHTHS)))
                        .thick())
                .contains("Up to 12 layers at 2 places, about ⅛ in thick.");
    }

    @Test
    void a_cloth_of_one_patch_has_no_seam_to_speak_of() {
        assertThat(Advice.notes(
                                plan("hearth \"Oat\" 80 x 80 same", Making.metric()),
                                new MakerWords(Voice.english(Ruler.MILLIMETRES)))
                        .thick())
                .startsWith("Up to 9 layers at 4 places, about 2 mm thick.");
    }

    /** The makers' handbooks name these (docs/sources.md#cutter-iron-pins, #needles, #cords, #flames, #food). */
    @Test
    void everything_that_can_hurt_is_cautioned_against() {
        List<Caution> cautions = Advice.notes(two(Making.metric()), new MakerWords(Voice.english(Ruler.MILLIMETRES)))
                .cautions();

        assertThat(cautions)
                .extracting(Caution::topic)
                .containsExactly(
                        "Rotary cutter", "Iron", "Needle", "Small children", "Dye", "Candles and hobs", "Food");
        assertThat(cautions.get(3).words()).contains("under three", "longer than 22 cm (8½ in)");
        assertThat(cautions.get(5).words()).contains("at least 30 cm (12 in)");
        assertThat(cautions).allSatisfy(caution -> assertThat(caution.words()).endsWith("."));
    }

    @Test
    void the_finished_cloth_is_pressed_on_the_face_with_the_fells() {
        MakerWords words = new MakerWords(Voice.english(Ruler.MILLIMETRES));
        assertThat(Advice.notes(two(Making.metric()), words).washing())
                .last()
                .asString()
                .contains("Press it on the back before");
        assertThat(Advice.notes(two(Making.metric().felledOn(Face.FRONT)), words)
                        .washing())
                .last()
                .asString()
                .contains("Press it on the front before");
    }
}
