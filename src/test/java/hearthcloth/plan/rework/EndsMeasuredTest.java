package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both ends of a side: averaged, squared first, or asked about. */
class EndsMeasuredTest {

    private static final Ruler RULER = Ruler.MILLIMETRES;

    private static EndsMeasured ends(String first, String second) {
        return new EndsMeasured(Length.parse(first), Length.parse(second), Length.parse("37 cm"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "37 cm | 37 cm | It measures 37 cm.",
                "36.8 cm | 37 cm | Between its two ends it measures 36.9 cm.",
                "36.8 cm | 37.4 cm | One end is 0.6 cm longer than the other: square it first, and trim it to 36.8 cm.",
                "3.7 cm | 37 cm | 3.7 cm is far from the 37 cm it was to be; is it 37 cm?",
                "37 cm | 370 cm | 370 cm is far from the 37 cm it was to be; is it 37 cm?",
                "37 in | 37 in | 94 cm is far from the 37 cm it was to be; is it 37 cm?",
                "14.5 cm | 14.6 cm | 14.5 cm is far from the 37 cm it was to be; is it 36.8 cm?",
                "20 cm | 37 cm | 20 cm is far from the 37 cm it was to be; measure it once more."
            })
    void is_told_in_her_unit(String first, String second, String sentence) {
        assertThat(ends(first, second).sentence(RULER)).isEqualTo(sentence);
    }

    @Test
    void sides_the_wrong_way_round_are_noticed() {
        Size planned = Size.parse("37 x 24 cm");
        assertThat(EndsMeasured.isSwapped(Size.parse("24.1 x 36.9 cm"), planned))
                .isTrue();
        assertThat(EndsMeasured.isSwapped(Size.parse("36.5 x 24.2 cm"), planned))
                .isFalse();
        assertThat(EndsMeasured.isSwapped(Size.square(Length.cm(30)), Size.square(Length.cm(37))))
                .isFalse();
    }
}
