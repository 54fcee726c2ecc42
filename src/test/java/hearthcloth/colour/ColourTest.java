package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/colour/css_colours.csv", useHeadersInDisplayName = true)
    void reads_every_css_name_in_either_case(String name, String hex) {
        assertThat(Colour.parse(name).hex()).isEqualTo(hex);
        assertThat(Colour.parse(" " + name.toUpperCase(Locale.ROOT) + " ").hex())
                .isEqualTo(hex);
    }

    @ParameterizedTest
    @CsvSource({"'#C0392B', #c0392b", "' #fff ', #ffffff", "#1aF, #11aaff", "#000, #000000", "#00000a, #00000a"})
    void reads_hexadecimal(String text, String hex) {
        assertThat(Colour.parse(text).hex()).isEqualTo(hex);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "#", "#12", "#12345", "#1234567", "#gggggg", "123456", "sage green", "rgb(1,2,3)", "＃fff"})
    void refuses_the_rest_and_says_what_was_written(String text) {
        assertThatThrownBy(() -> Colour.parse(text))
                .isInstanceOf(ColourException.class)
                .hasMessage(text.strip());
    }

    @Test
    void has_24_bits() {
        assertThat(Colour.of(0xff123456).hex()).isEqualTo("#123456");
        assertThatThrownBy(() -> new Colour(0x1000000)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Colour(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Colour.of(0, 256, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Colour.of(0, 0, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/sources/wcag_contrast.csv", useHeadersInDisplayName = true)
    void agrees_with_the_standard_on_contrast(String one, String two, double y1, double y2, double contrast) {
        assertThat(Colour.parse(one).luminance()).isCloseTo(y1, within(1e-6));
        assertThat(Colour.parse(two).luminance()).isCloseTo(y2, within(1e-6));
        assertThat(Colour.parse(one).contrastWith(Colour.parse(two))).isCloseTo(contrast, within(5.1e-5));
        assertThat(Colour.parse(two).contrastWith(Colour.parse(one))).isCloseTo(contrast, within(5.1e-5));
    }

    /** Not a sample: all 16 777 216 colours, against docs/sources.md#contrast. */
    @Test
    void has_an_ink_of_at_least_4_5_to_1_on_every_colour_there_is() {
        double least = Double.POSITIVE_INFINITY;
        for (int rgb = 0; rgb <= 0xffffff; rgb++) {
            Colour colour = Colour.of(rgb);
            least = Math.min(least, colour.contrastWith(colour.inkOn()));
        }
        assertThat(least).isGreaterThanOrEqualTo(Math.sqrt(21) - 1e-12).isLessThan(4.59);
    }

    /** One shade is 10 points of L*; half a point is left for rounding to 8 bits. */
    @Test
    void goes_one_shade_darker_and_lighter() {
        for (int rgb = 0; rgb <= 0xffffff; rgb += 997) {
            Colour colour = Colour.of(rgb);
            double lightness = colour.lab().lightness();
            assertThat(colour.darker().lab().lightness())
                    .as("darker than %s", colour.hex())
                    .isCloseTo(Math.max(0, lightness - 10), within(0.5));
            assertThat(colour.lighter().lab().lightness())
                    .as("lighter than %s", colour.hex())
                    .isCloseTo(Math.min(100, lightness + 10), within(0.5));
        }
    }

    /** Above 5 two colours are plainly two; the band of a fell must never melt into its cloth. */
    @Test
    void shades_a_fell_so_that_it_shows_on_every_cloth() {
        for (int rgb = 0; rgb <= 0xffffff; rgb += 997) {
            Colour colour = Colour.of(rgb);
            assertThat(colour.lab().difference(colour.shade().lab()))
                    .as(colour.hex())
                    .isGreaterThan(5)
                    .isLessThan(14);
        }
        assertThat(Colour.BLACK.shade()).isEqualTo(Colour.BLACK.lighter()).isNotEqualTo(Colour.BLACK);
        assertThat(Colour.WHITE.shade()).isEqualTo(Colour.WHITE.darker());
    }
}
