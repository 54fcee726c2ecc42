package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GiftTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "box 30 x 20 x 8 cm|a box 30 × 20 × 8 cm",
                "30 x 20 x 8 cm box|a box 30 × 20 × 8 cm",
                "A Box, 300 × 200 × 80 mm|a box 30 × 20 × 8 cm",
                "cake box: 30 by 20 by 8 cm|a box 30 × 20 × 8 cm",
                "cube 12 cm|a box 12 × 12 × 12 cm",
                "bottle 8 x 30 cm|a bottle 8 cm across, 30 cm high",
                "wine bottle 30 x 7,5 cm|a bottle 7.5 cm across, 30 cm high",
                "two bottles 8 x 30 cm|two bottles 8 cm across, 30 cm high",
                "2 wine bottles, 8 x 30 cm|two bottles 8 cm across, 30 cm high",
                "a pair of bottles 8 x 30 cm|two bottles 8 cm across, 30 cm high",
                "round 22 cm|something round, 22 cm across",
                "Ball 22 cm across|something round, 22 cm across",
                "22 cm melon|something round, 22 cm across",
                "round box 22 x 22 x 10 cm|a box 22 × 22 × 10 cm",
                "books 21 x 15 x 2 cm|two books, each 21 × 15 × 2 cm",
                "two books 21 x 15 x 2 cm|two books, each 21 × 15 × 2 cm",
                "2 books 21 x 15 x 2 cm each|two books, each 21 × 15 × 2 cm",
                "roll 6 x 40 cm|a roll 6 cm across, 40 cm long",
                "yoga mat 12 x 61 cm|a roll 12 cm across, 61 cm long"
            })
    void reads_what_makers_write(String text, String description) {
        assertThat(Gift.parse(text, null).describe(Ruler.MILLIMETRES)).isEqualTo(description);
    }

    @Test
    void bare_numbers_take_the_assumed_unit() {
        assertThat(Gift.parse("box 12 x 9 x 4 1/2", Unit.INCH).describe(Ruler.EIGHTHS))
                .isEqualTo("a box 12 × 9 × 4½ in");
        assertThat(Gift.parse("box 12\" x 9\" x 4½\"", null)).isEqualTo(Gift.parse("box 12 x 9 x 4 1/2", Unit.INCH));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "box",
                "30 x 20 x 8 cm",
                "box 30 x 20 x 8",
                "box 30 x 20 cm",
                "bottle 30 cm",
                "box 0 x 20 x 8 cm",
                "box -3 x 20 x 8 cm",
                "box 300 x 20 x 8 cm",
                "ball 10 km",
                "ball 5 mm",
                "box 30 x 20 x 8 parsecs",
                "book 21 x 15 x 2 cm",
                "elephant 3 x 2 x 2 m",
                "box 30 x x 8 cm",
                "ball 1e3 cm",
                "\u0000\u0001 box"
            })
    void refuses_the_rest_with_one_sentence(String text) {
        assertThatThrownBy(() -> Gift.parse(text, null))
                .isInstanceOf(MeasureException.class)
                .message()
                .isNotBlank()
                .doesNotContain("\n")
                .hasSizeLessThan(330);
    }

    @Test
    void says_what_is_wrong_and_how_to_mend_it() {
        assertThatThrownBy(() -> Gift.parse("box 300 x 20 x 8 cm", null))
                .hasMessage("300 cm is more than two metres, too large to wrap in one cloth; check the number and its"
                        + " unit");
        assertThatThrownBy(() -> Gift.parse("bottle 30 cm", null))
                .hasMessage("\"bottle 30 cm\" has 1 measures, but a bottle has two measures: diameter x height");
        assertThatThrownBy(() -> Gift.parse("x".repeat(5000), null)).hasMessageContaining("too long for a gift");
    }

    @Test
    void a_gift_of_the_same_shape_keeps_its_proportions() {
        Gift.Box box = new Gift.Box(Length.mm(300), Length.mm(200), Length.mm(80));
        assertThat(box.like(Length.mm(150))).isEqualTo(new Gift.Box(Length.mm(150), Length.mm(100), Length.mm(40)));
        Gift.Bottle wine = Gift.Bottle.of(Length.mm(75), Length.mm(300));
        assertThat(wine).isEqualTo(new Gift.Bottle(Length.mm(75), Length.mm(300), Length.mm(30), Length.mm(190)));
        assertThat(wine.like(Length.mm(600)).neck()).isEqualTo(Length.mm(60));
    }
}
