package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Each plan of colour's name beside cloths of which it is true and cloths that miss it by one thing. */
class SchemeRuleTest {

    private static boolean holds(Scheme.Kind kind, Cloth cloth) {
        return SchemeRule.holds(kind, cloth, Greys.ALL);
    }

    private static Cloth rings(Fabric hearth, Fabric... rings) {
        return Greys.cloth(
                100, 20, rings.length, hearth, slot -> rings[slot.place().round() - 1]);
    }

    private static Cloth halves(Fabric light, Fabric dark) {
        return Greys.cloth(
                100,
                20,
                2,
                Greys.RED,
                slot -> slot.place().side() == Side.RIGHT || slot.place().side() == Side.BOTTOM ? light : dark);
    }

    @Test
    void two_halves_are_light_below_and_to_the_right_by_ten_points_or_more() {
        assertThat(holds(Scheme.Kind.HALVES, halves(Greys.GREY, Greys.DARK))).isTrue();
        assertThat(holds(Scheme.Kind.HALVES, halves(Greys.DARK, Greys.GREY))).isFalse();
        assertThat(holds(Scheme.Kind.HALVES, halves(Greys.GREY, Greys.NEAR))).isFalse();
        // several light ones and several dark ones, the nearest of them compared
        Function<Layout.Slot, Fabric> mixed = slot -> {
            boolean outer = slot.place().round() == 2;
            return SchemeRule.isLightSide(slot.place())
                    ? (outer ? Greys.WHITE : Greys.GREY)
                    : (outer ? Greys.BLACK : Greys.DARK);
        };
        assertThat(holds(Scheme.Kind.HALVES, Greys.cloth(100, 20, 2, Greys.RED, mixed)))
                .isTrue();
    }

    @Test
    void turn_and_turn_about_changes_from_bar_to_bar_and_begins_otherwise_in_the_next_round() {
        Function<Layout.Slot, Fabric> turns =
                slot -> (slot.place().order() + slot.place().round()) % 2 == 0 ? Greys.PALE : Greys.DARK;
        assertThat(holds(Scheme.Kind.TURNS, Greys.cloth(100, 20, 2, Greys.RED, turns)))
                .isTrue();
        Function<Layout.Slot, Fabric> steady = slot -> slot.place().order() % 2 == 1 ? Greys.PALE : Greys.DARK;
        assertThat(holds(Scheme.Kind.TURNS, Greys.cloth(100, 20, 2, Greys.RED, steady)))
                .isFalse();
        assertThat(holds(Scheme.Kind.TURNS, Greys.cloth(100, 20, 1, Greys.RED, steady)))
                .isTrue();
    }

    @Test
    void a_spiral_winds_light_and_dark_outwards_five_bars_at_a_time() {
        Function<Layout.Slot, Fabric> arms =
                slot -> (4 * (slot.place().round() - 1) + slot.place().order()) / 5 % 2 == 0 ? Greys.PALE : Greys.DARK;
        assertThat(holds(Scheme.Kind.SPIRAL, Greys.cloth(100, 20, 2, Greys.RED, arms)))
                .isTrue();
        assertThat(holds(Scheme.Kind.SPIRAL, Greys.cloth(100, 20, 3, Greys.RED, arms)))
                .isTrue();
        // one round alone has one arm, rings are no spiral, nor is the hearth to be of an arm's fabric
        assertThat(holds(Scheme.Kind.SPIRAL, Greys.cloth(100, 20, 1, Greys.RED, arms)))
                .isFalse();
        assertThat(holds(Scheme.Kind.SPIRAL, rings(Greys.RED, Greys.PALE, Greys.DARK)))
                .isFalse();
        assertThat(holds(Scheme.Kind.SPIRAL, Greys.cloth(100, 20, 2, Greys.PALE, arms)))
                .isFalse();
    }

    @Test
    void ring_by_ring_each_round_has_a_fabric_unlike_the_one_inside_it_and_none_is_beside_the_hearth() {
        assertThat(holds(Scheme.Kind.ROUNDS, rings(Greys.RED, Greys.PALE, Greys.DARK)))
                .isTrue();
        assertThat(holds(Scheme.Kind.ROUNDS, rings(Greys.RED, Greys.PALE))).isFalse();
        assertThat(holds(Scheme.Kind.ROUNDS, rings(Greys.RED, Greys.PALE, Greys.PALE)))
                .isFalse();
        assertThat(holds(Scheme.Kind.ROUNDS, rings(Greys.PALE, Greys.PALE, Greys.DARK)))
                .isFalse();
        assertThat(holds(Scheme.Kind.ROUNDS, rings(Greys.DARK, Greys.PALE, Greys.DARK)))
                .isTrue();
        Function<Layout.Slot, Fabric> odd = slot ->
                slot.place().id().equals("1C") ? Greys.BLACK : slot.place().round() == 1 ? Greys.PALE : Greys.DARK;
        assertThat(holds(Scheme.Kind.ROUNDS, Greys.cloth(100, 20, 2, Greys.RED, odd)))
                .isFalse();
    }

