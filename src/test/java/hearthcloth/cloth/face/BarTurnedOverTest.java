package hearthcloth.cloth.face;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Notation;
import org.junit.jupiter.api.Test;

/** {@link BarTurnedOver} by hand: one bar is turned, whatever it is joined of, and nothing else. */
class BarTurnedOverTest {

    private static final Assembly WORK = Notation.parse("(hearth \"a\" 80 x 80 right <| (1A.1 right \"b\" 40 x 50 right />"
            + " 1A.2 right \"c\" 40 x 30 wrong))");

    private static String turned(String bar) {
        return Notation.print(WORK.fold(new BarTurnedOver(bar)));
    }

    @Test
    void both_parts_of_a_joined_bar_are_turned() {
        assertThat(turned("1A"))
                .isEqualTo(Notation.print(WORK)
                        .replace("40 x 50 right", "40 x 50 wrong")
                        .replace("40 x 30 wrong", "40 x 30 right"));
    }

    @Test
    void the_hearth_is_turned_by_its_own_name_and_a_bar_that_is_not_there_changes_nothing() {
        assertThat(turned("hearth")).isEqualTo(Notation.print(WORK).replace("80 x 80 right", "80 x 80 wrong"));
        assertThat(turned("1B")).isEqualTo(Notation.print(WORK));
        assertThat(WORK.fold(new BarTurnedOver("1A")).fold(new BarTurnedOver("1A"))).isEqualTo(WORK);
    }
}
