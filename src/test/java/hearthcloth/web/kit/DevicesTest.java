package hearthcloth.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import hearthcloth.web.Workroom;
import hearthcloth.web.make.CutPageTest;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Another device on the network. Here it reaches the workroom at 127.0.0.2, which like a network's address is not the
 * machine's own loopback address.
 */
class DevicesTest {

    @TempDir
    Path folder;

    private static HttpResponse<String> get(HttpClient client, String address, String... headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(HttpClient client, String address, String form, String... headers)
            throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String code(HttpClient client, String here) throws Exception {
        return CutPageTest.all(
                        "Code: <strong class=\"big\">([A-Z0-9 ]+)<",
                        get(client, here + "/devices").body())
                .get(0)
                .replace(" ", "");
    }

    @Test
    void nobody_is_answered_elsewhere_unless_the_workroom_is_shared() throws Exception {
        try (Visit visit = new Visit(folder)) {
            assertThat(visit.page("/devices")).contains("--lan");
            org.assertj.core.api.Assertions.assertThatThrownBy(
                            () -> get(HttpClient.newHttpClient(), "http://127.0.0.2:" + visit.port() + "/gift"))
                    .isInstanceOf(java.io.IOException.class);
        }
    }

    @Test
    void a_device_comes_in_by_a_code_that_works_once_and_is_put_out_again() throws Exception {
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), true)) {
            String here = "http://localhost:" + workroom.port();
            String there = "http://127.0.0.2:" + workroom.port();
            HttpClient owner = HttpClient.newHttpClient();
            HttpClient tablet =
                    HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
            assertThat(get(tablet, there + "/gift")
                            .headers()
                            .firstValue("Location")
                            .orElse(""))
                    .endsWith("/join");
            assertThat(post(tablet, there + "/example", "token=x").statusCode()).isEqualTo(403);
            assertThat(get(tablet, there + "/join").body()).contains("Code on the other screen");

            String code = code(owner, here);
            assertThat(get(owner, here + "/devices").body()).contains("class=\"qr\"");
            HttpResponse<String> in = post(tablet, there + "/join", "code=" + code + "&name=%3Cb%3Emy+tablet");
            assertThat(in.headers().firstValue("Set-Cookie").orElse(""))
                    .contains("HttpOnly")
                    .contains("SameSite=Strict");
            assertThat(get(tablet, there + "/gift").statusCode()).isEqualTo(200);
            HttpClient other =
                    HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
            assertThat(post(other, there + "/join", "code=" + code + "&name=again")
                            .headers()
                            .firstValue("Set-Cookie"))
                    .isEmpty();

            assertThat(get(tablet, there + "/devices").statusCode()).isEqualTo(403);
            String devices = get(owner, here + "/devices").body();
            assertThat(devices).contains("&lt;b>my tablet").doesNotContain("<b>my");
            String token = CutPageTest.all("name=\"token\" content=\"([0-9a-f]+)\"", devices)
                    .get(0);
            String id = CutPageTest.all("/devices/([0-9a-f]+)/end", devices).get(0);
            assertThat(post(
                                    tablet,
                                    there + "/settings",
                                    "token=" + token + "&ruler=MILLIMETRES&paper=a4",
                                    "Origin",
                                    there)
                            .statusCode())
                    .isEqualTo(303);
            assertThat(post(tablet, there + "/settings", "token=" + token, "Origin", "http://evil.test")
                            .statusCode())
                    .isEqualTo(403);
            post(owner, here + "/devices/" + id + "/end", "token=" + token);
            assertThat(get(tablet, there + "/gift")
                            .headers()
                            .firstValue("Location")
                            .orElse(""))
                    .endsWith("/join");
        }
    }

    @Test
    void the_printed_address_lets_a_telephone_in_one_tap_away_from_its_camera() throws Exception {
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), true)) {
            String there = "http://127.0.0.2:" + workroom.port();
            String code = code(HttpClient.newHttpClient(), "http://localhost:" + workroom.port());
            for (String address : workroom.toTheCamera()) {
                assertThat(address).endsWith(":" + workroom.port() + "/join?to=photo&code=" + code);
            }
            HttpClient phone = HttpClient.newBuilder()
                    .cookieHandler(new CookieManager())
                    .followRedirects(HttpClient.Redirect.NORMAL)
                    .build();
            String printed = there + "/join?to=photo&code=" + code;
            assertThat(get(phone, printed, "Sec-Purpose", "prefetch").body()).contains("Code on the other screen");

            HttpResponse<String> page = get(phone, printed);

            assertThat(page.uri().getPath()).isEqualTo("/stash/photo");
            assertThat(page.body().indexOf("capture=\"environment\""))
                    .isPositive()
                    .isLessThan(page.body().indexOf("class=\"how\""));
            HttpClient late = HttpClient.newBuilder()
                    .cookieHandler(new CookieManager())
                    .followRedirects(HttpClient.Redirect.NORMAL)
                    .build();
            HttpResponse<String> again = get(late, printed);
            assertThat(again.body()).contains("not right", "action=\"/join?to=photo\"");
            assertThat(get(late, there + "/stash/photo").uri().getPath()).isEqualTo("/join");
        }
    }

    @Test
    void a_code_grows_old_and_does_not_suffer_guessing() {
        Instant[] now = {Instant.parse("2026-05-04T10:00:00Z")};
        Devices devices = new Devices(new Clock() {
            @Override
            public Instant instant() {
                return now[0];
            }

            @Override
            public java.time.ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(java.time.ZoneId zone) {
                return this;
            }
        });
        String code = devices.code();
        assertThat(devices.code()).isEqualTo(code);
        for (int i = 0; i < 5; i++) {
            assertThat(devices.join("nonsense" + i, "")).isEmpty();
        }
        assertThat(devices.code()).isNotEqualTo(code);
        String next = devices.code();
        now[0] = now[0].plus(Duration.ofMinutes(11));
        assertThat(devices.join(next, "late")).isEmpty();
        String key = devices.join(devices.code().toLowerCase(java.util.Locale.ROOT), "")
                .orElseThrow();
        assertThat(devices.isIn(key)).isTrue();
        devices.end(devices.all().get(0).id());
        assertThat(devices.isIn(key)).isFalse();
    }
}
