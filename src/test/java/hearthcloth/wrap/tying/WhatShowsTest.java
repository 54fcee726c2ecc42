package hearthcloth.wrap.tying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhatShowsTest {

    private static final Length TAIL = Length.cm(10);

    /** A square of 70 cm, hearth 30, rings to 50 and 70 cm, as in the first derivation: docs/sources.md#visible. */
    private static Cloth cloth(Length hearth, Length bar, List<String> fabrics) {
        Layout layout = new Layout(Size.square(hearth), Layout.courses(Order.ROUND, 2, List.of(bar)));
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            bars.add(List.of(new Layout.Part(
                    fabrics.get((slot.place().round() - 1) % fabrics.size()), Showing.SAME, slot.length())));
        }
        return new Cloth(layout.sewn("Hearth", Showing.SAME, bars), Making.metric());
    }

    private static WhatShows shows(Cloth cloth, Tie tie, String gift, Placing placing) {
        return WhatShows.of(
                cloth, Visible.of(TiedFold.of(tie.fit(Gift.parse(gift, null), cloth.finished(), TAIL, placing))));
    }

    private static final Cloth HANDBOOK = cloth(Length.cm(30), Length.cm(10), List.of("One", "Two"));

    /** Table "70 cm, hearth 30, rings to 50, 70; 30x20x5" of ties-geometry.md, section 6, errand drawn as laid, but tied. */
    @Test
    void shares_are_those_of_the_first_derivation() {
        WhatShows shows = shows(HANDBOOK, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", Placing.CENTRED);
        double all = 1700 - 30 * 20;
        assertThat(shows.score("Hearth")).isCloseTo((248.53 + 80.15) / all, within(1e-4));
        assertThat(shows.score("One")).isCloseTo((251.47 + 519.85) / all, within(1e-4));
        assertThat(shows.score("Two")).isCloseTo(0, within(1e-4));
        assertThat(shows.score("No such cloth")).isZero();
    }

    @Test
    void scores_of_all_fabrics_sum_to_one_and_patches_keep_their_cloth() {
        for (Tie tie : List.of(Tie.FOUR_CORNER, Tie.ERRAND)) {
            WhatShows shows = shows(HANDBOOK, tie, "box 30 x 20 x 5 cm", Placing.CENTRED);
            double sum = shows.fabrics().stream()
                    .mapToDouble(fabric -> shows.score(fabric.name()))
                    .sum();
            assertThat(sum).isCloseTo(1, within(1e-9));
            double cloth = shows.patches().stream()
                    .mapToDouble(patch -> patch.shares().total())
                    .sum();
            assertThat(cloth).isCloseTo(700.0 * 700, within(1e-3));
        }
    }

    @Test
    void a_small_hearth_is_hidden_and_said_so() {
        Cloth cloth = cloth(Length.cm(14), Length.cm(14), List.of("One", "Two"));
        WhatShows shows = shows(cloth, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", Placing.CENTRED);
        assertThat(shows.sentences(Voice.english(Ruler.MILLIMETRES))).contains("Your hearth is hidden under the box.");
    }

    @Test
    void a_hearth_that_shows_is_told_with_its_share() {
        WhatShows shows = shows(HANDBOOK, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", Placing.CENTRED);
        assertThat(shows.sentences(Voice.english(Ruler.MILLIMETRES)).get(0))
                .isEqualTo("37 % of your hearth shows, on the sides and top; 63 % lies under the box.");
    }

    @Test
    void what_the_spare_corners_change_is_told_as_from_one_figure_to_the_other_and_why() {
        WhatShows shows = shows(HANDBOOK, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", Placing.CENTRED);
        Between one = shows.between("One");
        assertThat(one.least()).isLessThan(one.most());
        // the fold's own figure is one end
        assertThat(List.of(one.least(), one.most())).contains(shows.score("One"));
        List<String> said = shows.sentences(Voice.english(Ruler.MILLIMETRES));
        assertThat(said).anyMatch(words -> words.startsWith("One is " + one.words() + " % of what shows"));
        assertThat(said.get(said.size() - 1)).contains("four spare corners");
    }

    @Test
    void a_flat_wrap_has_one_figure_each_and_no_word_of_corners() {
        WhatShows shows = shows(HANDBOOK, Tie.FLAT, "box 30 x 20 x 3 cm", Placing.CENTRED);
        assertThat(shows.falling()).isEqualTo(shows.patches());
        assertThat(shows.sentences(Voice.english(Ruler.MILLIMETRES)))
                .noneMatch(words -> words.contains("spare corners") || words.contains("–"));
    }

    @Test
    void shares_of_all_fabrics_sum_to_one_with_the_corners_outside_too() {
        for (Tie tie : List.of(Tie.FOUR_CORNER, Tie.ERRAND)) {
            WhatShows shows = shows(HANDBOOK, tie, "box 30 x 20 x 5 cm", Placing.CENTRED);
            double seen = shows.falling().stream()
                    .mapToDouble(patch -> patch.shares().total())
                    .sum();
            assertThat(seen).isCloseTo(700.0 * 700, within(1e-3));
        }
    }

    @Test
    void shifting_and_turning_changes_the_figures() {
        Cloth uneven = cloth(Length.cm(30), Length.cm(11), List.of("One", "Two"));
        WhatShows still = shows(uneven, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", Placing.CENTRED);
        Placing off = Placing.CENTRED.shifted(Length.mm(30), Length.mm(10));
        WhatShows moved = shows(uneven, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", off);
        WhatShows turned = shows(uneven, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", Placing.CENTRED.turned(1));
        WhatShows over = shows(uneven, Tie.FOUR_CORNER, "box 30 x 20 x 5 cm", Placing.CENTRED.showing(Face.BACK));
        assertThat(moved.score("Hearth")).isNotCloseTo(still.score("Hearth"), within(0.01));
        // the sum of a fabric all round the hearth is the same after a quarter turn and from the other face
        assertThat(turned.score("One")).isCloseTo(still.score("One"), within(1e-6));
        assertThat(over.score("One")).isCloseTo(still.score("One"), within(1e-6));
        WhatShows.Seen bar = still.patches().get(1);
        assertThat(bar.name()).isEqualTo(turned.patches().get(1).name());
        assertThat(turned.patches().get(1).shares()).isNotEqualTo(bar.shares());
    }
}