    @Test
    void frames_take_turns_between_two_fabrics_ten_points_apart() {
        assertThat(holds(Scheme.Kind.FRAMES, rings(Greys.RED, Greys.GREY, Greys.DARK, Greys.GREY)))
                .isTrue();
        assertThat(holds(Scheme.Kind.FRAMES, rings(Greys.RED, Greys.GREY, Greys.DARK)))
                .isTrue();
        assertThat(holds(Scheme.Kind.FRAMES, rings(Greys.RED, Greys.GREY, Greys.DARK, Greys.PALE)))
                .isFalse();
        assertThat(holds(Scheme.Kind.FRAMES, rings(Greys.RED, Greys.GREY, Greys.NEAR, Greys.GREY)))
                .isFalse();
        assertThat(holds(Scheme.Kind.FRAMES, rings(Greys.RED, Greys.GREY))).isFalse();
        assertThat(holds(Scheme.Kind.FRAMES, rings(Greys.GREY, Greys.GREY, Greys.DARK, Greys.GREY)))
                .isFalse();
    }

    @Test
    void light_to_dark_every_round_is_darker_than_the_one_inside_it() {
        assertThat(holds(Scheme.Kind.GRADED, rings(Greys.RED, Greys.WHITE, Greys.PALE, Greys.DARK)))
                .isTrue();
        assertThat(holds(Scheme.Kind.GRADED, rings(Greys.RED, Greys.WHITE, Greys.DARK, Greys.PALE)))
                .isFalse();
        assertThat(holds(Scheme.Kind.GRADED, rings(Greys.RED, Greys.PALE, Greys.PALE)))
                .isFalse();
        assertThat(holds(Scheme.Kind.GRADED, rings(Greys.RED, Greys.WHITE))).isFalse();
        assertThat(holds(Scheme.Kind.GRADED, rings(Greys.WHITE, Greys.WHITE, Greys.DARK)))
                .isFalse();
    }

    @Test
    void one_field_is_one_fabric_round_a_hearth_of_another() {
        assertThat(holds(Scheme.Kind.FIELD, rings(Greys.RED, Greys.PALE, Greys.PALE)))
                .isTrue();
        assertThat(holds(Scheme.Kind.FIELD, rings(Greys.PALE, Greys.PALE, Greys.PALE)))
                .isFalse();
        assertThat(holds(Scheme.Kind.FIELD, rings(Greys.RED, Greys.PALE, Greys.DARK)))
                .isFalse();
    }

    /** Round a hearth of 200 mm: of bars 20 mm wide one is 6.9 % of the cloth, two are 14.6; of 5 mm one is 2.3, of 4 1.8. */
    @Test
    void a_bright_scrap_is_two_to_nine_hundredths_of_the_cloth_in_three_places_at_most() {
        assertThat(accent(20, List.of("1A"))).isTrue();
        assertThat(accent(20, List.of("1A", "1B"))).isFalse();
        assertThat(accent(5, List.of("1A"))).isTrue();
        assertThat(accent(4, List.of("1A"))).isFalse();
        assertThat(accent(5, List.of("1A", "1B", "1C"))).isTrue();
        assertThat(accent(3, List.of("1A", "1B", "1C", "1D"))).isFalse();
    }

    private static boolean accent(long width, List<String> bright) {
        return holds(
                Scheme.Kind.ACCENT,
                Greys.cloth(
                        200,
                        width,
                        1,
                        Greys.WHITE,
                        slot -> bright.contains(slot.place().id()) ? Greys.RED : Greys.DARK));
    }

    @Test
    void scattered_evenly_no_fabric_meets_itself_or_the_hearth() {
        Function<Layout.Slot, Fabric> two = slot -> slot.place().order() % 2 == 0 ? Greys.PALE : Greys.DARK;
        assertThat(holds(Scheme.Kind.SCATTERED, Greys.cloth(100, 20, 1, Greys.RED, two)))
                .isTrue();
        assertThat(holds(Scheme.Kind.SCATTERED, Greys.cloth(100, 20, 1, Greys.PALE, two)))
                .isFalse();
        Function<Layout.Slot, Fabric> beside = slot -> slot.place().order() < 2 ? Greys.PALE : Greys.DARK;
        assertThat(holds(Scheme.Kind.SCATTERED, Greys.cloth(100, 20, 1, Greys.RED, beside)))
                .isFalse();
    }

    @Test
    void names_that_promise_nothing_are_always_true() {
        Cloth cloth = rings(Greys.PALE, Greys.PALE);
        for (Scheme.Kind kind : List.of(Scheme.Kind.ALL, Scheme.Kind.FALLS, Scheme.Kind.OUTWARDS, Scheme.Kind.OWN)) {
            assertThat(holds(kind, cloth)).isTrue();
        }
    }
}
