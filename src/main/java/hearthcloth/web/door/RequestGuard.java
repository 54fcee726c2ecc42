package hearthcloth.web.door;

import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Visitor;
import hearthcloth.words.Spoken;
import hearthcloth.words.entering.EnteringWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Who may talk to the workroom: only pages that the workroom itself served to this machine, to devices let in, and in a studio
 * to whoever comes in by a passphrase. Checks the Host (a name that was made to point here is refused), the whole Origin and
 * a token on everything that changes something, and tells the browser to run and load nothing but our own files. Whoever is
 * not let in gets bare words, no page.
 */
public final class RequestGuard {

    private static final Set<String> OWN_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Set<String> OWN_NUMBERS = Set.of("127.0.0.1", "0:0:0:0:0:0:0:1", "::1");
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:"
            + " blob:; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** What a device that was let in shows. */
    public static final String COOKIE = "hearthcloth-device";

    private static final String WHERE = "where";
    private static final String SECURE = "secure";

    /** Where a request comes from. */
    private enum Where {
        /** This machine. */
        HERE,
        /** Another on the network. */
        NEAR,
        /** Through the proxy before it. */
        PROXY
    }

    private final Function<Context, Visitor> who;
    private final Openness openness;
    private final Optional<Devices> devices;
    private final ClassDoor students;

    /**
     * The guard of one workroom.
     *
     * @param who tells whom a request comes from, with her token
     * @param devices those let in; empty where nobody has to be, or where a passphrase lets people in
     * @param students let in to the pages of a class alone
     */
    public RequestGuard(
            Function<Context, Visitor> who, Openness openness, Optional<Devices> devices, ClassDoor students) {
        this.who = who;
        this.openness = openness;
        this.devices = devices;
        this.students = students;
    }

