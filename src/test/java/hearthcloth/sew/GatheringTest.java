package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Made;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Washing and colour advice, by the pieces that are used. */
class GatheringTest {

    @Test
    void washed_and_unwashed_pieces_are_named_apart_with_what_the_difference_comes_to() {
        Plan plan = mixed();
        String washing = washing(plan);

        assertThat(washing).contains("Washed and unwashed pieces are mixed. Not washed: piece 3.");
        // 2½ % of 13½ in is 0.34 in: ⅜ to the nearest eighth.
        assertThat(washing).contains("shrink about ⅜ in more");
    }

    /** 3 % against ½ % over 340 mm is 8.5 mm: docs/sources.md#shrink-difference. */
    @Test
    void the_difference_over_340_mm_is_eight_and_a_half() {
        Fabric oat = new Fabric("oat", Cloths.OAT.colour(), Fabric.Faces.SAME, Fabric.Nap.ANY);
        Plan plan = HandPlans.of(Made.felledExample(), PiecingRules.metric(), List.of(oat), Piece.Washed.NO);

        assertThat(Gathering.difference(plan)).isEqualTo(new Length(8_500_000));
    }

    @Test
    void what_is_known_to_be_washed_is_left_in_peace() {
        assertThat(washing(Cloths.metric())).isEqualTo("All the fabric has been washed.");
    }

    @Test
    void a_deep_colour_beside_a_pale_one_is_soaked_first() {
        assertThat(washing(Cloths.inches())).contains("Soak a corner of Kelp");
        assertThat(washing(Cloths.metric())).doesNotContain("Soak");
    }

    private static Plan mixed() {
        Plan plan = Cloths.inches();
        List<PieceCut> cuts = new ArrayList<>(plan.cuts());
        Piece first = cuts.get(0).piece();
        Piece washed = new Piece(first.id(), first.fabric(), first.size(), Piece.Washed.YES, first.row());
        cuts.set(0, new PieceCut(washed, cuts.get(0).tree()));
        return new Plan(plan.story(), plan.cloth(), plan.rules(), cuts, plan.bound());
    }

    private static String washing(Plan plan) {
        return String.join(
                "\n",
                Gathering.of(plan, new MakerWords(Voice.english(Ruler.EIGHTHS))).washing());
    }
}
