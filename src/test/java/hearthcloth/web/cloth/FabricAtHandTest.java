package hearthcloth.web.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the bench says in few words: {@link FabricAtHand}, {@link ClothFigures}, {@link NewCloth}. */
class FabricAtHandTest {

    private static final Fabric OAT = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);

    private static FabricAtHand atHand(long widthCm, long lengthCm, Size... pieces) {
        List<Piece> all = new ArrayList<>();
        for (Size size : pieces) {
            all.add(Stashes.piece(all.size() + 2, OAT, size));
        }
        Size needed = new Size(Length.cm(widthCm), Length.cm(lengthCm));
        return FabricAtHand.of(new Stash(all), OAT, needed, Voice.english(Ruler.MILLIMETRES));
    }

    private static Size cm(long width, long height) {
        return new Size(Length.cm(width), Length.cm(height));
    }

    @Test
    void one_piece_that_holds_the_bar_either_way_is_enough() {
        assertThat(atHand(8, 50, cm(8, 50))).isEqualTo(new FabricAtHand("enough", false));
        assertThat(atHand(8, 50, cm(50, 8))).isEqualTo(new FabricAtHand("enough", false));
        assertThat(atHand(50, 8, cm(8, 50))).isEqualTo(new FabricAtHand("enough", false));
    }

    @Test
    void pieces_that_are_wide_enough_and_long_enough_together_are_joined() {
        assertThat(atHand(8, 50, cm(8, 30), cm(9, 20))).isEqualTo(new FabricAtHand("joined", false));
        assertThat(atHand(8, 50, cm(8, 30), cm(9, 19))).isEqualTo(new FabricAtHand("too short", true));
        assertThat(atHand(8, 50, cm(8, 30), cm(7, 40)))
                .as("one that is too narrow adds nothing")
                .isEqualTo(new FabricAtHand("too short", true));
    }

    @Test
    void where_none_is_wide_enough_the_widest_is_told() {
        assertThat(atHand(8, 50, cm(5, 90), cm(7, 20))).isEqualTo(new FabricAtHand("7 wide", true));
        assertThat(atHand(8, 50)).isEqualTo(new FabricAtHand("0 wide", true));
    }

    @Test
    void a_new_cloth_has_a_name_no_other_has_and_the_examples_is_marked() {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            assertThat(ids.add(NewCloth.id(false))).isTrue();
        }
        assertThat(ids).allMatch(id -> id.matches("[0-9a-f]{12}") && !ExampleMark.isOn(id));
        assertThat(ExampleMark.isOn(NewCloth.id(true))).isTrue();
    }

    @Test
    void figures_tell_what_a_change_did() {
        List<Plan> plans = Planned.plans(Stashes.scraps(40, 3), 18, 1);
        List<Plan> larger = Planned.plans(Stashes.scraps(40, 3), 20, 1);
        ClothFigures before =
                new ClothFigures(plans.get(0).cloth(), Optional.of(plans.get(0)), Voice.english(Ruler.EIGHTHS));
        ClothFigures after =
                new ClothFigures(larger.get(0).cloth(), Optional.of(larger.get(0)), Voice.english(Ruler.EIGHTHS));
        List<ClothFigures.Figure> same = before.inShort(Optional.of(before));
        assertThat(same).allMatch(figure -> figure.was().isEmpty());
        ClothFigures.Figure size = after.inShort(Optional.of(before)).get(0);
        assertThat(size.value()).isEqualTo("20 in");
        assertThat(size.was()).isEqualTo("18 in");
        assertThat(before.lines()).extracting(ClothFigures.Line::name).startsWith("Joins", "Cuts");
        int joins = plans.get(0).figures().joins();
        assertThat(before.lines().get(0).value()).startsWith(joins + ", ");
    }
}
