package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;

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
        "deep purple, dark purple",
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
    void a_word_for_cloth_gives_way_to_a_colour_beside_it() {
        assertThat(Colour.named("harbour linen dark blue")).isEqualTo(Colour.named("dark blue"));
        assertThat(Colour.named("red denim")).isEqualTo(Colour.named("red"));
        assertThat(Colour.named("linen")).isPresent();
    }
}
