package hearthcloth.web.kit;

import hearthcloth.measure.MeasureException;
import hearthcloth.store.json.StoreException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.net.URI;
import org.jspecify.annotations.Nullable;

/** Every trouble becomes a page, or a sentence on the page, in words; nothing of the program's insides is shown. */
public final class ErrorPages {

    /**
     * A page that says what went wrong.
     *
     * @param back where she can go on
     */
    @PageView.Template("trouble.jte")
    public record View(PageFrame frame, String words, String back) implements PageView {}

    private final PageRoutes pages;

    public ErrorPages(PageRoutes pages) {
        this.pages = pages;
    }

    public void add() {
        RoutesConfig routes = pages.routes();
        routes.exception(MeasureException.class, (e, context) -> say(context, 422, e.getMessage()));
        routes.exception(StoreException.class, (e, context) -> say(context, 409, e.getMessage()));
        routes.exception(HttpResponseException.class, (e, context) -> say(context, e.getStatus(), e.getMessage()));
        routes.exception(
                Exception.class,
                (e, context) -> say(
                        context,
                        500,
                        StoreException.behind(e)
                                .orElse("Something went wrong inside the workroom. Nothing was changed; try again.")));
        routes.error(404, context -> say(context, 404, "There is nothing at this address."));
    }

    private void say(Context context, int status, @Nullable String words) {
        context.status(status);
        PageContext room = pages.at(context);
        String sentence = words == null || words.isBlank() ? "That did not work." : upright(words);
        if (PageContext.isPart(context)) {
            context.header("HX-Retarget", "#said").header("HX-Reswap", "innerHTML");
            room.show(context, PageFrame.Said.trouble(sentence));
        } else {
            room.show(context, new View(room.frame(context, "That did not work", ""), sentence, back(context)));
        }
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
        return PageFrame.STAGES.stream()
                .map(PageFrame.Stage::href)
                .filter(href -> context.path().matches(href + "(/.*)?"))
                .findFirst()
                .orElse("/gift");
    }

    /** A sentence: a capital first and a full stop last. */
    public static String upright(String words) {
        String first = words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
        return first.matches("(?s).*[.!?]") ? first : first + ".";
    }
}
