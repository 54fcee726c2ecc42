package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ColourNameTest {

    private static final List<String> BASIC = List.of(
            "red",
            "orange",
            "yellow",
            "green",
            "blue",
            "purple",
            "pink",
            "white",
            "grey",
            "brown",
            "black",
            "turquoise");

    /**
     * CSS names that people would dispute: a brick red, a greyed turquoise, whites with a breath of colour, greys and
     * browns that look blue, teal or pink, and the violet reds that are pink.
     */
    private static final Set<String> DISPUTED = Set.of(
            "brown",
            "cadetblue",
            "aliceblue",
            "antiquewhite",
            "navajowhite",
            "darkslategrey",
            "slategrey",
            "lightslategrey",
            "rosybrown",
            "greenyellow",
            "lightseagreen",
            "mediumvioletred",
            "palevioletred");

    @ParameterizedTest
    @CsvFileSource(resources = "/colour/css_colours.csv", useHeadersInDisplayName = true)
    void a_css_name_that_ends_in_a_basic_word_keeps_it(String name, String hex) {
        String ours = ColourName.of(Colour.parse(hex));
        assertThat(ours).matches("[a-z]+( [a-z]+){0,3}");
        for (String word : BASIC) {
            if (name.endsWith(word) && !DISPUTED.contains(name)) {
                assertThat(ours).endsWith(word);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "#006400, dark green",
        "#ffffe0, pale yellow",
        "#808080, grey",
        "#d3d3d3, light grey",
        "#000080, dark blue",
        "#0000ff, bright blue",
        "#ffffff, white",
        "#111111, black",
        "#f5e6c8, cream",
        "#800020, dark red",
        "#6b1c3a, wine red",
        "#4b2e20, dark brown",
        "#708090, greyish blue",
        "#ffb6c1, pale pink",
        "#556b2f, olive green"
    })
    void speaks_plainly(String hex, String name) {
        assertThat(ColourName.of(Colour.parse(hex))).isEqualTo(name);
    }

    @Test
    void a_grey_gets_lighter_name_by_name() {
        StringBuilder seen = new StringBuilder();
        String last = "";
        for (int level = 0; level < 256; level++) {
            String name = ColourName.of(Colour.of(level, level, level));
            if (!name.equals(last)) {
                seen.append(name).append(", ");
                last = name;
            }
        }
        assertThat(seen).hasToString("black, dark grey, grey, light grey, white, ");
    }

    /** The whole of sRGB is spoken of in few words, none twice in a name. */
    @Test
    void uses_few_words() {
        Set<String> words = new TreeSet<>();
        for (int rgb = 0; rgb <= 0xffffff; rgb += 641) {
            List<String> name = List.of(ColourName.of(Colour.of(rgb)).split(" ", -1));
            assertThat(name).doesNotHaveDuplicates();
            words.addAll(name);
        }
        assertThat(words)
                .containsExactlyInAnyOrder(
                        "beige",
                        "black",
                        "blue",
                        "bright",
                        "brown",
                        "cream",
                        "dark",
                        "green",
                        "grey",
                        "greyish",
                        "light",
                        "olive",
                        "orange",
                        "pale",
                        "pink",
                        "purple",
                        "red",
                        "teal",
                        "turquoise",
                        "white",
                        "wine",
                        "yellow");
    }
}
