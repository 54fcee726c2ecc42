package hearthcloth.web.stash;

import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** The whole stash page, with what she wrote still in its boxes. */
public final class StashScreen {

    /**
     * What stands in the boxes when the page is shown again: nothing she wrote is lost.
     *
     * @param line in the line box
     * @param lines in the box for many
     * @param wrong what is unclear about them, a sentence for each
     */
    public record Draft(String line, StashHeard heard, String lines, List<String> wrong) {
        static final Draft NONE = new Draft("", StashHeard.NOTHING, "", List.of());
    }

    private final PageContext room;

    StashScreen(PageContext room) {
        this.room = room;
    }

    /** The whole page, with what she wrote still in its boxes. */
    void show(Context context, StashView view, Draft draft, String said) {
        PageFrame frame = room.frame(context, "What have you got?", "Stash").saying(said, "/stash");
        room.show(
                context,
                "stash.jte",
                Map.of(
                        "frame",
                        frame,
                        "view",
                        view,
                        "draft",
                        draft,
                        "begun",
                        BegunPhoto.all(room.store().photographs())));
    }

    StashView whole() {
        return StashView.of(
                room.store(), new StashAsked("", "", "", 1), room.settings().ruler());
    }
}
