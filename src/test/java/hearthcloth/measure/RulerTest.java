package hearthcloth.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a {@link Ruler} writes beside single lengths, and sentences of {@link Measures} about what cannot be read. */
class RulerTest {

    @ParameterizedTest
    @EnumSource(Ruler.class)
    void a_ruler_is_known_by_the_distance_of_its_marks(Ruler ruler) {
        assertThat(Ruler.ofStep(ruler.step())).contains(ruler);
        assertThat(Ruler.ofStep(ruler.step().plus(new Length(1)))).isEmpty();
        assertThat(ruler.isMetric()).isEqualTo(ruler.unit() == Unit.CENTIMETRE);
    }

    @Test
    void a_size_has_its_unit_once() {
        assertThat(Ruler.EIGHTHS.write(new Size(Length.inches(77, 2), Length.inches(30)), Rounding.UP))
                .isEqualTo("38½ × 30 in");
        assertThat(Ruler.MILLIMETRES.write(new Size(Length.mm(978), Length.mm(1)), Rounding.UP))
                .isEqualTo("97.8 × 0.1 cm");
    }

    @ParameterizedTest
    @CsvSource({
        "EIGHTHS, 263525000, UP, 0.3 yd",
        "EIGHTHS, 914400000, DOWN, 1.0 yd",
        "EIGHTHS, 914399999, DOWN, 0.9 yd",
        "EIGHTHS, 11887200000, UP, 13.0 yd",
        "MILLIMETRES, 6600000001, UP, 6.7 m",
        "MILLIMETRES, 6600000001, DOWN, 6.6 m",
    })
    void long_runs_are_in_yards_or_metres(Ruler ruler, long nm, Rounding rounding, String written) {
        assertThat(ruler.run(new Length(nm), rounding)).isEqualTo(written);
    }

    /** 6 × 6 in are 23 225.76 mm². */
    @Test
    void areas_are_in_squares_of_the_unit() {
        assertThat(Ruler.EIGHTHS.squares(23_225.76, Rounding.NEAREST)).isEqualTo(36);
        assertThat(Ruler.EIGHTHS.squares(23_300, Rounding.UP)).isEqualTo(37);
        assertThat(Ruler.MILLIMETRES.squares(48_190, Rounding.DOWN)).isEqualTo(481);
        assertThat(Ruler.MILLIMETRES.squares(48_110, Rounding.UP)).isEqualTo(482);
    }

    @Test
    void below_zero_is_written_with_a_sign() {
        assertThat(Ruler.EIGHTHS.number(Length.inches(-5, 8), Rounding.NEAREST)).isEqualTo("−⅝");
        assertThat(Ruler.MILLIMETRES.number(Length.mm(-15), Rounding.NEAREST)).isEqualTo("−1.5");
        assertThat(Ruler.SIXTEENTHS.number(Length.inches(21, 16), Rounding.NEAREST))
                .isEqualTo("1⁵⁄₁₆");
    }

    @Test
    void a_unit_written_once_holds_for_the_numbers_without_one() {
        assertThat(Measures.lengths("30 cm x 20", null)).containsExactly(Length.cm(30), Length.cm(20));
        assertThat(Measures.lengths("1 m x 20 cm x 3", null))
                .as("the last one written")
                .containsExactly(Length.cm(100), Length.cm(20), Length.cm(3));
        assertThat(Measures.lengths("2 x 3 in x 4", Unit.METRE))
                .containsExactly(Length.inches(2), Length.inches(3), Length.inches(4));
    }

    @Test
    void a_kilometre_is_the_longest_that_is_read() {
        assertThat(Measures.length("1000 m", null)).isEqualTo(Measures.LONGEST);
        assertThat(slip("1000.001 m", null)).containsExactly("TOO_LONG", "1000.001 m");
    }

    /** What is wrong with a text, and what is said back of it. */
    private static List<String> slip(String text, @Nullable Unit bare) {
        MeasureException refused = catchThrowableOfType(MeasureException.class, () -> Measures.length(text, bare));
        return Stream.concat(Stream.of(refused.slip().name()), refused.texts().stream())
                .toList();
    }

    @Test
    void what_cannot_be_read_is_told_by_its_kind_with_what_was_written() {
        assertThat(slip("6", null)).containsExactly("NO_UNIT", "6");
        assertThat(slip("6 parsec", null)).containsExactly("UNKNOWN_UNIT", "6 parsec", "parsec");
        assertThat(slip("6 ells", Unit.INCH)).containsExactly("UNKNOWN_UNIT", "6 ells", "ells");
        MeasureException three =
                catchThrowableOfType(MeasureException.class, () -> Measures.size("1 x 2 x 3 in", null));
        assertThat(three.slip()).isEqualTo(MeasureException.Slip.NUMBERS);
        assertThat(three.texts()).containsExactly("1 x 2 x 3 in", "3");
        String sixty = "x".repeat(60);
        assertThat(slip(sixty, null)).contains(sixty);
        assertThat(slip(sixty + "y", null)).contains(sixty + "…");
    }

    @Test
    void a_full_stop_after_a_unit_is_no_part_of_it() {
        assertThat(Unit.named(" IN. ")).contains(Unit.INCH);
        assertThat(Unit.named("m")).contains(Unit.METRE);
        assertThat(Unit.named("m.")).contains(Unit.METRE);
        assertThat(Unit.named(".")).isEmpty();
        assertThat(Unit.named("in cm")).as("two units are none").isEmpty();
        assertThat(Unit.named("")).isEmpty();
    }
}
