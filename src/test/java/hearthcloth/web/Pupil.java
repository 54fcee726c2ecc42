package hearthcloth.web;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A student of a class who speaks plain HTTP from another device, and remembers how long each answer took. */
final class Pupil {

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([0-9a-f]+)\"");

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private final String address;
    private final List<Double> tookMs = new ArrayList<>();

    Pupil(String address) {
        this.address = address;
    }

    /** What each of her requests took until its answer was there, in milliseconds. */
    List<Double> tookMs() {
        return List.copyOf(tookMs);
    }

    HttpResponse<String> see(String path) throws Exception {
        return sent(HttpRequest.newBuilder(URI.create(address + path)).build());
    }

    HttpResponse<String> post(String path, String... fields) throws Exception {
        Matcher token = TOKEN.matcher(see("/class/mine").body());
        return posted(path, token.find() ? token.group(1) : "", fields);
    }

    HttpResponse<String> posted(String path, String token, String... fields) throws Exception {
        StringBuilder form = new StringBuilder("token=" + token);
        for (int i = 0; i < fields.length; i += 2) {
            form.append('&')
                    .append(fields[i])
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return sent(HttpRequest.newBuilder(URI.create(address + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form.toString()))
                .build());
    }

    private HttpResponse<String> sent(HttpRequest request) throws Exception {
        long begin = System.nanoTime();
        HttpResponse<String> response = client.send(request, HttpResponse.BodyHandlers.ofString());
        tookMs.add((System.nanoTime() - begin) / 1e6);
        return response;
    }

    /** Comes in; where she is sent on to, or what she is told. */
    String comes(String code, String name) throws Exception {
        HttpResponse<String> answer = posted("/class/in", "", "code", code, "name", name);
        return answer.headers().firstValue("Location").orElse(answer.body());
    }

    /** Asks for a cloth and looks at her page until it is there; the page. */
    String planned(String heap) throws Exception {
        post("/class/mine", "heap", heap, "favourite", "", "unit", "in");
        String page = see("/class/mine").body();
        while (page.contains("http-equiv=\"refresh\"")) {
            page = see("/class/mine").body();
        }
        return page;
    }
}
