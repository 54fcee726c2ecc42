package hearthcloth.guideline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@link RuleText}: what is written is read again without loss, and what is no rule is refused with a mend. */
class RuleTextTest {

    /** Seed 1: a thousand lengths up to 5 m, to the nanometre, and each mark of the first 10 in. */
    @ParameterizedTest
    @EnumSource(Ruler.class)
    void a_length_loses_nothing_when_it_is_written(Ruler ruler) {
        Random chance = new Random(1);
        for (int i = 0; i < 1000; i++) {
            same(new Length(1 + (long) (chance.nextDouble() * Length.cm(500).nm())), ruler);
            same(ruler.step().times(1 + i % 160), ruler);
        }
    }

    private static void same(Length length, Ruler ruler) {
        String written = RuleText.exact(length, ruler);
        assertThat(RuleText.length(written, ruler.unit())).as(written).isEqualTo(length);
        Size size = new Size(length, Length.cm(20));
        assertThat(RuleText.size(RuleText.exact(size, ruler), ruler.unit())).isEqualTo(size);
    }

    @Test
    void a_square_is_written_with_one_side() {
        assertThat(RuleText.exact(Size.square(Length.cm(40)), Ruler.MILLIMETRES))
                .isEqualTo("40 cm");
        assertThat(RuleText.exact(new Size(Length.cm(40), Length.cm(30)), Ruler.MILLIMETRES))
                .isEqualTo("40 cm x 30 cm");
    }

    @Test
    void the_unit_after_the_second_measure_of_a_range_holds_for_both() {
        assertThat(RuleText.range("2 to 3 in", Unit.CENTIMETRE)).contains(List.of(Length.inches(2), Length.inches(3)));
        assertThat(RuleText.range(" 20 – 30 ", Unit.CENTIMETRE)).contains(List.of(Length.cm(20), Length.cm(30)));
        assertThat(RuleText.range("4 in", Unit.INCH)).isEmpty();
    }

    @Test
    void a_range_back_to_front_is_refused_with_what_to_write() {
        assertThatThrownBy(() -> RuleText.range("3 to 2 in", Unit.INCH))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("\"3 to 2 in\" is no range; write the smaller measure first");
    }

    @ParameterizedTest
    @CsvSource({"35 %, 32, 38", "2%, 1, 5", "98 %, 95, 99", "8 to 12 %, 8, 12", "8 % to 12 %, 8, 12", "30–40%, 30, 40"})
    void shares_are_read(String written, int least, int most) {
        assertThat(RuleText.share(written)).contains(new Share(least, most));
    }

    @ParameterizedTest
    @ValueSource(strings = {"40 to 30 %", "0 to 4 %", "90 to 100 %"})
    void what_is_no_share_is_refused(String written) {
        assertThatThrownBy(() -> RuleText.share(written))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("is no share");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 cm", "501 cm", "5.01 m", "17 ft"})
    void a_length_that_is_a_slip_of_the_unit_is_refused(String written) {
        assertThatThrownBy(() -> RuleText.length(written, Unit.CENTIMETRE))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("check the unit");
    }

    @ParameterizedTest
    @CsvSource({
        "5 in finished, 5 in, true",
        "5 in CUT, 5 in, false",
        "5 in, 5 in, false",
        "finished, finished, false",
    })
    void whether_a_measure_is_meant_as_it_finishes_stands_behind_it(String written, String measure, boolean finished) {
        assertThat(RuleText.Meant.of(written)).isEqualTo(new RuleText.Meant(measure, finished));
    }

    @Test
    void words_without_a_number_are_no_measure() {
        assertThatThrownBy(() -> RuleText.numbered(" wide ", RuleText.Asked.BARS))
                .hasMessage("\"wide\" will not do; write open, strips, a share such as \"8 to 12 %\" or widths such as"
                        + " \"2 to 3 in\"");
        RuleText.numbered("½ in", RuleText.Asked.BARS);
        assertThat(RuleText.isOpen("  OPEN ")).isTrue();
        assertThat(RuleText.plain(" Two \t Halves")).isEqualTo("two halves");
    }
}
