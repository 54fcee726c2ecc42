package hearthcloth.web.house;

import hearthcloth.store.Person;
import hearthcloth.store.Store;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.VisitBook;
import hearthcloth.web.kit.Desk;
import hearthcloth.web.kit.PageContext;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.Optional;

/**
 * A desk in a studio: who sits there is told by a cookie, request by request. A request is served by one thread from
 * its beginning to its end, so what is known of it is kept by thread.
 */
public final class StudioDesk implements Desk {

    private static final String COOKIE = "hearthcloth";
    private static final int A_FORTNIGHT = 14 * 24 * 3600;

    private record Visit(String secret, Person person) {}

    private static final ThreadLocal<Optional<Visit>> VISIT = ThreadLocal.withInitial(Optional::empty);

    private final Studio studio;
    private final String entranceToken;

    /** @param entranceToken what pages carry before anybody has come in */
    public StudioDesk(Studio studio, String entranceToken) {
        this.studio = studio;
        this.entranceToken = entranceToken;
    }

    /** Before anything else: who is it? */
    public void recognise(RoutesConfig routes) {
        routes.before(context -> VISIT.set(read(context)));
    }

    private Optional<Visit> read(Context context) {
        String secret = context.cookie(COOKIE);
        return secret == null || !secret.matches("[0-9a-f]{64}")
                ? Optional.empty()
                : studio.visits().whose(secret).map(person -> new Visit(secret, person));
    }

    /** Nobody sees a page of work before she has come in. */
    public void bar(RoutesConfig routes) {
        routes.before(context -> {
            if (VISIT.get().isEmpty() && !isOpen(context.path())) {
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
                || path.startsWith("/own/")
                || path.startsWith("/letters/")
                || path.startsWith("/webjars/");
    }

    void begin(Context context, Person person) {
        Cookie cookie = new Cookie(COOKIE, studio.visits().begin(person));
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setPath("/");
        cookie.setMaxAge(A_FORTNIGHT);
        context.cookie(cookie);
    }

    void end(Context context) {
        VISIT.get().ifPresent(now -> studio.visits().end(now.secret()));
        VISIT.set(Optional.empty());
        context.removeCookie(COOKIE, "/");
    }

    Studio studio() {
        return studio;
    }

    /** Who came in; pages behind the bar have somebody. */
    Person here() {
        return person().orElseThrow(() -> new IllegalStateException("nobody has come in"));
    }

    @Override
    public Optional<Store> work() {
        return person().map(studio::of);
    }

    @Override
    public Optional<Person> person() {
        return VISIT.get().map(Visit::person);
    }

    @Override
    public String token() {
        return VISIT.get().map(now -> VisitBook.token(now.secret())).orElse(entranceToken);
    }
}
