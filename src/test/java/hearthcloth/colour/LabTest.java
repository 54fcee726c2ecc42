package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class LabTest {

    /** The table has four decimals; docs/sources.md#lab. */
    @ParameterizedTest
    @CsvFileSource(resources = "/sources/srgb_lab.csv", useHeadersInDisplayName = true)
    void agrees_with_published_values_under_d65(
            String hex, int r, int g, int b, double y, double l, double a, double b65) {
        assertThat(Colour.of(r, g, b)).isEqualTo(Colour.parse(hex));
        Lab lab = Colour.parse(hex).lab();
        assertThat(lab.lightness()).isCloseTo(l, within(6e-5));
        assertThat(lab.a()).isCloseTo(a, within(6e-5));
        assertThat(lab.b()).isCloseTo(b65, within(6e-5));
        assertThat(Colour.parse(hex).luminance()).isCloseTo(y, within(5e-5));
    }

    /** All 139 different CSS colours, each with another, computed outside the project. */
    @ParameterizedTest
    @CsvFileSource(resources = "/colour/css_lab_ciede2000.csv", useHeadersInDisplayName = true)
    void agrees_with_an_outside_program_on_every_css_colour(
            String hex, double l, double a, double b, String other, double difference) {
        Lab lab = Colour.parse(hex).lab();
        assertThat(lab.lightness()).isCloseTo(l, within(1e-4));
        assertThat(lab.a()).isCloseTo(a, within(1e-4));
        assertThat(lab.b()).isCloseTo(b, within(1e-4));
        assertThat(lab.difference(Colour.parse(other).lab())).isCloseTo(difference, within(1e-4));
    }

    /** All 34 pairs of docs/sources.md#ciede2000, both ways round; their figures have four decimals. */
    @ParameterizedTest
    @CsvFileSource(resources = "/sources/ciede2000.csv", useHeadersInDisplayName = true)
    void meets_the_published_ciede2000_pairs_both_ways_round(
            int pair, double l1, double a1, double b1, double l2, double a2, double b2, double difference) {
        Lab one = new Lab(l1, a1, b1);
        Lab two = new Lab(l2, a2, b2);
        assertThat(one.difference(two)).as("pair %d", pair).isCloseTo(difference, within(5e-5));
        assertThat(two.difference(one)).as("pair %d turned", pair).isCloseTo(difference, within(5e-5));
    }

    @Test
    void differs_from_nothing_by_nothing_and_the_same_both_ways_round() {
        Random random = new Random(7);
        for (int i = 0; i < 50_000; i++) {
            Lab one = Colour.of(random.nextInt(1 << 24)).lab();
            Lab two = Colour.of(random.nextInt(1 << 24)).lab();
            assertThat(one.difference(one)).isZero();
            assertThat(one.difference(two)).isNotNegative().isEqualTo(two.difference(one));
        }
    }

    @Test
    void comes_back_to_the_same_colour() {
        for (int rgb = 0; rgb <= 0xffffff; rgb += 37) {
            Colour colour = Colour.of(rgb);
            assertThat(colour.lab().toColour()).isEqualTo(colour);
        }
    }

    @Test
    void clips_what_a_screen_cannot_show() {
        assertThat(new Lab(120, 0, 0).toColour()).isEqualTo(Colour.WHITE);
        assertThat(new Lab(-5, 0, 0).toColour()).isEqualTo(Colour.BLACK);
        Colour clipped = new Lab(50, 150, 0).toColour();
        assertThat(clipped.red()).isEqualTo(255);
        assertThat(clipped.green()).isZero();
    }

    @Test
    void has_a_hue_from_0_up_to_360_and_a_chroma() {
        assertThat(new Lab(50, 0, 10).hue()).isCloseTo(90, within(1e-12));
        assertThat(new Lab(50, 0, -10).hue()).isCloseTo(270, within(1e-12));
        assertThat(new Lab(50, 10, -1e-18).hue()).isZero();
        assertThat(new Lab(50, 0, 0).hue()).isZero();
        assertThat(new Lab(50, 3, -4).chroma()).isEqualTo(5);
    }

    @Test
    void is_made_of_numbers() {
        assertThatThrownBy(() -> new Lab(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Lab(0, Double.POSITIVE_INFINITY, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
