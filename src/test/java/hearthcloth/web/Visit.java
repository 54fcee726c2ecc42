package hearthcloth.web;

import hearthcloth.web.door.Openness;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A workroom over a file of its own, and a visitor who speaks plain HTTP to it. */
public final class Visit implements AutoCloseable {

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([0-9a-f]+)\"");

    /** So often it is asked whether a photograph is read. */
    public static final long NOW_AND_THEN_MS = 20;

    private final Workroom workroom;
    private String token = "";
    private final HttpClient client = HttpClient.newHttpClient();

    public Visit(Path folder) {
        this(Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.HERE));
    }

    /** A visitor of this workroom. */
    Visit(Workroom workroom) {
        this.workroom = workroom;
    }

    public String address() {
        return "http://localhost:" + workroom.port();
    }

    /** Where another device finds it; like a network's address, it is not the machine's own loopback address. */
    public String nearAddress() {
        return "http://127.0.0.2:" + workroom.port();
    }

    public int port() {
        return workroom.port();
    }

    public HttpResponse<String> see(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address() + path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return sent(request.build());
    }

    /** What a page shows; it must be there. */
    public String page(String path) {
        HttpResponse<String> response = see(path);
        if (response.statusCode() != 200) {
            throw new AssertionError(path + " answered " + response.statusCode() + ": " + response.body());
        }
        return response.body();
    }

    /** The bytes at an address, which must be there. */
    public byte[] bytes(String path) {
        try {
            HttpResponse<byte[]> response = client.send(
                    HttpRequest.newBuilder(URI.create(address() + path)).build(),
                    HttpResponse.BodyHandlers.ofByteArray());
            if (response.statusCode() != 200) {
                throw new AssertionError(path + " answered " + response.statusCode());
            }
            return response.body();
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** Waits until a photograph that was sent is read, for as long as a test may take; its page. */
    public String untilRead(String photograph) {
        while (page(photograph).contains("id=\"going\"")) {
            beside("reading", NOW_AND_THEN_MS);
        }
        return photograph;
    }

    /**
     * Begins to look what the heap can make and waits for a first proposal only; the gallery. Where nothing can be made it
     * fails with what the gallery says of it, the nearest named.
     */
    public String firstProposals() {
        page("/cloth");
        String found = page("/proposals");
        while (!found.contains("Take this one")) {
            if (!found.contains("class=\"progress\"")) {
                // It may have ended while the page was made.
                found = page("/proposals");
                if (!found.contains("Take this one")) {
                    throw new AssertionError("nothing can be made: "
                            + found.replaceAll("(?s)<svg.*?</svg>", "")
                                    .replaceAll("(?s)<[^>]*>|\\s+", " ")
                                    .strip());
                }
                return found;
            }
            found = page("/proposals");
        }
        return found;
    }

    /** Begins to look what the heap can make and waits until the search has ended; what the gallery shows then. */
    public String proposals(String more) {
        page("/cloth");
        beside("planning", 0);
        return page("/proposals" + more);
    }

    /**
     * Waits for what goes on beside the pages, instead of asking for a page again and again, which takes the processor away
     * from it.
     *
     * @param work the name of its threads
     * @param mostMs at most; 0 until they end
     */
    public static void beside(String work, long mostMs) {
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals(work)) {
                try {
                    thread.join(mostMs);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    throw new AssertionError(e);
                }
            }
        }
    }

    /** The token that every page of this workroom carries, as long as it is open. */
    public String token() {
        if (token.isEmpty()) {
            Matcher matcher = TOKEN.matcher(page("/settings"));
            if (!matcher.find()) {
                throw new AssertionError("no token on the page");
            }
            token = matcher.group(1);
        }
        return token;
    }

    /** Posts a form as a page of the workroom would; names and values in turn. */
    public HttpResponse<String> post(String path, String... fields) {
        return posted(path, token(), fields);
    }

    public HttpResponse<String> posted(String path, String token, String[] fields, String... headers) {
        StringBuilder form = new StringBuilder("token=" + encoded(token));
        for (int i = 0; i < fields.length; i += 2) {
            form.append('&').append(encoded(fields[i])).append('=').append(encoded(fields[i + 1]));
        }
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address() + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form.toString()));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return sent(request.build());
    }

    /** Posts a form with a file, as a page of the workroom would; names and values in turn. */
    public HttpResponse<String> send(String path, String name, byte[] file, String... fields) {
        return sent(HttpRequest.newBuilder(URI.create(address() + path))
                .header("Content-Type", Multipart.TYPE)
                .POST(HttpRequest.BodyPublishers.ofByteArray(Multipart.of(token(), name, file, fields)))
                .build());
    }

    /** Where a posted form sends the browser on to, without what is said there. */
    public static String onward(HttpResponse<String> response) {
        return response.headers().firstValue("Location").orElse("").replaceFirst("[?&]said=.*", "");
    }

    private HttpResponse<String> sent(HttpRequest request) {
        try {
            return client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        workroom.close();
    }
}
