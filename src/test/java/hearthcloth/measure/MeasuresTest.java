package hearthcloth.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasuresTest {

    /** The inch is exactly 25.4 mm, the yard 0.9144 m: docs/sources.md#inch. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "6 1/2 in|165100000",
                "6½\"|165100000",
                "6½″|165100000",
                "6.5in|165100000",
                "6-1/2 in|165100000",
                "16,5 cm|165000000",
                "165 mm|165000000",
                "1/2 yd|457200000",
                "½ yard|457200000",
                "38 ½ inches|977900000",
                "2 ft|609600000",
                "0.1 mm|100000",
                "1/64 in|396875",
                "1/3 in|8466667",
                ".5 in|12700000",
                "0 in|0",
                "3/8 IN.|9525000",
                "1.5 m|1500000000",
                "1200 mm|1200000000"
            })
    void reads_what_makers_write(String text, long nm) {
        assertThat(Length.parse(text).nm()).isEqualTo(nm);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "in",
                "six in",
                "6",
                "6 parsec",
                "-1 in",
                "−2 cm",
                "1/0 in",
                "1,200 mm",
                "6 1/2/3 in",
                "10 km",
                "2000 m",
                "1e9 mm",
                "6..5 in",
                "61 / 2 in",
                "NaN in",
                "6 1/2 1/2 in",
                "99999999999999999999 mm",
                "½½ in"
            })
    void refuses_the_rest_with_a_sentence(String text) {
        assertThatThrownBy(() -> Length.parse(text))
                .isInstanceOf(MeasureException.class)
                .message()
                .isNotBlank();
    }

    @Test
    void a_bare_number_takes_the_assumed_unit() {
        assertThat(Measures.length("12", Unit.CENTIMETRE)).isEqualTo(Length.cm(12));
    }

    @Test
    void the_last_unit_counts_for_all() {
        assertThat(Measures.lengths("30 x 20 × 8 cm", null))
                .isEqualTo(List.of(Length.cm(30), Length.cm(20), Length.cm(8)));
        assertThat(Measures.lengths("1 m by 20 cm", null)).isEqualTo(List.of(Length.cm(100), Length.cm(20)));
        assertThat(Size.parse("38 1/2 in")).isEqualTo(Size.square(Length.inches(77, 2)));
        assertThat(Size.parse("38 x 30½ in")).isEqualTo(new Size(Length.inches(38), Length.inches(61, 2)));
        assertThatThrownBy(() -> Size.parse("1 x 2 x 3 in")).isInstanceOf(MeasureException.class);
    }

    @Test
    void what_a_ruler_writes_reads_back_to_the_same_mark() {
        Random random = new Random(7);
        for (Ruler ruler : Ruler.values()) {
            for (int i = 0; i < 500; i++) {
                Length length = new Length(random.nextLong(3_000_000_000L));
                for (Rounding rounding : Rounding.values()) {
                    String text = ruler.write(length, rounding)
                            .replaceAll("([⁰¹²³⁴⁵⁶⁷⁸⁹]+)⁄₁₆", " $1/16")
                            .replace('¹', '1')
                            .replace('³', '3')
                            .replace('⁵', '5')
                            .replace('⁷', '7')
                            .replace('⁹', '9');
                    assertThat(Length.parse(text)).as(text).isEqualTo(ruler.mark(length, rounding));
                }
            }
        }
    }

    @Test
    void rounding_goes_where_it_says() {
        Length length = Length.inches(3, 64);
        assertThat(Ruler.EIGHTHS.write(length, Rounding.UP)).isEqualTo("⅛ in");
        assertThat(Ruler.EIGHTHS.write(length, Rounding.DOWN)).isEqualTo("0 in");
        assertThat(Ruler.SIXTEENTHS.write(length, Rounding.UP)).isEqualTo("¹⁄₁₆ in");
        assertThat(Ruler.MILLIMETRES.write(Length.mm(978), Rounding.NEAREST)).isEqualTo("97.8 cm");
        assertThat(Ruler.EIGHTHS.write(Length.inches(77, 2), Rounding.UP)).isEqualTo("38½ in");
    }
}
