package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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

    private static double lightness(Colour colour) {
        return colour.lab().lightness();
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
        assertThat(Harmony.halves(List.of("d", "c", "a", "b"), f -> Colour.WHITE))
                .isEqualTo(new Halves<>(List.of("d", "c"), List.of("a", "b"), 0));
    }

    @Test
    void halves_light_from_dark() {
        Halves<Colour> halves =
                Harmony.halves(colours("navy", "ivory", "maroon", "lightyellow", "darkgreen"), Function.identity());
        assertThat(halves.light()).isEqualTo(colours("ivory", "lightyellow"));
        assertThat(halves.dark()).isEqualTo(colours("darkgreen", "maroon", "navy"));
        assertThat(halves.gap())
                .isCloseTo(lightness(Colour.parse("lightyellow")) - lightness(Colour.parse("darkgreen")), within(1e-9));
    }

    /** The oracle tries every way to part the fabrics, not only cuts of the sorted row. */
    @Test
    void no_other_parting_is_farther_apart() {
        Random random = new Random(11);
        for (int round = 0; round < 200; round++) {
            List<Colour> fabrics = chance(random, 2 + random.nextInt(7));
            Halves<Colour> halves = Harmony.halves(fabrics, Function.identity());
            assertThat(Harmony.lightToDark(fabrics, Function.identity()))
                    .startsWith(halves.light().toArray(Colour[]::new))
                    .endsWith(halves.dark().toArray(Colour[]::new));
            double best = 0;
            for (int mask = 1; mask < (1 << fabrics.size()) - 1; mask++) {
                List<Colour> in = new ArrayList<>();
                List<Colour> out = new ArrayList<>();
                for (int i = 0; i < fabrics.size(); i++) {
                    ((mask >> i & 1) == 1 ? in : out).add(fabrics.get(i));
                }
                best = Math.max(best, spread(in, out));
            }
            assertThat(spread(halves.light(), halves.dark())).isCloseTo(best, within(1e-6 * best));
        }
    }

    private static double spread(List<Colour> one, List<Colour> two) {
        double apart = one.stream()
                        .mapToDouble(HarmonyTest::lightness)
                        .average()
                        .orElseThrow()
                - two.stream().mapToDouble(HarmonyTest::lightness).average().orElseThrow();
        return one.size() * two.size() * apart * apart;
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
            assertThat(Harmony.halves(shuffled, Function.identity()))
                    .isEqualTo(Harmony.halves(fabrics, Function.identity()));
        }
    }

    @Test
    void nothing_cannot_be_parted_or_picked_from() {
        assertThatThrownBy(() -> Harmony.halves(colours("red"), Function.identity()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Harmony.standingOut(List.<Colour>of(), Function.identity()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Halves<>(List.of(), List.of("a"), 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
