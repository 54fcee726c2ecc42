package hearthcloth.guideline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@link BarsRule}: each kind is read, said to a reader, and read back as it is written. */
class BarsRuleTest {

    private static Length length(Random chance, Ruler ruler) {
        return ruler.step().times(1 + chance.nextInt(200));
    }

    private static BarsRule any(Random chance, Ruler ruler) {
        boolean finished = chance.nextBoolean();
        return switch (chance.nextInt(5)) {
            case 0 -> new BarsRule.Open();
            case 1 -> new BarsRule.AsStrips();
            case 2 -> {
                int least = 1 + chance.nextInt(50);
                yield new BarsRule.OfWidth(new Share(least, least + chance.nextInt(49)));
            }
            case 3 -> {
                Length least = length(chance, ruler);
                yield new BarsRule.Between(least, least.plus(length(chance, ruler)), finished);
            }
            default -> {
                List<Length> widths = new ArrayList<>();
                for (int i = chance.nextInt(5); i >= 0; i--) {
                    widths.add(length(chance, ruler));
                }
                yield new BarsRule.Widths(widths, finished);
            }
        };
    }

    /** Seed 1: five hundred rules of all kinds on the marks of each ruler. */
    @ParameterizedTest
    @EnumSource(Ruler.class)
    void every_rule_is_read_back_as_it_is_written(Ruler ruler) {
        Random chance = new Random(1);
        for (int i = 0; i < 500; i++) {
            BarsRule rule = any(chance, ruler);
            String written = rule.written(ruler);
            assertThat(BarsRule.parse(written, ruler.unit())).as(written).isEqualTo(rule);
        }
    }

    @Test
    void the_bars_are_said_to_a_reader() {
        assertThat(words("open")).isEqualTo("as your heap has them");
        assertThat(words("as wide as your strips")).isEqualTo("as wide as your strips are");
        assertThat(words("8 to 12 %")).isEqualTo("8 to 12 % of the cloth's width");
        assertThat(words("2 to 3 in")).isEqualTo("from 2 in to 3 in wide, as cut");
        assertThat(words("2 to 3 in finished")).isEqualTo("from 2 in to 3 in wide, finished");
        assertThat(words("5 in, 4 in")).isEqualTo("5, 4 in wide, as cut");
    }

    private static String words(String written) {
        return BarsRule.parse(written, Unit.INCH).said().in(Voice.english(Ruler.EIGHTHS));
    }

    @Test
    void a_comma_parts_widths_and_is_no_decimal_point_between_a_number_and_a_blank() {
        BarsRule two = new BarsRule.Widths(List.of(Length.cm(5), Length.cm(4)), false);
        assertThat(BarsRule.parse("5 cm, 4 cm", Unit.CENTIMETRE)).isEqualTo(two);
        assertThat(BarsRule.parse("5; 4", Unit.CENTIMETRE)).isEqualTo(two);
        assertThat(BarsRule.parse("5,4", Unit.CENTIMETRE))
                .isEqualTo(new BarsRule.Widths(List.of(Length.mm(54)), false));
    }

    @Test
    void more_widths_than_there_are_rounds_are_refused() {
        String many =
                String.join(", ", IntStream.range(0, 41).mapToObj(i -> "5 cm").toList());
        assertThatThrownBy(() -> BarsRule.parse(many, Unit.CENTIMETRE))
                .isInstanceOf(MeasureException.class)
                .hasMessage("41 widths are too many; write at most 40");
    }

    @ParameterizedTest
    @ValueSource(strings = {"wide", "", "9 m", "3 to 2 in", "-2 in", "0 in", "to 3 in"})
    void what_is_no_rule_is_refused_with_a_sentence(String written) {
        assertThatThrownBy(() -> BarsRule.parse(written, Unit.INCH)).isInstanceOf(MeasureException.class);
    }
}
