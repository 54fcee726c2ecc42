package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ColourVisionTest {

    /** Every type, eight colours each, by the matrices of docs/sources.md#colour-vision. */
    @ParameterizedTest
    @CsvFileSource(resources = "/sources/cvd_examples.csv", useHeadersInDisplayName = true)
    void agrees_with_the_published_matrices(String model, String type, String in, String out) {
        assertThat(model).isEqualTo("machado2009_sev1.0");
        ColourVision vision = ColourVision.valueOf(type.toUpperCase(Locale.ROOT));
        assertThat(vision.seen(Colour.parse(in)).hex()).isEqualTo(out);
    }

    @ParameterizedTest
    @EnumSource
    void greys_stay_grey(ColourVision vision) {
        for (int level = 0; level < 256; level++) {
            Colour grey = Colour.of(level, level, level);
            assertThat(vision.seen(grey)).isEqualTo(grey);
        }
    }

    /** Red and green of like lightness: two colours to most people, one to some. */
    @Test
    void a_red_and_green_legend_cannot_be_counted_on() {
        Colour red = Colour.parse("#b05a3c");
        Colour green = Colour.parse("#6f7a2c");
        assertThat(red.lab().difference(green.lab())).isGreaterThan(30);
        assertThat(leastDifference(red, green)).isLessThan(10);
    }

    @ParameterizedTest
    @CsvSource({"#000000, #ffffff", "#1b365d, #f2c14e"})
    void light_and_dark_can(String one, String two) {
        assertThat(leastDifference(Colour.parse(one), Colour.parse(two)))
                .isGreaterThan(40)
                .isCloseTo(leastDifference(Colour.parse(two), Colour.parse(one)), within(1e-9));
    }

    private static double leastDifference(Colour one, Colour two) {
        double least = one.lab().difference(two.lab());
        for (ColourVision vision : ColourVision.values()) {
            least = Math.min(
                    least, vision.seen(one).lab().difference(vision.seen(two).lab()));
        }
        return least;
    }
}
