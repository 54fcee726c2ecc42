package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures the product works with, against the formula they are from (docs/sources.md#bunch, #knot-take-up). */
class TailTest {

    /** Thickness of light cotton, in millimetres (docs/sources.md#ply). */
    private static final double COTTON = 0.25;

    /** √t = (c + √(c² + 4 e))/2 with c = n √(16 τ/π): t is the free end e and n diameters of the bunch at t. */
    private static double tail(double thickMm, double endMm, int diameters) {
        double c = diameters * Math.sqrt(16 * thickMm / Math.PI);
        double root = (c + Math.sqrt(c * c + 4 * endMm)) / 2;
        return root * root;
    }

    private static double bunch(double thickMm, double tailMm) {
        return Math.sqrt(16 * thickMm * tailMm / Math.PI);
    }

    /** The formula, against the first derivation's table of t for n = 5, 7, 9. */
    @ParameterizedTest
    @CsvSource({
        "150, 3, 65, 87, 114",
        "150, 8, 130, 157, 188",
        "250, 3, 81, 115, 157",
        "250, 5, 109, 145, 190",
        "400, 5, 132, 186, 255"
    })
    void the_formula_is_that_of_the_first_derivation(int micrometres, int endCm, int least, int usual, int most) {
        assertThat(tail(micrometres / 1e3, endCm * 10, 5)).isCloseTo(least, within(0.5));
        assertThat(tail(micrometres / 1e3, endCm * 10, 7)).isCloseTo(usual, within(0.5));
        assertThat(tail(micrometres / 1e3, endCm * 10, 9)).isCloseTo(most, within(0.5));
    }

    /** 0.25 mm gathered 100 mm from the tip packs to 11.3 mm, 200 mm to 16.0 mm; and a tail is its end and its knot. */
    @Test
    void a_gathered_corner_packs_to_a_round_bunch_of_which_the_knot_takes_its_diameters() {
        assertThat(bunch(COTTON, 100)).isCloseTo(11.3, within(0.05));
        assertThat(bunch(COTTON, 200)).isCloseTo(16.0, within(0.05));
        double tail = tail(COTTON, 35, 7);
        assertThat(35 + 7 * bunch(COTTON, tail)).isCloseTo(tail, within(1e-9));
    }

    /** Light cotton with ends of 3.5 cm: 5, 7 and 9 diameters, to within half a centimetre, a quarter of an inch, or a little more. */
    @Test
    void the_tails_worked_with_are_those_of_light_cotton_with_short_ends() {
        double end = CheckedTie.cm(Tail.END) * 10;
        assertThat(CheckedTie.cm(Tail.METRIC.usual()) * 10).isCloseTo(tail(COTTON, end, 7), within(5.0));
        assertThat(CheckedTie.cm(Tail.METRIC.least()) * 10).isCloseTo(tail(COTTON, end, 5), within(10.0));
        assertThat(CheckedTie.cm(Tail.METRIC.most()) * 10).isCloseTo(tail(COTTON, end, 9), within(10.0));
        assertThat(CheckedTie.cm(Tail.INCHES.usual()) * 10).isCloseTo(tail(COTTON, end, 7), within(6.4));
        assertThat(CheckedTie.cm(Tail.INCHES.least()) * 10).isCloseTo(tail(COTTON, end, 5), within(10.0));
        assertThat(CheckedTie.cm(Tail.INCHES.most()) * 10).isCloseTo(tail(COTTON, end, 9), within(10.0));
    }

    @Test
    void a_range_that_runs_backwards_is_refused() {
        Length cm = Length.cm(1);
        assertThat(new Tail(cm, cm, cm).usual()).isEqualTo(cm);
        assertThatThrownBy(() -> new Tail(Length.cm(2), cm, Length.cm(3))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Tail(cm, Length.cm(3), Length.cm(2))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Tail(Length.cm(-1), cm, cm)).isInstanceOf(IllegalArgumentException.class);
    }
}
