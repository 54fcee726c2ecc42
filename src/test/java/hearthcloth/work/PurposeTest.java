package hearthcloth.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link Purpose}: what a cloth is for, in her own words. */
class PurposeTest {

    private static final Voice ENGLISH = Voice.english(Ruler.MILLIMETRES);

    @Test
    void a_gift_without_a_unit_is_completed_with_hers_and_keeps_its_size_when_the_ruler_changes() {
        Purpose box = Purpose.of("box 30 x 20 x 8", "", Unit.CENTIMETRE);

        assertThat(box.gift()).isEqualTo("box 30 x 20 x 8 cm");
        assertThat(box.thing()).contains(Gift.parse("box 30 x 20 x 8 cm", Unit.INCH));
        assertThat(Purpose.of("box 30 x 20 x 8 cm", "", Unit.INCH).gift()).isEqualTo("box 30 x 20 x 8 cm");
        assertThatThrownBy(() -> Purpose.of("a box", "", Unit.INCH)).isInstanceOf(MeasureException.class);
    }

    @Test
    void the_tie_she_named_is_tied_and_else_the_first_that_suits() {
        Gift box = Gift.parse("box 30 x 20 x 8 cm", null);
        assertThat(new Purpose("box 30 x 20 x 8 cm", "four-corner tie", "").tied())
                .contains(Tie.FOUR_CORNER);
        assertThat(new Purpose("box 30 x 20 x 8 cm", "", "").tied())
                .contains(Tie.suiting(box).get(0));
        assertThat(Purpose.NOTHING.tied()).isEmpty();
    }

    @Test
    void what_is_left_for_knot_and_tail_follows_the_ruler() {
        assertThat(Purpose.tail(Ruler.MILLIMETRES)).isEqualTo(Tail.METRIC);
        assertThat(Purpose.tail(Ruler.EIGHTHS)).isEqualTo(Tail.INCHES);
    }

    /** From 5 cm to 5 m, both included, whichever side it is. */
    @Test
    void a_size_within_reach_is_read_and_one_beyond_is_told() {
        assertThat(Purpose.size("5 x 500 cm", Unit.INCH)).isEqualTo(new Size(Length.cm(5), Length.cm(500)));
        assertThat(Purpose.size("20", Unit.INCH)).isEqualTo(Size.square(Length.inches(20)));
        for (String beyond : new String[] {"4.9 x 60 cm", "60 x 4.9 cm", "501 x 60 cm", "60 x 501 cm"}) {
            assertThatThrownBy(() -> Purpose.size(beyond, Unit.CENTIMETRE))
                    .isInstanceOf(MeasureException.class)
                    .hasMessageContaining(beyond)
                    .hasMessageContaining("check the number and its unit");
        }
    }

    @Test
    void what_comes_from_elsewhere_is_readable_or_it_is_not() {
        assertThat(Purpose.NOTHING.isReadable()).isTrue();
        assertThat(new Purpose("", "", "50 cm").isReadable()).isTrue();
        assertThat(new Purpose("box 30 x 20 x 8 cm", "", "").isReadable()).isTrue();
        assertThat(new Purpose("", "", "huge").isReadable()).isFalse();
        assertThat(new Purpose("", "", "900 cm").isReadable()).isFalse();
        assertThat(new Purpose("a thing", "", "").isReadable()).isFalse();
    }

    @Test
    void it_is_said_in_a_sentence_by_gift_or_by_size_or_not_at_all() {
        assertThat(new Purpose("box 30 x 20 x 8 cm", "four-corner tie", "").words(ENGLISH))
                .contains("30", "20", "8", "four-corner");
        assertThat(new Purpose("", "", "50 cm").words(ENGLISH)).contains("50");
        assertThat(Purpose.NOTHING.words(ENGLISH)).isEmpty();
    }

    /** A box of 30 × 20 × 8 cm asks for 70.8 cm with tails of 12 cm; so 100 cm fit and 40 cm do not. */
    @Test
    void whether_a_cloth_ties_the_gift_is_told_only_where_there_is_one() {
        Purpose box = new Purpose("box 30 x 20 x 8 cm", "four-corner tie", "");

        assertThat(box.wrapped(Ruler.MILLIMETRES)).isPresent();
        assertThat(box.fits(Size.square(Length.cm(100)), ENGLISH))
                .isNotEmpty()
                .isNotEqualTo(box.fits(Size.square(Length.cm(40)), ENGLISH));
        assertThat(Purpose.NOTHING.fits(Size.square(Length.cm(40)), ENGLISH)).isEmpty();
        assertThat(Purpose.NOTHING.wrapped(Ruler.MILLIMETRES)).isEmpty();
    }

    /** Law: where no gift is said, what a cloth is shown round is tied by it, and what she said stays. */
    @Test
    void a_cloth_for_no_gift_is_shown_round_something_that_it_ties() {
        for (Ruler ruler : List.of(Ruler.EIGHTHS, Ruler.MILLIMETRES)) {
            for (long cm = 40; cm <= 200; cm++) {
                Size cloth = new Size(Length.cm(cm), Length.cm(cm + cm % 7));
                Purpose shown = Purpose.NOTHING.orShown(cloth, ruler);
                Gift gift = shown.thing().orElseThrow();
                Length tail = Purpose.tail(ruler).usual();
                assertThat(Tie.FOUR_CORNER.fit(gift, cloth, tail).holds())
                        .as(cm + " " + shown)
                        .isTrue();
                assertThat(shown.tied()).contains(Tie.FOUR_CORNER);
            }
        }
        Purpose said = Purpose.of("ball 22 cm", "", Unit.CENTIMETRE);
        assertThat(said.orShown(Size.square(Length.cm(90)), Ruler.MILLIMETRES)).isEqualTo(said);
        assertThat(Purpose.NOTHING.orShown(Size.square(Length.cm(10)), Ruler.MILLIMETRES))
                .isEqualTo(Purpose.NOTHING);
    }
}
