package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FabricWordsTest {

    /** Words in, words out: the two vocabularies are kept apart in the code and must mean the same. */
    @ParameterizedTest
    @CsvSource({
        "sage green, green",
        "old NAVY shirt, dark blue",
        "Red and white gingham, pink",
        "reddish brown, brown",
        "dark brown, dark brown",
        "pale yellow print, pale yellow",
        "unbleached linen, beige",
        "mustard yellow, dark yellow",
        "duck-egg blue, pale turquoise",
        "charcoal grey, dark grey",
        "écru, beige",
        "burgundy, wine red",
        "denim (from jeans), blue",
        "burnt orange, dark orange",
        "off-white, white",
        "deep purple, purple",
        "'black,white', grey"
    })
    void understands_words_for_cloth(String words, String name) {
        assertThat(Colour.named(words).map(ColourName::of)).contains(name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"red", "orange", "yellow", "green", "blue", "purple", "pink", "brown", "grey", "white", "black"})
    void a_plain_word_comes_back_as_itself(String word) {
        assertThat(ColourName.of(Colour.named(word).orElseThrow())).endsWith(word);
    }

    @ParameterizedTest
    @CsvSource({
        "sage green, sage",
        "green sage, sage",
        "charcoal grey, charcoal",
        "chocolate brown, chocolate",
        "duck egg blue, duck egg",
        "the navy one, navy",
        "madder red check, madder",
        "gray, grey",
        "deep sky blue, deep skyblue"
    })
    void two_ways_to_say_it_mean_one_colour(String one, String two) {
        assertThat(Colour.named(one)).isPresent().isEqualTo(Colour.named(two));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "print", "stripe, 2 m", "light", "bordered", "12", "#ff0000"})
    void does_not_guess(String words) {
        assertThat(Colour.named(words)).isEmpty();
    }

    @Test
    void changes_only_the_colour_that_follows() {
        double sage = lightness("sage");
        assertThat(lightness("light sage")).isGreaterThan(sage + 5);
        assertThat(lightness("pale sage")).isGreaterThan(lightness("light sage") + 3);
        assertThat(lightness("dark sage")).isLessThan(lightness("deep sage") - 3);
        assertThat(Colour.named("faded red").orElseThrow().lab().chroma())
                .isLessThan(Colour.named("red").orElseThrow().lab().chroma() * 0.7);
        assertThat(lightness("white with dark red")).isBetween(lightness("dark red"), lightness("white"));
        assertThat(lightness("white with dark red")).isGreaterThan(lightness("dark white with dark red"));
    }

    @Test
    void a_colour_of_another_family_is_mixed_in() {
        assertThat(Colour.named("cream blue")).isNotEqualTo(Colour.named("cream"));
        assertThat(Colour.named("cream blue")).isEqualTo(Colour.named("blue and cream"));
    }

    private static double lightness(String words) {
        return Colour.named(words).orElseThrow().lab().lightness();
    }

    @Test
    void several_colours_are_all_kept() {
        assertThat(Colour.allNamed("green and brown linen"))
                .containsExactly(
                        Colour.named("green").orElseThrow(),
                        Colour.named("brown").orElseThrow());
        assertThat(Colour.allNamed("red linen, red check")).hasSize(1);
    }

    /**
     * 267 names of ISCC–NBS, each as one would say it of a cloth, and the names of CSS but for those where cloth means
     * something else: over 300 phrases, none off by more than 12 of CIEDE2000 (docs/sources.md#iscc-nbs, #css-names).
     */
    @Test
    void three_hundred_published_names_are_met() throws IOException {
        Map<String, Colour> published = published("/colour/iscc_nbs.csv");
        assertThat(published).hasSize(267);
        Map<String, Colour> css = published("/colour/css_colours.csv");
        css.keySet().removeAll(CLOTH_WINS);
        published.putAll(css);
        assertThat(published).hasSizeGreaterThan(300);
        List<String> off = new ArrayList<>();
        published.forEach((name, colour) -> {
            for (String said : List.of(name, name + " linen", "old " + name + " check", name.replace("gray", "grey"))) {
                double difference = Colour.named(said)
                        .map(ours -> ours.lab().difference(colour.lab()))
                        .orElse(100.0);
                if (difference > 12) {
                    off.add(said + " " + Math.round(difference));
                }
            }
        });
        assertThat(off).isEmpty();
    }

    /** What cloth means by these words is not what a screen means; all of them, so that none is added unseen. */
    private static final List<String> CLOTH_WINS = List.of(
            "aqua",
            "blue",
            "brown",
            "chocolate",
            "forestgreen",
            "fuchsia",
            "gold",
            "indigo",
            "khaki",
            "lavender",
            "lime",
            "magenta",
            "maroon",
            "navy",
            "orange",
            "palegreen",
            "plum",
            "red",
            "royalblue",
            "turquoise",
            "violet",
            "yellow");

    @ParameterizedTest
    @CsvSource({
        "red, vivid red",
        "orange, vivid orange",
        "yellow, brilliant yellow",
        "green, strong yellowish green",
        "blue, strong blue",
        "purple, strong violet",
        "pink, strong pink",
        "brown, moderate brown",
        "grey, medium gray",
        "black, black",
        "white, white"
    })
    void plain_words_are_a_usual_tone_of_their_colour(String word, String published) throws IOException {
        Colour tone = Objects.requireNonNull(published("/colour/iscc_nbs.csv").get(published));
        assertThat(Colour.named(word + " linen").orElseThrow().lab().difference(tone.lab()))
                .isLessThan(12);
    }

    private static Map<String, Colour> published(String file) throws IOException {
        try (InputStream stream = FabricWordsTest.class.getResourceAsStream(file)) {
            Map<String, Colour> colours = new TreeMap<>();
            new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.contains(",#"))
                    .forEach(line -> colours.put(line.split(",", -1)[0], Colour.parse(line.split(",", -1)[1])));
            return colours;
        }
    }

    @Test
    void a_word_for_cloth_gives_way_to_a_colour_beside_it() {
        assertThat(Colour.named("harbour linen dark blue")).isEqualTo(Colour.named("dark blue"));
        assertThat(Colour.named("red denim")).isEqualTo(Colour.named("red"));
        assertThat(Colour.named("linen")).isPresent();
    }
}
