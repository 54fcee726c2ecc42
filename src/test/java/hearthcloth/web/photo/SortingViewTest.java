package hearthcloth.web.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Buttons of a photograph's pieces ({@link SortingView}) and where its pages are ({@link PhotoAddress}). */
class SortingViewTest {

    /** Ids on one page must differ: for the same piece, by what is done, its name and the corner it is about. */
    @Test
    void buttons_that_do_different_things_have_different_ids() {
        SortingView.PieceButton button =
                new SortingView.PieceButton(null, "turn", "turn", "p1", new SortingView.Label("Turn", "Turn"), OptionalInt.empty());
        assertThat(button.id()).isEqualTo("do-turn-p1");
        assertThat(button.named("again").id()).isEqualTo("do-again-p1");
        assertThat(button.named("again").what()).as("it does the same").isEqualTo("turn");
        assertThat(button.at(0).id()).isEqualTo("do-turn-p1-0");
        assertThat(button.at(3).id()).isEqualTo("do-turn-p1-3");
        assertThat(button.about("Turn the oat piece").label())
                .isEqualTo(new SortingView.Label("Turn", "Turn the oat piece"));
        assertThat(PhotoAddress.address("p1")).isEqualTo("/stash/photo/p1");
    }
}
