package hearthcloth.web.kit;

import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import hearthcloth.store.Person;
import hearthcloth.store.SafetyCopies;
import hearthcloth.store.Store;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.Language;
import hearthcloth.words.Preferred;
import hearthcloth.words.framing.FramingWords;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** What a page that answers one request has to know: who asks, her work, the templates. */
public final class PageContext {

    private final Visitor visitor;
    private final Preferred reader;
    private final TemplateEngine templates;

    PageContext(Visitor visitor, Preferred reader, TemplateEngine templates) {
        this.visitor = visitor;
        this.reader = reader;
        this.templates = templates;
    }

    /** Who the request comes from. */
    public Visitor visitor() {
        return visitor;
    }

    /** The work of whoever the request comes from. */
    public Store store() {
        return visitor.work()
                .orElseThrow(
                        () -> new StoreException(FramingWords.in(language()).troubleComeIn()));
    }

    /** Proves that a form came from one of our own pages. */
    public String token() {
        return visitor.token();
    }

    public Settings settings() {
        return visitor.work().map(store -> Settings.of(store, reader)).orElseGet(() -> Settings.unasked(reader));
    }

    /** Whom a part of a page answers. */
    public PageFrame.Asker asker() {
        return new PageFrame.Asker(token(), language());
    }

    /** The language of her pages. */
    public Language language() {
        return settings().pages();
    }

    public PageFrame frame(Context context, String title, String stage) {
        String path = context.path() + (context.queryString() == null ? "" : "?" + context.queryString());
        return new PageFrame(
                title,
                stage,
                visitor.token(),
                settings(),
                text(context, "said"),
                path,
                visitor.work()
                        .flatMap(store -> store.setting(ExampleMark.SETTING))
                        .isPresent(),
                visitor.work()
                        .flatMap(Store::copies)
                        .flatMap(SafetyCopies::trouble)
                        .map(said -> said.in(settings().voice()))
                        .orElse(""),
                visitor.person().map(Person::name).orElse(""));
    }

    /** True when htmx asks for a part of a page, not for a whole one. */
    public static boolean isPart(Context context) {
        return context.header("HX-Request") != null && context.header("HX-Boosted") == null;
    }

    /** A query parameter without blanks round it, empty where it is missing. */
    public static String text(Context context, String name) {
        String text = context.queryParam(name);
        return text == null ? "" : text.strip();
    }

    /** A field of a posted form without blanks round it, empty where it is missing. */
    public static String field(Context context, String name) {
        String text = context.formParam(name);
        return text == null ? "" : text.strip();
    }

    /** Answers with a page or part of a page, by the template that its view names. */
    public void show(Context context, PageView view) {
        StringOutput output = new StringOutput();
        templates.render(PageView.template(view.getClass()), view, output);
        context.html(output.toString());
    }

    /** Sends the browser on, with a sentence to say there. */
    public static void go(Context context, String to, String said) {
        String mark = to.contains("?") ? "&" : "?";
        String where = said.isEmpty() ? to : to + mark + "said=" + URLEncoder.encode(said, StandardCharsets.UTF_8);
        if (isPart(context)) {
            context.header("HX-Redirect", where).status(HttpStatus.NO_CONTENT);
        } else {
            context.redirect(where, HttpStatus.SEE_OTHER);
        }
    }
}
