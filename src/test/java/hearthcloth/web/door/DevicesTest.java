package hearthcloth.web.door;

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
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.NEAR)) {
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
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.NEAR)) {
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
        for (int i = 0; i < 5; i++) {
            assertThat(devices.join("nonsense" + i, "", "192.168.1.66").said()).isEqualTo(Devices.Said.WRONG);
        }
        assertThat(devices.join(code, "", "192.168.1.66").said()).isEqualTo(Devices.Said.WAIT);
        assertThat(devices.code()).isEqualTo(code);
        now[0] = now[0].plus(Duration.ofMinutes(11));
        assertThat(devices.join(code, "late", "192.168.1.7").said()).isEqualTo(Devices.Said.WRONG);
        String key = devices.join(devices.code().toLowerCase(java.util.Locale.ROOT), "", "192.168.1.7")
                .key();
        assertThat(devices.isIn(key)).isTrue();
        devices.end(devices.all().get(0).id());
        assertThat(devices.isIn(key)).isFalse();
    }

    @Test
    void a_guesser_keeps_no_tablet_out_and_a_flood_of_them_leaves_the_way_by_a_yes() {
        Devices devices = new Devices(Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC));
        String code = devices.code();
        for (int i = 0; i < 1_000; i++) {
            devices.join("WRONG" + i, "", "192.168.1.66");
        }
        assertThat(devices.join(code, "tablet", "192.168.1.7").said()).isEqualTo(Devices.Said.IN);

        for (int i = 0; i < 1_000; i++) {
            devices.join("WRONG" + i, "", "192.168.2." + i % 250);
        }
        assertThat(devices.join(devices.code(), "tablet", "192.168.1.8").said()).isEqualTo(Devices.Said.WAIT);
        String secret = devices.ask("tablet", "192.168.1.8").orElseThrow();
        assertThat(devices.allowed(secret)).isEmpty();
        assertThat(devices.asking()).hasSize(1);
        assertThat(devices.mark(secret)).contains(devices.asking().get(0).mark());
        devices.answer(devices.asking().get(0).id(), true);
        assertThat(devices.isIn(devices.allowed(secret).orElseThrow())).isTrue();
        assertThat(devices.allowed(secret)).isEmpty();
    }

    @Test
    void few_ask_at_a_time_each_from_its_address_and_with_a_mark_of_its_own() {
        Devices devices = new Devices(Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC));
        for (int i = 0; i < 100; i++) {
            devices.ask("a flood", "192.168.1.66");
        }
        for (int i = 0; i < 19; i++) {
            assertThat(devices.ask("one", "192.168.2." + i)).isPresent();
        }
        assertThat(devices.ask("one too many", "192.168.3.1")).isEmpty();
        assertThat(devices.asking()).hasSize(20);
        assertThat(devices.asking().stream().map(Devices.Asking::mark).distinct())
                .hasSize(20);
        devices.answer(devices.asking().get(0).id(), false);
        assertThat(devices.ask("now", "192.168.3.1")).isPresent();
    }

    @Test
    void a_device_that_asks_comes_in_when_the_owner_says_yes_at_the_machine() throws Exception {
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.NEAR)) {
            String here = "http://localhost:" + workroom.port();
            String there = "http://127.0.0.2:" + workroom.port();
            HttpClient owner = HttpClient.newHttpClient();
            HttpClient tablet = HttpClient.newBuilder()
                    .cookieHandler(new CookieManager())
                    .followRedirects(HttpClient.Redirect.NORMAL)
                    .build();
            post(tablet, there + "/join/ask", "name=%3Cb%3Etablet");
            String waits = get(tablet, there + "/join").body();
            String mark = CutPageTest.all("class=\"big\">([^<]+)<", waits).get(0);
            assertThat(get(tablet, there + "/gift").body()).contains(mark);

            String devices = get(owner, here + "/devices").body();
            assertThat(devices).contains(mark, "&lt;b", "127.0.0.1").doesNotContain("<b>");
            String id = CutPageTest.all("/devices/asking/([0-9a-f]+)", devices).get(0);
            String token = CutPageTest.all("name=\"token\" content=\"([0-9a-f]+)\"", devices)
                    .get(0);
            assertThat(post(tablet, there + "/devices/asking/" + id, "answer=yes&token=" + token)
                            .statusCode())
                    .isEqualTo(403);
            post(owner, here + "/devices/asking/" + id, "answer=yes&token=" + token);

            assertThat(get(tablet, there + "/join").uri().getPath()).isEqualTo("/sew");
            assertThat(get(owner, here + "/devices").body())
                    .doesNotContain(mark)
                    .contains("tablet, since");
        }
    }

    @Test
    void before_it_is_let_in_a_device_sees_bare_words_and_sends_little() throws Exception {
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.NEAR)) {
            String there = "http://127.0.0.2:" + workroom.port();
            HttpClient stranger = HttpClient.newHttpClient();
            for (String path : new String[] {
                "/own/nothing", "/own/", "/letters/nothing.ttf", "/join/ask", "/own/%2e%2e/gift", "/webjars/x"
            }) {
                HttpResponse<String> answer = get(stranger, there + path);
                assertThat(answer.body()).as(path).doesNotContain("token", "inches", "<nav", "<main");
                assertThat(answer.body().length()).as(path).isLessThan(120);
            }
            HttpResponse<String> refused = post(stranger, there + "/gift", "token=x");
            assertThat(refused.statusCode()).isEqualTo(403);
            assertThat(refused.body()).doesNotContain("token", "inches", "<nav");
            String large = "name=" + "x".repeat(5_000);
            assertThat(post(stranger, there + "/join", large).statusCode()).isEqualTo(413);
            HttpRequest untold = HttpRequest.newBuilder(URI.create(there + "/join"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofInputStream(() ->
                            new java.io.ByteArrayInputStream(large.getBytes(java.nio.charset.StandardCharsets.UTF_8))))
                    .build();
            assertThat(stranger.send(untold, HttpResponse.BodyHandlers.ofString())
                            .statusCode())
                    .isEqualTo(413);
        }
    }

    @Test
    void a_form_from_another_port_of_the_same_machine_is_refused() throws Exception {
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.NEAR)) {
            String there = "http://127.0.0.2:" + workroom.port();
            String form = "code=" + code(HttpClient.newHttpClient(), "http://localhost:" + workroom.port());
            for (String origin : new String[] {
                "http://127.0.0.2:" + (workroom.port() - 1), "https://127.0.0.2:" + workroom.port(), "http://127.0.0.2"
            }) {
                assertThat(post(HttpClient.newHttpClient(), there + "/join", form, "Origin", origin)
                                .statusCode())
                        .as(origin)
                        .isEqualTo(403);
            }
        }
    }

    @Test
    void where_others_are_logged_in_to_the_same_machine_a_code_is_asked_for_there_too() throws Exception {
        Openness openness = new Openness(false, true, java.util.Optional.empty());
        try (Workroom workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), openness)) {
            String here = "http://localhost:" + workroom.port();
            HttpClient other = HttpClient.newHttpClient();
            assertThat(get(other, here + "/stash")
                            .headers()
                            .firstValue("Location")
                            .orElse(""))
                    .endsWith("/join");
            assertThat(get(other, here + "/devices")
                            .headers()
                            .firstValue("Location")
                            .orElse(""))
                    .endsWith("/join");
            HttpClient hers = HttpClient.newBuilder()
                    .cookieHandler(new CookieManager())
                    .followRedirects(HttpClient.Redirect.NORMAL)
                    .build();
            post(hers, here + "/join", "name=my+own&code=" + workroom.code().orElseThrow());
            assertThat(get(hers, here + "/stash").body()).contains("Stash");
            assertThat(get(hers, here + "/devices").body())
                    .contains("my own, since", "Code:")
                    .doesNotContain("qr");
        }
    }
}
