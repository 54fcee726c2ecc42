package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import hearthcloth.store.Store;
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
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;

/** Visits a workroom of its own as a browser without JavaScript does. */
public abstract class StashVisit {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

    private final Workroom workroom;
    public final Store store;
    public final HttpClient client = HttpClient.newHttpClient();
    private final String token;

    public StashVisit(@TempDir Path folder) throws Exception {
        Path file = file(folder);
        workroom = Workroom.open(file, 0, CLOCK, Openness.HERE);
        store = Store.open(file, CLOCK);
        token = first("name=\"token\" content=\"([0-9a-f]+)\"", get("/stash").body());
    }

    /** Where the workroom's file lies in a test's folder. */
    static Path file(Path folder) {
        return folder.resolve("workroom.db");
    }

    @AfterEach
    protected void close() {
        workroom.close();
    }

    protected HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + workroom.port() + path));
    }

    protected HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(to(path).build(), HttpResponse.BodyHandlers.ofString());
    }

    protected HttpResponse<String> post(String path, String... namesAndValues)
            throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder("token=" + token);
        for (int i = 0; i < namesAndValues.length; i += 2) {
            body.append('&')
                    .append(namesAndValues[i])
                    .append('=')
                    .append(URLEncoder.encode(namesAndValues[i + 1], StandardCharsets.UTF_8));
        }
        return client.send(
                to(path).header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a form with a file, as a browser does. */
    protected HttpResponse<String> send(String path, String name, byte[] file, String... namesAndValues)
            throws IOException, InterruptedException {
        return client.send(
                to(path).header("Content-Type", Multipart.TYPE)
                        .POST(HttpRequest.BodyPublishers.ofByteArray(Multipart.of(token, name, file, namesAndValues)))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    protected static String first(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
        return matcher.group(1);
    }

    protected List<Piece> pieces() {
        return store.stash().whole().pieces();
    }

    protected static String seen(String page) {
        return first("name=\"seen\" value=\"([^\"]*)\"", page)
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&amp;", "&");
    }

    protected static Size inches(long width, long length) {
        return new Size(Length.inches(width), Length.inches(length));
    }
}
