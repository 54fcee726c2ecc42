package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.FaultyLine;
import hearthcloth.TestServer;
import hearthcloth.stash.Piece;
import hearthcloth.store.Person;
import hearthcloth.store.Store;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import hearthcloth.web.door.Openness;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The line between a workroom and its studio's database fails: every page says so in words and in time, what was typed is
 * kept on it, and of what was acknowledged nothing is lost or doubled.
 */
class FaultyLineTest {

    private final String database = TestServer.freshDatabase();
    private final FaultyLine line = FaultyLine.to(database);
    private final Studio studio = Studio.open(
            StudioAddress.parse(line.address(database), Optional.empty()), Clock.systemUTC());
    private final Workroom workroom = Workroom.open(studio, 0, Clock.systemUTC(), Openness.HERE);
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private String token = "";

    @BeforeEach
    void comesIn() throws Exception {
        token = token(see("/enter").body());
        assertThat(post("/enter", "name", "Ada", "passphrase", "kelp and plum by lamplight")
                        .statusCode())
                .isEqualTo(303);
        token = token(see("/gift").body());
    }

    @AfterEach
    void close() {
        workroom.close();
        studio.close();
        line.close();
    }

    private static String token(String page) {
        Matcher matcher =
                Pattern.compile("name=\"token\" content=\"([0-9a-f]+)\"").matcher(page);
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    private HttpResponse<String> sent(HttpRequest.Builder request) throws Exception {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private URI uri(String path) {
        return URI.create("http://localhost:" + workroom.port() + path);
    }

    private HttpResponse<String> see(String path) throws Exception {
        return sent(HttpRequest.newBuilder(uri(path)));
    }

    private HttpResponse<String> post(String path, String... fields) throws Exception {
        StringBuilder form = new StringBuilder("token=" + token);
        for (int i = 0; i < fields.length; i += 2) {
            form.append('&')
                    .append(fields[i])
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return sent(HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form.toString())));
    }

    private List<Piece> pieces() {
        try (Studio direct = Studio.open(StudioAddress.parse(database, Optional.empty()), Clock.systemUTC())) {
            Person ada = direct.people().all().get(0);
            Store work = direct.of(ada);
            return work.stash().whole().pieces();
        }
    }

    @Test
    void while_the_database_does_not_answer_a_change_is_told_and_kept_on_the_page() throws Exception {
        for (FaultyLine.Fault fault : new FaultyLine.Fault[] {FaultyLine.Fault.CUT, FaultyLine.Fault.SILENT}) {
            assertThat(post("/stash/line", "line", "1 oat linen 10 x 20 in").statusCode())
                    .isEqualTo(303);
            line.becomes(fault);
            HttpResponse<String> told = post("/stash/line", "line", "2 kelp linen 5 x 5 in");
            assertThat(told.statusCode()).as(fault + told.body()).isEqualTo(503);
            assertThat(told.body()).contains("does not answer", "2 kelp linen 5 x 5 in", "Send it again", token);
            HttpResponse<String> page = see("/stash");
            assertThat(page.statusCode()).isEqualTo(503);
            assertThat(page.body()).contains("does not answer").doesNotContain("Exception");
            line.becomes(FaultyLine.Fault.NONE);
            line.cut();
        }
        assertThat(post("/stash/line", "line", "2 kelp linen 5 x 5 in").statusCode())
                .isEqualTo(303);
        assertThat(pieces()).hasSize(4);
    }

    @Test
    @Tag("long")
    void cut_again_and_again_nothing_acknowledged_is_lost_and_nothing_comes_twice() throws Exception {
        Random random = new Random(20_261_130);
        int acknowledged = 0;
        int unsure = 0;
        for (int change = 0; change < 300; change++) {
            Thread cutter = new Thread(() -> {
                java.util.concurrent.locks.LockSupport.parkNanos(random.nextInt(30_000_000));
                line.cut();
            });
            cutter.start();
            int status;
            try {
                status = post("/stash/line", "line", "1 oat linen 10 x " + (1 + change % 40) + " in")
                        .statusCode();
            } catch (IOException e) {
                throw new AssertionError("the workroom itself gave no answer", e);
            }
            cutter.join();
            assertThat(status).isIn(303, 503, 409);
            if (status == 303) {
                acknowledged++;
            } else {
                unsure++;
            }
        }
        assertThat(pieces()).hasSizeBetween(acknowledged, acknowledged + unsure);
    }
}
