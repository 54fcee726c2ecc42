package hearthcloth.load;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A browser of her own at a running workroom, that keeps its cookies and writes down what each answer took. */
final class Caller {

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([0-9a-f]+)\"");

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private final int port;
    private final Times times;
    private String token = "";

    Caller(int port, Times times) {
        this.port = port;
        this.times = times;
    }

    /** The page, whatever it says; takes its token. */
    HttpResponse<String> see(String kind, String path) throws IOException {
        HttpResponse<String> page = sent(kind, HttpRequest.newBuilder(uri(path)));
        Matcher matcher = TOKEN.matcher(page.body());
        if (matcher.find()) {
            token = matcher.group(1);
        }
        return page;
    }

    /** Sends a form; names and values in turn. */
    HttpResponse<String> post(String kind, String path, String... fields) throws IOException {
        StringBuilder form = new StringBuilder("token=" + token);
        for (int i = 0; i < fields.length; i += 2) {
            form.append('&')
                    .append(fields[i])
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return sent(
                kind,
                HttpRequest.newBuilder(uri(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form.toString())));
    }

    private URI uri(String path) {
        return URI.create("http://localhost:" + port + path);
    }

    private HttpResponse<String> sent(String kind, HttpRequest.Builder request) throws IOException {
        long begun = System.nanoTime();
        try {
            HttpResponse<String> answer =
                    client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
            times.took(kind, (System.nanoTime() - begun) / 1e6, answer.statusCode());
            return answer;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }
}
