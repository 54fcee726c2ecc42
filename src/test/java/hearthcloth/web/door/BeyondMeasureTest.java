package hearthcloth.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Multipart;
import hearthcloth.web.Visit;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@link RequestMeasure}: requests that are larger than they may be, told or not, or many at once, are each answered in words,
 * none with a 500.
 */
class BeyondMeasureTest {

    @TempDir
    Path folder;

    /** What ends a form with a file: the line that parts its fields, with two dashes behind it. */
    private static final int CLOSING = "\r\n------cloth--\r\n".length();

    private Visit visit;
    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeEach
    void open() {
        visit = new Visit(folder);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    /** So many bytes of one letter, sent without being counted beforehand. */
    private static InputStream letters(long bytes) {
        return new InputStream() {
            private long left = bytes;

            @Override
            public int read() {
                return left-- > 0 ? 'x' : -1;
            }

            @Override
            public int read(byte[] into, int from, int most) {
                if (left <= 0) {
                    return -1;
                }
                int now = (int) Math.min(most, left);
                java.util.Arrays.fill(into, from, from + now, (byte) 'x');
                left -= now;
                return now;
            }
        };
    }

    /** A body whose length is not told; sent by hand, so that an answer that comes before its end is heard. */
    private String untold(String path, String type, byte[] head, long more) throws IOException {
        try (java.net.Socket socket = new java.net.Socket(java.net.InetAddress.getLoopbackAddress(), visit.port())) {
            var out = socket.getOutputStream();
            out.write(("POST " + path + " HTTP/1.1\r\nHost: localhost:" + visit.port() + "\r\nContent-Type: " + type
                            + "\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n")
                    .getBytes(java.nio.charset.StandardCharsets.UTF_8));
            try {
                chunk(out, head, head.length);
                byte[] part = letters(1 << 20).readAllBytes();
                for (long sent = 0; sent < more; sent += part.length) {
                    chunk(out, part, part.length);
                }
                chunk(out, part, 0);
            } catch (IOException e) {
                // It heard enough.
            }
            return new String(socket.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }

    private static void chunk(java.io.OutputStream out, byte[] bytes, int length) throws IOException {
        out.write((Integer.toHexString(length) + "\r\n").getBytes(java.nio.charset.StandardCharsets.UTF_8));
        out.write(bytes, 0, length);
        out.write("\r\n".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        out.flush();
    }

    @Test
    void a_form_of_untold_length_is_read_up_to_its_limit_only() throws IOException {
        byte[] head = ("token=" + visit.token() + "&line=").getBytes(java.nio.charset.StandardCharsets.UTF_8);
        assertThat(untold("/stash/line", "application/x-www-form-urlencoded", head, 3 << 20))
                .startsWith("HTTP/1.1 413")
                .contains("That is more than 2 MB");
        assertThat(visit.page("/stash")).doesNotContain("xxxx");
    }

    @Test
    void a_file_of_untold_length_is_read_up_to_its_limit_only() throws IOException {
        byte[] all = Multipart.of(visit.token(), "file", new byte[] {'P'});
        byte[] head = java.util.Arrays.copyOf(all, all.length - CLOSING);
        assertThat(untold("/archive", Multipart.TYPE, head, 65L << 20)).startsWith("HTTP/1.1 413");
        assertThat(untold("/stash/photo", Multipart.TYPE, head, 82L << 20))
                .startsWith("HTTP/1.1 413")
                .contains("The photograph is larger than 80 MB");
    }

    @Test
    void many_large_forms_at_once_are_refused_without_a_500() {
        byte[] head = ("token=" + visit.token() + "&line=").getBytes(java.nio.charset.StandardCharsets.UTF_8);
        List<CompletableFuture<String>> answers = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            answers.add(CompletableFuture.supplyAsync(() -> {
                try {
                    return untold("/stash/line", "application/x-www-form-urlencoded", head, 3 << 20);
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }));
        }
        assertThat(answers).allSatisfy(answer -> assertThat(answer.join()).startsWith("HTTP/1.1 413"));
        assertThat(visit.page("/stash")).contains("Your table is empty");
    }

    @Test
    void what_is_no_form_is_answered_in_words() throws IOException {
        byte[] form = Multipart.of(visit.token(), "file", new byte[] {'P'});
        assertThat(untold("/archive", "multipart/form-data", form, 0)).startsWith("HTTP/1.1 400");
        assertThat(untold("/archive", Multipart.TYPE, java.util.Arrays.copyOf(form, 70), 0))
                .startsWith("HTTP/1.1 4");
        assertThat(untold("/stash/line", "application/x-www-form-urlencoded; charset=kelp", form, 0))
                .startsWith("HTTP/1.1 4");
        assertThat(untold("/stash/line", "kelp", form, 0)).startsWith("HTTP/1.1 4");
    }

    /** An archive that unfolds to a hundred megabytes of a stash that is none. */
    private static byte[] folded() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("stash.json"));
            letters(100L << 20).transferTo(zip);
        }
        return bytes.toByteArray();
    }

    @Test
    void several_archives_at_once_come_in_one_at_a_time_and_the_others_are_told() throws IOException {
        byte[] form = Multipart.of(visit.token(), "file", folded());
        List<Integer> statuses = statuses(6, "/archive", Multipart.TYPE, form);
        assertThat(statuses).isSubsetOf(409, 503).contains(409);
        assertThat(visit.send("/archive", "file", folded()).statusCode()).isEqualTo(409);
    }

    private List<Integer> statuses(int many, String path, String type, byte[] form) {
        List<CompletableFuture<HttpResponse<String>>> answers = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            HttpRequest request = HttpRequest.newBuilder(URI.create(visit.address() + path))
                    .header("Content-Type", type)
                    .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(form)))
                    .build();
            answers.add(client.sendAsync(request, HttpResponse.BodyHandlers.ofString()));
        }
        return answers.stream().map(answer -> answer.join().statusCode()).toList();
    }

    @Test
    void what_is_no_letter_is_refused_in_words_wherever_it_stands() {
        for (HttpResponse<String> answer : List.of(
                visit.post("/stash/line", "line", "3 oat\0linen 10 x 20 in"),
                visit.post("/stash/line", "li\0ne", "3 oat linen 10 x 20 in"),
                visit.see("/gift?a=%00"),
                visit.see("/cloth/a%00b"))) {
            assertThat(answer.statusCode()).isIn(400, 422);
            assertThat(answer.body()).doesNotContain("Exception", "at java");
        }
        assertThat(visit.page("/stash")).contains("Your table is empty");
    }
}
