package hearthcloth.web.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.words.Language;
import org.junit.jupiter.api.Test;

/** What pages share and no page shows: {@link FormFields}, {@link ExampleMark}, {@link TimeLimit}, {@link Uploads}. */
class FormFieldsTest {

    @Test
    void a_colour_is_read_as_a_number_by_name_and_in_everyday_words() {
        assertThat(FormFields.colour("#8a9a5b", Language.ENGLISH)).isEqualTo(Colour.of(0x8a9a5b));
        assertThat(FormFields.colour("navy", Language.ENGLISH).lab().lightness())
                .isLessThan(30);
        assertThatThrownBy(() -> FormFields.colour("no such hue", Language.ENGLISH))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("\"no such hue\" is no colour we know; write one such as");
    }

    @Test
    void a_choice_that_is_not_offered_is_none() {
        assertThat(FormFields.choice(Face.class, "back")).contains(Face.BACK);
        assertThat(FormFields.choice(Face.class, "")).isEmpty();
        assertThat(FormFields.choice(Face.class, "inside")).isEmpty();
        for (Ruler ruler : Ruler.values()) {
            assertThat(FormFields.choice(Ruler.class, ruler.name())).contains(ruler);
        }
    }

    @Test
    void the_example_is_known_by_its_mark_and_no_number_of_hers_has_it() {
        assertThat(ExampleMark.isOn(ExampleMark.MARK + "12")).isTrue();
        for (int id = 0; id < 2000; id++) {
            assertThat(ExampleMark.isOn(String.valueOf(id))).isFalse();
        }
    }

    /** An hour is not over within this test, and what should have ended an hour ago has. */
    @Test
    void a_time_limit_is_a_budget() {
        assertThat(TimeLimit.within(3_600_000).spent()).isFalse();
        assertThat(TimeLimit.within(-3_600_000).spent()).isTrue();
    }

    @Test
    void a_refusal_keeps_what_brought_it_about() {
        IllegalStateException cause = new IllegalStateException("cut off");
        var refused = Uploads.refused(422, "Send it again.", cause);
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused).hasMessage("Send it again.");
        assertThat(refused.getSuppressed()).containsExactly(cause);
    }

    @Test
    void only_pages_that_do_not_set_their_own_heading_are_headed_by_the_frame() {
        assertThat(PageLayout.Shape.COLUMN.isHeaded()).isTrue();
        assertThat(PageLayout.Shape.WIDE.isHeaded()).isTrue();
        assertThat(PageLayout.Shape.SCREEN.isHeaded()).isFalse();
        assertThat(PageLayout.Shape.WORK.isHeaded()).isFalse();
        assertThat(PageLayout.Shape.WORK.word()).isEqualTo("work");
    }

    @Test
    void a_stale_change_tells_what_is_there_now_and_how_to_send_again() {
        StaleChangeException stale =
                new StaleChangeException("It changed.", "Now it is red.", "/cloth/a", "version", "3");
        assertThat(stale).hasMessage("It changed.");
        assertThat(stale.now()).isEqualTo("Now it is red.");
        assertThat(stale.look()).isEqualTo("/cloth/a");
        assertThat(stale.mark()).isEqualTo("version");
        assertThat(stale.fresh()).isEqualTo("3");
    }
}
