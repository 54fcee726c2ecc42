package hearthcloth.web.kit;

import hearthcloth.words.entering.EnteringWords;
import hearthcloth.words.framing.FramingWords;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;

/** What she wrote beside what another window made of it: she sends hers again or leaves it; neither is lost. */
public final class ConflictPage {

    /** Fields she writes or chooses herself, by which the catalogue knows their labels. */
    private static final List<String> FIELDS = List.of(
            "name", "width", "length", "fabric", "washed", "at", "many", "colour", "faces", "nap", "made", "wrapped",
            "keeper");

    /** A field of the form she sent. */
    public record Sent(String name, String value) {}

    /** What she wrote, as she knows it. */
    public record Written(String label, String value) {}

    /**
     * What was changed in two windows.
     *
     * @param path the form's address
     * @param again true where it can be sent once more
     */
    public record Conflict(
            String words,
            String now,
            String look,
            String path,
            List<Written> written,
            List<Sent> sent,
            boolean again) {}

    /** The page. */
    @PageView.Template("both.jte")
    public record View(PageFrame frame, Conflict conflict) implements PageView {

        /** What is said on it. */
        public EnteringWords words() {
            return EnteringWords.in(frame.language());
        }
    }

    private final PageRoutes pages;

    public ConflictPage(PageRoutes pages) {
        this.pages = pages;
    }

    public void add() {
        pages.routes().exception(StaleChangeException.class, this::answer);
    }

    private void answer(StaleChangeException stale, Context context) {
        context.status(409);
        PageContext room = pages.at(context);
        FramingWords framing = FramingWords.in(room.language());
        String words = String.valueOf(stale.getMessage());
        if (PageContext.isPart(context)) {
            // Her form still stands on the page with what she wrote in it; what is there now is said above it.
            context.header("HX-Retarget", "#said").header("HX-Reswap", "innerHTML");
            room.show(context, PageFrame.Said.trouble(words + " " + stale.now()));
            return;
        }
        Conflict conflict = new Conflict(
                words,
                stale.now(),
                stale.look(),
                context.path(),
                written(context, framing),
                sent(context, stale),
                !stale.fresh().isEmpty());
        room.show(context, new View(room.frame(context, framing.staleTitle(), ""), conflict));
    }

    private static List<Written> written(Context context, FramingWords words) {
        List<Written> written = new ArrayList<>();
        for (String name : FIELDS) {
            String value = PageContext.field(context, name);
            if (!value.isEmpty()) {
                written.add(new Written(words.field(name), value));
            }
        }
        return written;
    }

    private static List<Sent> sent(Context context, StaleChangeException stale) {
        List<Sent> sent = new ArrayList<>();
        context.formParamMap().forEach((name, values) -> {
            if (!name.equals("token") && !name.equals(stale.mark())) {
                values.forEach(value -> sent.add(new Sent(name, value)));
            }
        });
        sent.add(new Sent(stale.mark(), stale.fresh()));
        return sent;
    }
}