    /** A token nobody can guess. */
    public static String newToken() {
        byte[] bytes = new byte[24];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    public void stand(RoutesConfig routes) {
        routes.before(this::check);
        routes.after(RequestGuard::seal);
    }

    /** True for what comes from this machine itself, and through no proxy. */
    public static boolean isHere(Context context) {
        return Where.HERE == context.attribute(WHERE);
    }

    /** True for another machine of the network. */
    public static boolean isNear(Context context) {
        return Where.NEAR == context.attribute(WHERE);
    }

    /** True for what came to the proxy over TLS, whose cookies go over nothing else. */
    public static boolean isSecure(Context context) {
        return Boolean.TRUE.equals(context.attribute(SECURE));
    }

    /** Where a request comes from; behind a proxy, as that says in the last word of X-Forwarded-For. */
    public static String address(Context context) {
        String said = Where.PROXY == context.attribute(WHERE) ? context.header("X-Forwarded-For") : null;
        return said == null
                ? context.req().getRemoteAddr()
                : said.replaceFirst("^.*,", "").strip();
    }

    /** What is said at the door, where nothing of her work is looked into: in the language of her browser. */
    private static EnteringWords words(Context context) {
        return EnteringWords.in(Spoken.toReader(context.header("Accept-Language")));
    }

    private void check(Context context) {
        ErrorPages.bare(context, true);
        Where where = where(context)
                .orElseThrow(() -> new ForbiddenResponse(words(context).doorOwnAddress()));
        context.attribute(WHERE, where);
        context.attribute(SECURE, where == Where.PROXY && openness.isSecure());
        RequestMeasure.Measured measured = RequestMeasure.of(context.req());
        boolean isIn = isLetIn(context, where);
        if (measured != null) {
            boolean known =
                    students.isIn(context) || (isIn && who.apply(context).work().isPresent());
            weigh(context, measured, known);
        }
        if (isIn) {
            ErrorPages.bare(context, false);
        } else if (turnAway(context)) {
            return;
        }
        refuseUnwritable(context, context.path(), context.queryParamMap());
        if (!READING.contains(context.method().name())) {
            refuseForeign(context, where);
            refuseUnwritable(context, "", context.formParamMap());
        }
    }

    private Optional<Where> where(Context context) {
        String host = context.header("Host");
        if (host == null) {
            return Optional.empty();
        }
        String number = context.req().getLocalAddr().replaceAll("[\\[\\]]", "");
        if (!OWN_NUMBERS.contains(number)) {
            // Spoken to by the number of the machine: a name could have been made to point here.
            return openness.lan() && withoutPort(host).equals(number) ? Optional.of(Where.NEAR) : Optional.empty();
        }
        if (openness.authority().filter(host::equalsIgnoreCase).isPresent()) {
            return Optional.of(Where.PROXY);
        }
        return OWN_NAMES.contains(withoutPort(host)) ? Optional.of(Where.HERE) : Optional.empty();
    }

    private static String withoutPort(String host) {
        return host.toLowerCase(Locale.ROOT).replaceFirst(":\\d{1,5}$", "");
    }

    /** Little is read of who is not in yet; of others, as much as there is room for. */
    private static void weigh(Context context, RequestMeasure.Measured measured, boolean isIn) {
        if (!isIn) {
            measured.knock();
            return;
        }
        measured.refuseTold();
        try {
            if (!measured.weigh()) {
                throw new HttpResponseException(503, words(context).doorBusy());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new HttpResponseException(503, words(context).doorClosing());
        }
    }

    /** NUL is no letter; PostgreSQL keeps none. */
    private static void refuseUnwritable(Context context, String path, Map<String, List<String>> values) {
        boolean found = path.indexOf('\0') >= 0
                || values.entrySet().stream()
                        .anyMatch(each -> each.getKey().indexOf('\0') >= 0
                                || each.getValue().stream().anyMatch(value -> value.indexOf('\0') >= 0));
        if (found) {
            throw new HttpResponseException(422, words(context).doorLetters());
        }
    }

    private void refuseForeign(Context context, Where where) {
        String origin = context.header("Origin");
        String own = where == Where.PROXY ? openness.origin().orElse("") : "http://" + context.header("Host");
        if (origin != null && !origin.equalsIgnoreCase(own)) {
            throw new ForbiddenResponse(words(context).doorNotOurs());
        }
        String charset = context.req().getCharacterEncoding();
        if (charset != null && !isKnown(charset)) {
            throw new HttpResponseException(415, words(context).doorCharset());
        }
        if (isDoor(context.path())) {
            return; // Whoever joins has no page of ours yet; the code is the proof.
        }
        String given = Optional.ofNullable(context.header("X-Token")).orElse(context.formParam("token"));
        if (!matches(given, who.apply(context).token())) {
            throw new ForbiddenResponse(words(context).doorEarlier());
        }
    }

    private static boolean isKnown(String charset) {
        try {
            return Charset.isSupported(charset);
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static boolean isDoor(String path) {
        return path.equals("/join") || path.equals("/join/ask") || ClassDoor.isWayIn(path);
    }

    private boolean isLetIn(Context context, Where where) {
        if (students.isIn(context)) {
            return true;
        }
        if (devices.isEmpty() || (where == Where.HERE && !openness.code())) {
            return true;
        }
        String key = context.cookie(COOKIE);
        return key != null && devices.get().isIn(key);
    }

    /** To the door, where a code is asked for; what makes the door's looks is shown to all. True where it was sent on. */
    private static boolean turnAway(Context context) {
        String path = context.path();
        if (isDoor(path) || path.startsWith("/own/") || path.startsWith("/letters/")) {
            return false;
        }
        boolean student = ClassDoor.isItsOwn(path);
        if ((student || READING.contains(context.method().name())) && !PageContext.isPart(context)) {
            context.redirect(student ? "/class/in" : "/join", HttpStatus.SEE_OTHER);
            context.skipRemainingHandlers();
            return true;
        }
        throw new ForbiddenResponse(words(context).doorNotIn());
    }

    private static boolean matches(@Nullable String given, String token) {
        return given != null
                && MessageDigest.isEqual(
                        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }

    private static void seal(Context context) {
        context.header("Content-Security-Policy", POLICY);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "same-origin");
        context.header("Cross-Origin-Resource-Policy", "same-origin");
        context.header("Cross-Origin-Opener-Policy", "same-origin");
        if (context.res().getHeader("Cache-Control") == null) {
            context.header("Cache-Control", "no-store");
        }
    }
}
