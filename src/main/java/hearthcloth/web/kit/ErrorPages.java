package hearthcloth.web.kit;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.Language;
import hearthcloth.words.Spoken;
import hearthcloth.words.entering.EnteringWords;
import hearthcloth.words.framing.FramingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jetty.http.HttpException;
import org.jspecify.annotations.Nullable;

/** Every trouble becomes a page, or a sentence on the page, in words; nothing of the program's insides is shown. */
public final class ErrorPages {

    private static final String BARE = "bare";

    private final PageRoutes pages;

    public ErrorPages(PageRoutes pages) {
        this.pages = pages;
    }

    /** Whether troubles of this request are told in bare words: who is not let in sees no page, token or setting. */
    public static void bare(Context context, boolean bare) {
        context.attribute(BARE, bare);
    }

    public void add() {
        RoutesConfig routes = pages.routes();
        routes.exception(MeasureException.class, (e, context) -> say(context, 422, refused(e, context)));
        routes.exception(StoreException.class, (e, context) -> {
            if (StoreException.isAway(e)) {
                away(context, e, refused(e, context));
            } else {
                say(context, 409, refused(e, context));
            }
        });
        routes.exception(HttpResponseException.class, (e, context) -> say(context, e.getStatus(), e.getMessage()));
        routes.exception(Exception.class, this::unforeseen);
        routes.error(404, context -> say(context, 404, words(context).troubleNothing()));
    }

    /** A trouble of one of the kinds above that came wrapped in others, or one nobody thought of. */
    private void unforeseen(Exception e, Context context) {
        Optional<HttpResponseException> answer = behind(e, HttpResponseException.class);
        Optional<HttpException> unread = behind(e, HttpException.class);
        if (answer.isPresent()) {
            say(context, answer.get().getStatus(), answer.get().getMessage());
        } else if (unread.isPresent()) {
            say(context, unread.get().getCode(), words(context).troubleUnread());
        } else if (StoreException.isAway(e)) {
            away(context, e, behind(e, context).orElse(""));
        } else {
            say(context, 500, behind(e, context).orElseGet(() -> words(context).troubleInside()));
        }
    }

    /**
     * A page that says what went wrong.
     *
     * @param back where she can go on
     */
    @PageView.Template("trouble.jte")
    public record View(PageFrame frame, String words, String back) implements PageView {

        /** What is said besides. */
        public EnteringWords said() {
            return EnteringWords.in(frame.language());
        }
    }

    /**
     * What a page shows that has nothing of her work to show.
     *
     * @param again the form's fields, to send once more; empty where none was sent
     * @param asker whom it answers, with the token of the page the form stood on
     * @param gone whether the file can be written anew
     */
    @PageView.Template("away.jte")
    public record Away(String words, String path, List<ConflictPage.Sent> again, PageFrame.Asker asker, boolean gone)
            implements PageView {

        public String token() {
            return asker.token();
        }

        /** The page's language, as its {@code lang}. */
        public String lang() {
            return asker.language().tag();
        }

        /** What is said besides. */
        public EnteringWords said() {
            return EnteringWords.in(asker.language());
        }
    }

    /** Her work cannot be reached: said without looking into it, and what she typed is kept on the page. */
    private void away(Context context, Exception e, String words) {
        context.status(503);
        boolean gone = StoreException.isGone(e);
        if (Boolean.TRUE.equals(context.attribute(BARE))) {
            context.contentType("text/plain; charset=utf-8").result(words + "\n");
        } else if (PageContext.isPart(context)) {
            context.header("HX-Retarget", "#said").header("HX-Reswap", "innerHTML");
            String more = gone ? " " + words(context).troubleGone() : "";
            pages.at(context).show(context, PageFrame.Said.trouble(words + more));
        } else {
            pages.at(context).show(context, away(context, words, gone));
        }
    }

    private Away away(Context context, String words, boolean gone) {
        List<ConflictPage.Sent> again = new ArrayList<>();
        if (HandlerType.POST.equals(context.method())) {
            context.formParamMap()
                    .forEach((name, values) -> values.stream()
                            .filter(value -> !name.equals("token"))
                            .forEach(value -> again.add(new ConflictPage.Sent(name, value))));
        }
        String given = PageContext.field(context, "token");
        PageFrame.Asker asker = new PageFrame.Asker(
                gone ? pages.at(context).token() : given, Spoken.toReader(context.header("Accept-Language")));
        return new Away(words, context.path(), again, asker, gone);
    }

    private static <T> Optional<T> behind(Throwable thrown, Class<T> kind) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (kind.isInstance(cause)) {
                return Optional.of(kind.cast(cause));
            }
        }
        return Optional.empty();
    }

    private void say(Context context, int status, @Nullable String words) {
        context.status(status);
        String sentence = words == null || words.isBlank() ? words(context).troublePlain() : upright(words);
        if (Boolean.TRUE.equals(context.attribute(BARE))) {
            context.contentType("text/plain; charset=utf-8").result(sentence + "\n");
        } else if (PageContext.isPart(context)) {
            context.header("HX-Retarget", "#said").header("HX-Reswap", "innerHTML");
            pages.at(context).show(context, PageFrame.Said.trouble(sentence));
        } else {
            framed(context, sentence);
        }
    }

    private void framed(Context context, String sentence) {
        PageFrame frame;
        try {
            frame = pages.at(context).frame(context, words(context).troubleTitle(), "");
        } catch (RuntimeException e) {
            // What a page shows round its content cannot be reached either.
            context.contentType("text/plain; charset=utf-8").result(sentence + "\n");
            return;
        }
        pages.at(context).show(context, new View(frame, sentence, back(context)));
    }

    /** The page she came from; where that is not known or is this one, the stage it belongs to. */
    private static String back(Context context) {
        String from = context.header("Referer");
        if (from != null) {
            try {
                URI page = URI.create(from);
                String path = page.getRawPath() + (page.getRawQuery() == null ? "" : "?" + page.getRawQuery());
                if (path.matches("/[a-z].*") && !page.getRawPath().equals(context.path())) {
                    return path;
                }
            } catch (IllegalArgumentException e) {
                // An address of no known form says nothing about where she was.
            }
        }
        return Stream.concat(PageFrame.STAGES.stream(), Stream.of(PageFrame.MADE))
                .map(PageFrame.Stage::href)
                .filter(href -> context.path().matches(href + "(/.*)?"))
                .findFirst()
                .orElse("/gift");
    }

    /** In the language of who asks; of her browser where her settings cannot be reached. */
    private FramingWords words(Context context) {
        return FramingWords.in(language(context));
    }

    private Language language(Context context) {
        try {
            return pages.at(context).language();
        } catch (RuntimeException e) {
            return Spoken.toReader(context.header("Accept-Language"));
        }
    }

    /** As who asks is spoken to; by her browser where her settings cannot be reached. */
    private Voice voice(Context context) {
        try {
            return pages.at(context).settings().voice();
        } catch (RuntimeException e) {
            return Voice.of(language(context), Ruler.EIGHTHS);
        }
    }

    private Optional<String> behind(Exception e, Context context) {
        return StoreException.behind(e).map(said -> said.in(voice(context)));
    }

    private String refused(Exception e, Context context) {
        return Refusal.of(e).in(voice(context));
    }

    /** A sentence: a capital first and a full stop last. */
    public static String upright(String words) {
        String first = words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
        return first.matches("(?s).*[.!?。！？]") ? first : first + ".";
    }
}
