package hearthcloth.web.kit;

import java.util.function.Function;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpResponseException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who may talk to the workroom: only pages that the workroom itself served to this machine, and to devices let in. Checks the Host (a name that
 * was made to point here is refused), the Origin and a token on everything that changes something, and tells the browser
 * to run and load nothing but our own files.
 */
public final class RequestGuard {

    private static final Set<String> OWN_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Set<String> OWN_NUMBERS = Set.of("127.0.0.1", "0:0:0:0:0:0:0:1", "::1");
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:"
            + " blob:; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** An archive of many cloths with pictures of fabrics; larger ones are refused. */
    public static final long LARGEST_REQUEST = 64L << 20;

    /** A photograph with the form round it. */
    public static final long LARGEST_PHOTOGRAPH = 81L << 20;

    /** What a device that was let in shows. */
    public static final String COOKIE = "hearthcloth-device";

    private final Function<Context, Visitor> who;
    private final Optional<Devices> devices;

    /**
     * Only this machine, or others too.
     *
     * @param who tells whom a request comes from, with her token
     * @param devices those let in; empty where the workroom is not opened to the network
     */
    public RequestGuard(Function<Context, Visitor> who, Optional<Devices> devices) {
        this.who = who;
        this.devices = devices;
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

    /** True for what arrives at this machine's own loopback address, where nobody else can send anything. */
    public static boolean isHere(Context context) {
        return OWN_NUMBERS.contains(context.req().getLocalAddr().replaceAll("[\\[\\]]", ""));
    }

    private void check(Context context) {
        String host = context.header("Host");
        if (!(isHere(context) ? isOwn(host) : isAddressed(context, host))) {
            throw new ForbiddenResponse("This workroom answers only under its own address on this machine.");
        }
        if (!isHere(context) && !isLetIn(context)) {
            turnAway(context);
            return;
        }
        if (READING.contains(context.method().name())) {
            return;
        }
        refuseLarge(context.path(), context.req().getContentLengthLong());
        String origin = context.header("Origin");
        boolean own = origin == null
                || (isHere(context) ? isOwn(authority(origin)) : isAddressed(context, authority(origin)));
        if (!own) {
            throw new ForbiddenResponse("This change did not come from a page of the workroom.");
        }
        if (context.path().equals("/join")) {
            return; // Whoever joins has no page of ours yet; the code is the proof.
        }
        String given = Optional.ofNullable(context.header("X-Token")).orElse(context.formParam("token"));
        if (!matches(given, who.apply(context).token())) {
            throw new ForbiddenResponse("This page is from an earlier start of the workroom. Load it again.");
        }
    }

    private static void refuseLarge(String path, long length) {
        if (path.equals("/stash/photo")) {
            if (length > LARGEST_PHOTOGRAPH) {
                throw new HttpResponseException(
                        413, "The photograph is larger than 80 MB; send it as the phone took it, or a smaller one.");
            }
        } else if (length > LARGEST_REQUEST) {
            throw new HttpResponseException(413, "That is more than 64 MB; send less at a time.");
        }
    }

    /** A shared workroom is spoken to by the number of the machine: a name could have been made to point here. */
    private boolean isAddressed(Context context, @Nullable String host) {
        return devices.isPresent()
                && host != null
                && host.replaceFirst(":\\d{1,5}$", "").equals(context.req().getLocalAddr());
    }

    private boolean isLetIn(Context context) {
        String path = context.path();
        boolean open = path.equals("/join") || path.startsWith("/own/") || path.startsWith("/letters/");
        String key = context.cookie(COOKIE);
        return open || (key != null && devices.filter(all -> all.isIn(key)).isPresent());
    }

    /** To the door, where a code is asked for. */
    private static void turnAway(Context context) {
        if (READING.contains(context.method().name()) && !PageContext.isPart(context)) {
            context.redirect("/join");
            context.skipRemainingHandlers();
        } else {
            throw new ForbiddenResponse("This device is not let in, or not any more. Open /join and type the code.");
        }
    }

    private static boolean matches(@Nullable String given, String token) {
        return given != null
                && MessageDigest.isEqual(
                        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }

    private static String authority(String origin) {
        try {
            String authority = URI.create(origin).getAuthority();
            return authority == null ? "" : authority;
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    /** A loopback name with or without a port. */
    private static boolean isOwn(@Nullable String host) {
        if (host == null) {
            return false;
        }
        String name = host.toLowerCase(Locale.ROOT).replaceFirst(":\\d{1,5}$", "");
        return OWN_NAMES.contains(name);
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
