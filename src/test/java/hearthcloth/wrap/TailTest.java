package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TailTest {

    /** First derivation's table of t for n = 5, 7, 9; the second's rows at 0.10 and 0.25 mm start at n = 4. */
    @ParameterizedTest
    @CsvSource({
        "150, 3, 65, 87, 114",
        "150, 8, 130, 157, 188",
        "250, 3, 81, 115, 157",
        "250, 5, 109, 145, 190",
        "400, 5, 132, 186, 255"
    })
    void follows_from_the_cloths_thickness(long micrometres, long endCm, long least, long usual, long most) {
        Tail tail = Tail.of(new Length(micrometres * 1000), Length.cm(endCm));
        assertThat(tail).isEqualTo(new Tail(Length.mm(least), Length.mm(usual), Length.mm(most)));
    }

    /** 0.25 mm gathered 100 mm from the tip packs to 11.3 mm, 200 mm to 16.0 mm: docs/sources.md#bunch. */
    @Test
    void a_gathered_corner_packs_to_a_round_bunch() {
        assertThat(Tail.exactly(Length.mm(100)).bunch(new Length(250_000)).nm()).isEqualTo(11_300_000);
        assertThat(Tail.exactly(Length.mm(200)).bunch(new Length(250_000)).nm()).isEqualTo(16_000_000);
    }

    @Test
    void the_usual_tail_is_light_cotton_with_short_ends() {
        Tail light = Tail.of(new Length(250_000), Tail.END);
        assertThat(light.usual().minus(Tail.METRIC.usual()).nm()).isBetween(-5_000_000L, 5_000_000L);
    }
}
