package hearthcloth.web.kit;

import gg.jte.TemplateEngine;
import hearthcloth.words.Preferred;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * Addresses and the pages that answer them. A page is made anew for each request and knows who that request comes
 * from, so that nothing of one person's request can be seen by another's.
 */
public final class PageRoutes {

    private final RoutesConfig routes;
    private final Function<Context, Visitor> who;
    private final TemplateEngine templates = new PageSources().templates();
    private final List<Runnable> beside = new CopyOnWriteArrayList<>();

    /** @param who tells whom a request comes from */
    public PageRoutes(RoutesConfig routes, Function<Context, Visitor> who) {
        this.routes = routes;
        this.who = who;
    }

    /** Where handlers of other kinds are added. */
    public RoutesConfig routes() {
        return routes;
    }

    /** Has this run when the workroom closes: it ends what a page began and what would go on without it. */
    public void whenClosed(Runnable end) {
        beside.add(end);
    }

    /** Ends what goes on beside the pages; nothing waits for it. */
    public void close() {
        beside.forEach(Runnable::run);
    }

    /** What the page that answers this request has to know. */
    PageContext at(Context context) {
        String wished = context.header("Accept-Language");
        Preferred reader = wished == null ? Preferred.UNSAID : Preferred.of(wished);
        return new PageContext(who.apply(context), reader, templates);
    }

    /** Addresses of one page, which is made anew for each request. */
    public <P> OfPage<P> of(Function<PageContext, P> page) {
        return new OfPage<>(this, page);
    }

    /**
     * Addresses of one page.
     *
     * @param page makes it
     */
    public record OfPage<P>(PageRoutes all, Function<PageContext, P> page) {

        /** Answers what is only looked at. */
        public OfPage<P> get(String path, BiConsumer<P, Context> answer) {
            all.routes.get(path, context -> answer.accept(page.apply(all.at(context)), context));
            return this;
        }

        /** Answers a form. */
        public OfPage<P> post(String path, BiConsumer<P, Context> answer) {
            all.routes.post(path, context -> answer.accept(page.apply(all.at(context)), context));
            return this;
        }
    }
}
