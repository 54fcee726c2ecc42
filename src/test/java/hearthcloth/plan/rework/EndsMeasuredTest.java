package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both ends of a side: averaged, squared first, or asked about. */
class EndsMeasuredTest {

    private static EndsMeasured ends(String first, String second) {
        return new EndsMeasured(Length.parse(first), Length.parse(second), Length.parse("37 cm"));
    }

    @ParameterizedTest
    @CsvSource({"37 cm, 37 cm, 37 cm, false", "36.8 cm, 37 cm, 36.9 cm, true"})
    void ends_that_agree_or_nearly_give_the_side(String first, String second, String side, boolean averaged) {
        assertThat(ends(first, second).reading())
                .isEqualTo(new EndsMeasured.Reading.Agreed(Length.parse(side), averaged));
    }

    @Test
    void a_longer_end_is_trimmed_to_the_shorter() {
        assertThat(ends("36.8 cm", "37.4 cm").reading())
                .isEqualTo(new EndsMeasured.Reading.OutOfSquare(Length.parse("36.8 cm"), Length.parse("0.6 cm")));
    }

    @ParameterizedTest
    @CsvSource({
        "3.7 cm, 37 cm, 3.7 cm, A_TENTH, 37 cm",
        "37 cm, 370 cm, 370 cm, TEN_TIMES, 37 cm",
        "37 in, 37 in, 93.98 cm, CENTIMETRES_FOR_INCHES, 37 cm",
        "14.5 cm, 14.6 cm, 14.5 cm, INCHES_FOR_CENTIMETRES, 36.83 cm",
        "20 cm, 37 cm, 20 cm, UNKNOWN,",
    })
    void a_measure_far_from_the_plan_is_doubtful(
            String first, String second, String written, EndsMeasured.Slip slip, String meant) {
        assertThat(ends(first, second).reading())
                .isEqualTo(new EndsMeasured.Reading.Doubtful(
                        Length.parse(written), slip, Optional.ofNullable(meant).map(Length::parse)));
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
