package hearthcloth.web.stash;

import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Ways;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** The whole stash page, with what she wrote still in its boxes. */
public final class StashScreen {

    /**
     * What stands in the boxes when the page is shown again: nothing she wrote is lost.
     *
     * @param line in the line box, which may be many lines
     * @param wrong what is unclear about them or about a file, a sentence for each
     */
    public record Draft(String line, StashHeard heard, List<String> wrong) {

        /** Empty boxes. */
        static Draft none(Language language) {
            return new Draft("", StashHeard.nothing(language), List.of());
        }
    }

    /** The whole page. */
    @PageView.Template("stash.jte")
    public record View(PageFrame frame, StashView stash, Draft draft) implements PageView {

        public Line line() {
            return new Line(draft.line(), stash.voice(), false);
        }

        public Body body() {
            return new Body(stash, frame.title(), frame.token(), frame.example());
        }
    }

    /**
     * The box in which she says a piece.
     *
     * @param words what stands in it
     * @param voice in whose language and unit the example beside it is
     * @param isAnswer true where it takes the place of the one on the page
     */
    public record Line(String words, Voice voice, boolean isAnswer) {

        /** Of which kind the sizes in the example are. */
        public String unit() {
            return voice.ruler().isMetric() ? "metric" : "inches";
        }
    }

    /**
     * All above the add bar: heading, table, what is done with what is chosen.
     *
     * @param isExample true while the example lies in the workroom
     */
    public record Body(StashView stash, String title, String token, boolean isExample) {

        public Language language() {
            return stash.voice().language();
        }

        public Ways ways() {
            return new Ways(language(), token, true, !isExample);
        }

        public Found found() {
            return new Found(stash, false);
        }
    }

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
     * @param line what now stands in the line box; empty where it is left as it is
     */
    @PageView.Template("part/stash-changed.jte")
    public record Changed(Body body, String said, Optional<Draft> line) implements PageView {

        public Voice voice() {
            return body.stash().voice();
        }
    }

    private final PageContext room;

    StashScreen(PageContext room) {
        this.room = room;
    }

    private String title() {
        return StashingWords.in(room.language()).title();
    }

    /** The whole page, with what she wrote still in its boxes. */
    void show(Context context, StashView view, Draft draft, String said) {
        PageFrame frame = room.frame(context, title(), "Stash").saying(said, "/stash");
        room.show(context, new View(frame, view, draft));
    }

    /** The stash after a change, as a part of the page; with what is to stand in the line box, where that changes. */
    void showChanged(Context context, String said, Optional<Draft> line) {
        boolean example = room.store().setting(ExampleMark.SETTING).isPresent();
        Body body = new Body(whole(), title(), room.token(), example);
        room.show(context, new Changed(body, said, line));
    }

    StashView whole() {
        return StashView.of(
                room.store(), new StashAsked("", "", "", 1), room.settings().voice());
    }
}
