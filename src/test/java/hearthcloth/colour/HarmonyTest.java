package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class HarmonyTest {

    private static List<Colour> colours(String... words) {
        return List.of(words).stream().map(Colour::parse).toList();
    }

    private static List<Colour> chance(Random random, int count) {
        return random.ints(count, 0, 1 << 24).mapToObj(Colour::of).toList();
    }

    @Test
    void goes_from_light_to_dark() {
        assertThat(Harmony.lightToDark(colours("navy", "yellow", "grey", "white"), Function.identity()))
                .isEqualTo(colours("white", "yellow", "grey", "navy"));
    }

    @Test
    void keeps_the_order_of_equals() {
        List<String> fabrics = List.of("c", "a", "b");
        assertThat(Harmony.lightToDark(fabrics, f -> Colour.WHITE)).isEqualTo(fabrics);
        assertThat(Harmony.standingOut(fabrics, f -> Colour.WHITE)).isEqualTo("c");
    }

    @Test
    void the_red_one_stands_out_among_blues() {
        assertThat(Harmony.standingOut(colours("navy", "royalblue", "red", "steelblue"), Function.identity()))
                .isEqualTo(Colour.parse("red"));
        assertThat(Harmony.standingOut(colours("navy"), Function.identity())).isEqualTo(Colour.parse("navy"));
    }

    @Test
    void the_order_given_does_not_change_what_is_chosen() {
        Random random = new Random(5);
        for (int round = 0; round < 100; round++) {
            List<Colour> fabrics = chance(random, 12);
            List<Colour> shuffled = new ArrayList<>(fabrics);
            Collections.shuffle(shuffled, random);
            assertThat(Harmony.standingOut(shuffled, Function.identity()))
                    .isEqualTo(Harmony.standingOut(fabrics, Function.identity()));
        }
    }

    @Test
    void from_nothing_nothing_is_picked() {
        assertThatThrownBy(() -> Harmony.standingOut(List.<Colour>of(), Function.identity()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
