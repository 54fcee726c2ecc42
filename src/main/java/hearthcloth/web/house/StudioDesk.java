package hearthcloth.web.house;

import hearthcloth.store.Person;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.VisitBook;
import hearthcloth.web.door.ClassDoor;
import hearthcloth.web.door.RequestGuard;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.Optional;

/** A desk in a studio: who sits there is told by a cookie, request by request, and kept with the request. */
public final class StudioDesk {

    private static final String COOKIE = "hearthcloth";
    private static final int A_FORTNIGHT = 14 * 24 * 3600;

    /** The attribute of a request that holds its {@link Visit}; it has none before it is recognised. */
    private static final String VISIT = "hearthcloth.visit";

    private record Visit(String secret, Person person) {}

    private final Studio studio;
    private final String entranceToken;

    /** @param entranceToken what pages carry before anybody has come in */
    public StudioDesk(Studio studio, String entranceToken) {
        this.studio = studio;
        this.entranceToken = entranceToken;
    }

    /** Before anything else: who is it? */
    public void recognise(RoutesConfig routes) {
        routes.before(context -> read(context).ifPresent(visit -> context.attribute(VISIT, visit)));
    }

    private Optional<Visit> read(Context context) {
        String secret = context.cookie(COOKIE);
        return secret == null || !secret.matches("[0-9a-f]{64}")
                ? Optional.empty()
                : studio.visits().whose(secret).map(person -> new Visit(secret, person));
    }

    private static Optional<Visit> visit(Context context) {
        return Optional.ofNullable(context.<Visit>attribute(VISIT));
    }

    /** Who the request comes from; nobody where she has not come in. */
    public Visitor visitor(Context context) {
        Optional<Visit> visit = visit(context);
        return new Visitor(
                visit.map(Visit::person).map(studio::of),
                visit.map(Visit::person),
                visit.map(now -> VisitBook.token(now.secret())).orElse(entranceToken));
    }

    /** Nobody sees a page of work before she has come in. */
    public void bar(RoutesConfig routes) {
        routes.before(context -> {
            if (visit(context).isEmpty() && !isOpen(context.path())) {
                if (PageContext.isPart(context)) {
                    context.header("HX-Redirect", "/enter").status(HttpStatus.NO_CONTENT);
                } else {
                    context.redirect("/enter", HttpStatus.SEE_OTHER);
                }
                context.skipRemainingHandlers();
            }
        });
    }

    /** The way in, and the looks of the pages. */
    private static boolean isOpen(String path) {
        return path.equals("/enter")
                || ClassDoor.isItsOwn(path)
                || path.startsWith("/own/")
                || path.startsWith("/letters/")
                || path.startsWith("/webjars/");
    }

    void begin(Context context, Person person) {
        Cookie cookie = new Cookie(COOKIE, studio.visits().begin(person));
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setPath("/");
        cookie.setSecure(RequestGuard.isSecure(context));
        cookie.setMaxAge(A_FORTNIGHT);
        context.cookie(cookie);
    }

    void end(Context context) {
        visit(context).ifPresent(now -> studio.visits().end(now.secret()));
        context.attribute(VISIT, null);
        context.removeCookie(COOKIE, "/");
    }

    Studio studio() {
        return studio;
    }
}
