package hearthcloth.web.stash;

import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import io.javalin.http.Context;
import java.util.List;

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

    /** The whole page. */
    @PageView.Template("stash.jte")
    public record View(PageFrame frame, StashView stash, Draft draft, List<BegunPhoto> begun) implements PageView {

        public Line line() {
            return new Line(draft.line(), frame.settings().ruler().isMetric(), false);
        }

        public BegunPhoto.Form photographs() {
            return new BegunPhoto.Form(frame, begun);
        }

        public Body body() {
            return new Body(stash, frame.token(), frame.example());
        }
    }

    /**
     * The box in which she says a piece.
     *
     * @param words what stands in it
     * @param isMetric true where the example beside it is in centimetres
     * @param isAnswer true where it takes the place of the one on the page
     */
    public record Line(String words, boolean isMetric, boolean isAnswer) {}

    /**
     * All below the boxes: undo, filter and what was found.
     *
     * @param isExample true while the example lies in the workroom
     */
    public record Body(StashView stash, String token, boolean isExample) {}

    /**
     * What is like what she looks for.
     *
     * @param isAnswer true where it comes alone, so that the summary above it must be told too
     */
    @PageView.Template("part/stash-found.jte")
    public record Found(StashView stash, boolean isAnswer) implements PageView {}

    /**
     * The stash after a change.
     *
     * @param isLineDone true where the box for a line is to be emptied
     */
    @PageView.Template("part/stash-changed.jte")
    public record Changed(Body body, String said, boolean isLineDone, boolean isMetric) implements PageView {}

    private final PageContext room;

    StashScreen(PageContext room) {
        this.room = room;
    }

    /** The whole page, with what she wrote still in its boxes. */
    void show(Context context, StashView view, Draft draft, String said) {
        PageFrame frame = room.frame(context, "What have you got?", "Stash").saying(said, "/stash");
        room.show(
                context,
                new View(frame, view, draft, BegunPhoto.all(room.store().photographs())));
    }

    /** The stash after a change, as a part of the page. */
    void showChanged(Context context, String said, boolean isLineDone) {
        boolean example = room.store().setting(ExampleMark.SETTING).isPresent();
        Body body = new Body(whole(), room.token(), example);
        room.show(
                context,
                new Changed(body, said, isLineDone, room.settings().ruler().isMetric()));
    }

    StashView whole() {
        return StashView.of(
                room.store(), new StashAsked("", "", "", 1), room.settings().ruler());
    }
}
