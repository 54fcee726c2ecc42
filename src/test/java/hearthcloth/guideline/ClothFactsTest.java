package hearthcloth.guideline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link ClothFacts}: the measures a cloth was laid out with are read off it again. */
class ClothFactsTest {

    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric KELP = new Fabric("Kelp", Colour.of(0x1f3d32), Fabric.Faces.SAME, Fabric.Nap.ANY);

    private static Cloth cloth(Layout layout, Making making, int joined) {
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            Length first = Length.inches(3);
            bars.add(
                    bars.size() == joined
                            ? List.of(
                                    new Layout.Part("Kelp", Showing.SAME, first),
                                    new Layout.Part("Kelp", Showing.SAME, first),
                                    new Layout.Part(
                                            "Kelp", Showing.SAME, slot.length().minus(first.times(2))))
                            : List.of(new Layout.Part("Kelp", Showing.SAME, slot.length())));
        }
        return new Cloth(layout.sewn("Oat", Showing.SAME, bars), making);
    }

    /** One to twelve rounds, so that 10A comes after 2B; the last bar but one of each is joined twice. */
    @ParameterizedTest
    @EnumSource(Order.class)
    void a_layout_comes_back_as_it_finishes_and_as_it_is_cut(Order order) {
        Making making = Making.inches();
        for (int rounds = 1; rounds <= 12; rounds++) {
            List<Length> widths = new ArrayList<>();
            for (int round = 0; round < rounds; round++) {
                widths.add(Length.inches(16 + round, 8));
            }
            List<Layout.Course> cut = Layout.courses(order, rounds, widths);
            Size hearth = new Size(Length.inches(9), Length.inches(8));
            Layout layout = new Layout(Layout.hearthOfCut(hearth, cut, making), Layout.finishedOfCut(cut, making));
            ClothFacts facts = ClothFacts.of(cloth(layout, making, cut.size() - 2));

            assertThat(facts.order()).contains(order);
            assertThat(facts.rounds()).isEqualTo(rounds);
            assertThat(facts.mostJoins()).isEqualTo(2);
            assertThat(facts.finished()).isEqualTo(layout.finished());
            assertThat(facts.hearth()).isEqualTo(new ClothFacts.Measured<>(layout.hearth(), hearth));
            assertThat(facts.hearth().meant(true)).isEqualTo(layout.hearth());
            assertThat(facts.bars()).hasSize(cut.size());
            for (int i = 0; i < cut.size(); i++) {
                ClothFacts.Bar bar = facts.bars().get(i);
                assertThat(bar.round()).isEqualTo(1 + i / order.sides().size());
                assertThat(bar.width().cut()).isEqualTo(cut.get(i).width());
                assertThat(bar.width().finished())
                        .isEqualTo(layout.courses().get(i).width());
                assertThat(bar.joins()).isEqualTo(i == cut.size() - 2 ? 2 : 0);
            }
        }
    }

    @Test
    void bars_in_another_order_are_in_none_of_the_usual_ones() {
        Cloth cloth = new Cloth(
                Notation.parse(
                        "((1B left \"Kelp\" 40 x 80 same |> hearth \"Oat\" 80 x 80 same) <| 1A right \"Kelp\" 40 x"
                                + " 80 same)"),
                Making.metric());
        assertThat(ClothFacts.of(cloth).order()).isEmpty();
    }

    @Test
    void a_hearth_alone_in_one_fabric_is_one_field_and_no_halves() {
        Making making = Making.inches();
        Layout layout =
                new Layout(Size.square(Length.inches(8)), Layout.courses(Order.ROUND, 2, List.of(Length.inches(2))));
        assertThat(ClothFacts.ways(cloth(layout, making, -1), List.of(OAT, KELP)))
                .contains(Scheme.Kind.FIELD)
                .doesNotContain(Scheme.Kind.HALVES, Scheme.Kind.TURNS, Scheme.Kind.FRAMES);
    }

    @Test
    void a_cloth_of_scraps_has_no_such_facts() {
        Cloth scraps =
                new Cloth(Notation.parse("(A1 \"Oat\" 80 x 80 same |> A2 \"Kelp\" 40 x 80 same)"), Making.metric());
        assertThatThrownBy(() -> ClothFacts.of(scraps))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("this cloth has no hearth");
    }
}
