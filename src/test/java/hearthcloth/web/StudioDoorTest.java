package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.TestServer;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import hearthcloth.web.door.Openness;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The ways into a studio from elsewhere: a telephone on the network at 127.0.0.2, and a proxy that speaks TLS before it. */
class StudioDoorTest {

    private static final String PHRASE = "kelp and plum by lamplight";

    private final Studio studio =
            Studio.open(StudioAddress.parse(TestServer.freshDatabase(), Optional.empty()), Clock.systemUTC());

    @AfterEach
    void close() {
        studio.close();
    }

    /** One raw request to an address of this machine, so that Host and Origin are what the browser would send. */
    private static String raw(Workroom room, String to, String request, String body, String... headers)
            throws IOException {
        try (Socket socket = new Socket(InetAddress.getByName(to), room.port())) {
            String type = body.isEmpty()
                    ? ""
                    : "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length();
            socket.getOutputStream()
                    .write((request + " HTTP/1.1\r\n" + String.join("\r\n", headers) + type
                                    + "\r\nConnection: close\r\n\r\n" + body)
                            .getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String entered(Workroom room, String to, String host, String origin) throws IOException {
        Matcher token = Pattern.compile("name=\"token\" content=\"([0-9a-f]+)\"")
                .matcher(raw(room, to, "GET /enter", "", "Host: " + host));
        assertThat(token.find()).isTrue();
        String form =
                "token=" + token.group(1) + "&name=Ada&passphrase=" + URLEncoder.encode(PHRASE, StandardCharsets.UTF_8);
        return raw(room, to, "POST /enter", form, "Host: " + host, "Origin: " + origin);
    }

    @Test
    void a_telephone_comes_in_by_passphrase_and_goes_in_no_circles() throws IOException {
        try (Workroom room = Workroom.open(studio, 0, Clock.systemUTC(), Openness.NEAR)) {
            String host = "127.0.0.2:" + room.port();
            assertThat(entered(room, "127.0.0.2", host, "http://" + host))
                    .startsWith("HTTP/1.1 422")
                    .contains("begun at the machine");
            studio.people().begin("Ada", PHRASE);
            assertThat(raw(room, "127.0.0.2", "GET /gift", "", "Host: " + host))
                    .startsWith("HTTP/1.1 303")
                    .containsPattern("Location: \\S*/enter");
            String in = entered(room, "127.0.0.2", host, "http://" + host);
            assertThat(in).startsWith("HTTP/1.1 303").containsPattern("Location: /\\s");
            String cookie = in.replaceFirst("(?s).*Set-Cookie: (hearthcloth=[0-9a-f]+).*", "$1");
            assertThat(raw(room, "127.0.0.2", "GET /gift", "", "Host: " + host, "Cookie: " + cookie))
                    .startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void through_a_proxy_only_its_own_address_is_answered_and_the_cookie_goes_over_tls_alone() throws IOException {
        studio.people().begin("Ada", PHRASE);
        Openness openness = Openness.of(false, false, Optional.of("https://studio.example/"));
        try (Workroom room = Workroom.open(studio, 0, Clock.systemUTC(), openness)) {
            assertThat(entered(room, "127.0.0.1", "studio.example", "https://studio.example"))
                    .startsWith("HTTP/1.1 303")
                    .containsPattern("Set-Cookie: hearthcloth=[^\r]*Secure");
            for (String origin : new String[] {"http://studio.example", "https://studio.example:444", "null"}) {
                assertThat(entered(room, "127.0.0.1", "studio.example", origin))
                        .as(origin)
                        .startsWith("HTTP/1.1 403");
            }
            assertThat(raw(room, "127.0.0.1", "GET /enter", "", "Host: other.example"))
                    .startsWith("HTTP/1.1 403")
                    .doesNotContain("token");
        }
    }
}
