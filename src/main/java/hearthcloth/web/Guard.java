package hearthcloth.web;

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
 * Who may talk to the workroom: only pages that the workroom itself served to this machine. Checks the Host (a name that
 * was made to point here is refused), the Origin and a token on everything that changes something, and tells the browser
 * to run and load nothing but our own files.
 */
final class Guard {

    private static final Set<String> OWN_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:"
            + " blob:; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** An archive of many cloths with pictures of fabrics; larger ones are refused. */
    static final long LARGEST_REQUEST = 64L << 20;

    private final Desk desk;

    /** @param desk knows the token of whoever a request comes from */
    Guard(Desk desk) {
        this.desk = desk;
    }

    /** A token nobody can guess. */
    static String newToken() {
        byte[] bytes = new byte[24];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    void stand(RoutesConfig routes) {
        routes.before(this::check);
        routes.after(Guard::seal);
    }

    private void check(Context context) {
        if (!isOwn(context.header("Host"))) {
            throw new ForbiddenResponse("This workroom answers only under its own address on this machine.");
        }
        if (READING.contains(context.method().name())) {
            return;
        }
        if (context.req().getContentLengthLong() > LARGEST_REQUEST) {
            throw new HttpResponseException(413, "That is more than 64 MB; send less at a time.");
        }
        String origin = context.header("Origin");
        if (origin != null && !isOwn(authority(origin))) {
            throw new ForbiddenResponse("This change did not come from a page of the workroom.");
        }
        String given = Optional.ofNullable(context.header("X-Token")).orElse(context.formParam("token"));
        if (!matches(given)) {
            throw new ForbiddenResponse("This page is from an earlier start of the workroom. Load it again.");
        }
    }

    private boolean matches(@Nullable String given) {
        return given != null
                && MessageDigest.isEqual(
                        given.getBytes(StandardCharsets.UTF_8), desk.token().getBytes(StandardCharsets.UTF_8));
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
