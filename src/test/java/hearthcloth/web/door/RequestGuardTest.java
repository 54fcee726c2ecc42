package hearthcloth.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Attacks on what {@link RequestGuard} stands before: the workroom, from other sites, other names and other hands; each must fail and change nothing. */
class RequestGuardTest {

    @TempDir
    Path folder;

    private Visit visit;

    @BeforeEach
    void open() {
        visit = new Visit(folder);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    /** One raw request, so that Host and Origin can be forged. */
    private String raw(String... lines) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), visit.port())) {
            socket.getOutputStream()
                    .write((String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void a_foreign_name_that_points_here_is_refused() throws IOException {
        assertThat(raw("GET /gift HTTP/1.1", "Host: evil.example")).startsWith("HTTP/1.1 403");
        assertThat(raw("GET /gift HTTP/1.1", "Host: localhost.evil.example")).startsWith("HTTP/1.1 403");
        assertThat(raw("GET /gift HTTP/1.1", "Host: evil.example:" + visit.port()))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("GET /gift HTTP/1.1", "Host: 127.0.0.1:" + visit.port())).startsWith("HTTP/1.1 200");
    }

    @Test
    void a_form_from_another_site_is_refused_even_with_the_token() {
        HttpResponse<String> response =
                visit.posted("/example", visit.token(), new String[0], "Origin", "https://evil.example");
        assertThat(response.statusCode()).isEqualTo(403);
        assertThat(visit.posted("/example", visit.token(), new String[0], "Origin", "null")
                        .statusCode())
                .isEqualTo(403);
        assertThat(visit.page("/gift")).doesNotContain("This is an example");
    }

    @Test
    void a_form_without_the_token_or_with_another_is_refused_in_words() {
        for (String token : new String[] {"", "0", "00".repeat(24), "é"}) {
            HttpResponse<String> response = visit.posted("/example", token, new String[0]);
            assertThat(response.statusCode()).isEqualTo(403);
            assertThat(response.body()).contains("Load it again");
        }
        assertThat(visit.page("/gift")).doesNotContain("This is an example");
    }

    @Test
    void every_page_forbids_scripts_and_styles_that_are_not_ours() {
        for (String path : new String[] {"/gift", "/settings", "/cloth", "/nothing-here"}) {
            HttpResponse<String> response = visit.see(path);
            assertThat(response.headers().firstValue("Content-Security-Policy").orElse(""))
                    .as(path)
                    .contains("default-src 'none'", "script-src 'self'", "style-src 'self'", "frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(response.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
            assertThat(response.body()).as(path).doesNotContain("<script>", " style=", "onclick=", "javascript:");
        }
    }

    @Test
    void what_she_types_is_shown_as_letters_never_as_markup() {
        String evil = "\"><script>alert(1)</script><img src=x onerror=alert(2)>";
        String shown = visit.page(
                "/gift?kind=box&a=" + encoded(evil) + "&b=9&c=4&cloth=" + encoded(evil) + "&said=" + encoded(evil));
        assertThat(shown).doesNotContain("<script>alert", "<img src=x");
        assertThat(visit.see("/cloth/" + encoded(evil)).body()).doesNotContain("<script>alert");
    }

    private static String encoded(String text) {
        return java.net.URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Test
    void after_settings_it_goes_only_to_pages_of_its_own() {
        for (String away :
                new String[] {"//evil.example", "https://evil.example", "/\\evil.example", "/gift\r\nX: y"}) {
            HttpResponse<String> response = visit.post("/settings", "ruler", "EIGHTHS", "paper", "a4", "back", away);
            assertThat(Visit.onward(response)).endsWith("/gift").doesNotContain("evil");
        }
    }

    @Test
    void an_address_that_is_none_and_a_trouble_inside_are_told_in_words() {
        HttpResponse<String> response = visit.see("/nothing-here");
        assertThat(response.statusCode()).isEqualTo(404);
        assertThat(response.body())
                .contains("There is nothing at this address.")
                .doesNotContain("Exception", "at java");
        assertThat(visit.see("/own/../../etc/passwd").statusCode()).isIn(400, 404);
        assertThat(visit.see("/letters/..%2f..%2fx.ttf").statusCode()).isIn(400, 404);
    }

    @Test
    void a_request_beyond_measure_is_refused_before_it_is_read() throws IOException {
        String answer = raw(
                "POST /gift HTTP/1.1",
                "Host: localhost:" + visit.port(),
                "Content-Type: application/x-www-form-urlencoded",
                "Content-Length: 99999999999");
        assertThat(answer).startsWith("HTTP/1.1 413");
    }
}
