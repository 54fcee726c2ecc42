package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every word that names a gift, and the sentence for each thing that is missing. */
class GiftReaderTest {

    private static final Length FOUR = Length.cm(4);
    private static final Length FIVE = Length.cm(5);
    private static final Length SIX = Length.cm(6);

    private static Gift read(String text) {
        return GiftReader.read(text, null);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"box", "Carton", "parcel", "package", "packet", "case", "HAMPER", "lunch box", "round cake box"})
    void things_with_three_sides_are_boxes(String word) {
        assertThat(read(word + " 6 x 5 x 4 cm")).isEqualTo(new Gift.Box(SIX, FIVE, FOUR));
        assertThat(read("6 x 5 x 4 cm " + word)).isEqualTo(new Gift.Box(SIX, FIVE, FOUR));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"roll", "tube", "bolt", "mat", "scroll", "poster", "cylinder", "umbrella", "pole", "yoga mat"})
    void rolls_are_longer_than_they_are_thick_whichever_comes_first(String word) {
        assertThat(read(word + " 4 x 6 cm")).isEqualTo(new Gift.Roll(FOUR, SIX));
        assertThat(read(word + " 6 x 4 cm")).isEqualTo(new Gift.Roll(FOUR, SIX));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ball", "sphere", "globe", "melon", "watermelon", "something like a ball"})
    void round_things_have_one_measure(String word) {
        String known = word.replace("something like ", "");
        assertThat(read(known + " 6 cm across")).isEqualTo(new Gift.Round(SIX));
        assertThat(read("6 cm round")).isEqualTo(new Gift.Round(SIX));
    }

    @Test
    void one_bottle_and_two_are_told_apart() {
        Gift.Bottle bottle = Gift.Bottle.of(FOUR, SIX);
        for (String one : List.of("bottle", "flask", "a sake bottle", "the wine bottle")) {
            assertThat(read(one + " 6 x 4 cm")).as(one).isEqualTo(bottle);
        }
        for (String two : List.of(
                "bottles",
                "flasks",
                "two bottles",
                "2 bottles",
                "pair of bottles",
                "two wine bottles",
                "a couple of sake bottles",
                "two bottle")) {
            assertThat(read(two + " 4 x 6 cm")).as(two).isEqualTo(new Gift.TwoBottles(bottle));
        }
    }

    @Test
    void books_are_always_two_and_a_cube_is_a_box() {
        for (String books : List.of("books", "two books", "pair of books", "two flat books", "2 book")) {
            assertThat(read(books + " 6 x 5 x 4 cm")).as(books).isEqualTo(new Gift.Books(SIX, FIVE, FOUR));
        }
        assertThat(read("cube 6 cm")).isEqualTo(new Gift.Box(SIX, SIX, SIX));
        assertThatThrownBy(() -> read("book 6 x 5 x 4 cm"))
                .isInstanceOf(MeasureException.class)
                .hasMessageStartingWith("one book ties as a box; ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            box 6 x 5 cm           | "box 6 x 5 cm" has 2 measures, but a box has three measures: length x width x height
            cube 6 x 5 cm          | "cube 6 x 5 cm" has 2 measures, but a cube has one measure
            ball 6 x 5 cm          | "ball 6 x 5 cm" has 2 measures, but something round has one measure, its diameter
            books 6 cm             | "books 6 cm" has 1 measures, but two like books have three measures, those of one: height x width x thickness
            roll 6 cm              | "roll 6 cm" has 1 measures, but a roll has two measures: diameter x length
            bottles 6 cm           | "bottles 6 cm" has 1 measures, but two like bottles have two measures: diameter x height
            bottle                 | "bottle" has no measures; a bottle has two measures: diameter x height
            """)
    void a_wrong_number_of_measures_is_answered_with_the_rule_of_the_kind(String text, String sentence) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(MeasureException.class)
                .hasMessage(sentence);
    }

    @Test
    void what_is_not_understood_is_named() {
        assertThatThrownBy(() -> read("  ")).hasMessageStartingWith("no gift is written; write the kind");
        assertThatThrownBy(() -> read("6 x 5 x 4 cm"))
                .hasMessageStartingWith("\"6 x 5 x 4 cm\" does not say what the gift is; write the kind");
        assertThatThrownBy(() -> read("Purple box 6 x 5 x 4 cm"))
                .hasMessageStartingWith("\"Purple box 6 x 5 x 4 cm\": \"purple\" is not understood; write the kind");
        assertThatThrownBy(() -> read("z".repeat(61)))
                .hasMessageStartingWith("\"" + "z".repeat(60) + "…\" does not say");
    }

    @Test
    void a_line_may_be_two_hundred_letters_long() {
        String line = "a ".repeat(91) + "box 6 x 5 x 4 cm" + " a";
        assertThat(line).hasSize(200);
        assertThat(read(line)).isEqualTo(new Gift.Box(SIX, FIVE, FOUR));
        assertThatThrownBy(() -> read("a" + line)).hasMessageContaining("is too long for a gift");
    }

    @Test
    void bare_numbers_need_a_unit_or_take_the_one_assumed() {
        assertThat(GiftReader.read("box: 6, x 5 x 4,", Unit.CENTIMETRE)).isEqualTo(new Gift.Box(SIX, FIVE, FOUR));
        assertThatThrownBy(() -> read("box 6 x 5 x 4"))
                .satisfies(refused -> assertThat(Refusal.of(refused).english()).contains("has no unit"));
    }
}
