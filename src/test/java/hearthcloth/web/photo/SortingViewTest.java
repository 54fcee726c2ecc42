package hearthcloth.web.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.kit.PageFrame;
import hearthcloth.words.Language;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Buttons of a photograph's pieces ({@link SortingView}) and where its pages are ({@link PhotoAddress}). */
class SortingViewTest {

    /** Ids on one page must differ: for the same piece, by what is done, its name and the corner it is about. */
    @Test
    void buttons_that_do_different_things_have_different_ids() {
        PhotoView photo = new PhotoView(
                "p1",
                1,
                100,
                100,
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                false,
                List.of(),
                0,
                "",
                "",
                List.of());
        SortingView.PieceButton button =
                new SortingView(photo, new PageFrame.Asker("00", Language.ENGLISH)).button("turn", "p1", "Turn");
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
