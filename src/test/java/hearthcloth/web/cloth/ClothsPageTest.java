package hearthcloth.web.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import hearthcloth.web.make.CutPageTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** The shelf of cloths over plain HTTP: notes, papers to take away, everything in one archive and back. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ClothsPageTest {

    private static final String HOSTILE = "</title><script>alert(1)</script>\"'&";

    @TempDir
    static Path folder;

    private Visit visit;
    private String id = "";

    @BeforeAll
    void open() {
        id = BegunWork.exampleTaken(folder).replace("/cloth/", "");
        visit = new Visit(folder);
    }

    @AfterAll
    void close() {
        visit.close();
    }

    private byte[] bytes(String path) {
        try {
            HttpResponse<byte[]> response = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(visit.address() + path))
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray());
            assertThat(response.statusCode()).as(path).isEqualTo(200);
            return response.body();
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private HttpResponse<String> brought(byte[] archive, String how) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        part(body, "name=\"token\"", visit.token().getBytes(StandardCharsets.UTF_8));
        part(body, "name=\"how\"", how.getBytes(StandardCharsets.UTF_8));
        part(body, "name=\"file\"; filename=\"../../x.zip\"", archive);
        body.writeBytes("--seam--\r\n".getBytes(StandardCharsets.UTF_8));
        try {
            return HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(visit.address() + "/archive"))
                                    .header("Content-Type", "multipart/form-data; boundary=seam")
                                    .header("Origin", visit.address())
                                    .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static void part(ByteArrayOutputStream body, String what, byte[] value) {
        body.writeBytes(
                ("--seam\r\nContent-Disposition: form-data; " + what + "\r\n\r\n").getBytes(StandardCharsets.UTF_8));
        body.writeBytes(value);
        body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
    }

    @Test
    @Order(1)
    void a_cloth_is_named_noted_and_used_and_nothing_written_is_read_as_markup() {
        visit.post("/cloth/" + id + "/name", "name", HOSTILE, "back", "/cloths");
        visit.post("/made/" + id + "/slip", "made", "4 May", "wrapped", HOSTILE, "keeper", "Mo");
        visit.post("/made/" + id + "/used");
        visit.post("/made/" + id + "/used");

        for (String page : new String[] {"/cloths", "/made/" + id, "/cut/" + id, "/cloth/" + id}) {
            assertThat(visit.page(page))
                    .as(page)
                    .doesNotContain("<script>alert")
                    .contains("&lt;script&gt;alert(1)");
        }
        assertThat(visit.page("/cloths")).contains("used 2 times", "Made 4 May", "with Mo");
        assertThat(visit.post("/made/" + id + "/slip", "made", "x".repeat(999)).statusCode())
                .isEqualTo(422);
    }

    @Test
    @Order(2)
    void guide_pictures_and_plan_file_are_taken_away_under_fixed_names() throws IOException {
        for (String paper : new String[] {"a4", "letter"}) {
            try (PDDocument pdf = Loader.loadPDF(bytes("/cloths/" + id + "/guide.pdf?paper=" + paper))) {
                assertThat(pdf.getNumberOfPages()).isGreaterThan(3);
                assertThat(pdf.getPage(0).getMediaBox().getHeight())
                        .isCloseTo(paper.equals("a4") ? 841.9f : 792f, org.assertj.core.api.Assertions.within(0.5f));
            }
        }
        HttpResponse<String> svg = visit.see("/cloths/" + id + "/back.svg");
        assertThat(svg.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"hearthcloth-back.svg\"");
        assertThat(svg.body()).contains("<svg").doesNotContain("<script");
        assertThat(new ObjectMapper()
                        .readTree(visit.page("/cloths/" + id + "/plan.json"))
                        .get("format")
                        .asText())
                .isEqualTo("hearthcloth-plan");
    }

    @Test
    @Order(3)
    void two_are_seen_side_by_side_and_a_copy_is_a_design_of_its_own() {
        String copy = Visit.onward(visit.post("/cloth/" + id + "/copy")).replaceFirst(".*/cloth/", "");
        assertThat(visit.page("/cloths/compare?c=" + id + "&c=" + copy)).contains("Joins", "Thread", "another");
        assertThat(visit.see("/cloths/compare?c=" + id).statusCode()).isEqualTo(303);
        visit.post("/cloths/" + copy + "/remove");
        assertThat(visit.page("/cloths")).doesNotContain(copy);
        assertThat(visit.see("/cloth/" + copy).statusCode()).isEqualTo(404);
    }

    @Test
    @Order(4)
    void everything_goes_out_and_comes_in_again_elsewhere() {
        byte[] archive = bytes("/archive");
        String stash = visit.page("/stash/stash.csv");
        assertThat(brought("kelp".getBytes(StandardCharsets.UTF_8), "add").statusCode())
                .isEqualTo(409);
        assertThat(brought(Arrays.copyOf(archive, archive.length / 2), "instead")
                        .statusCode())
                .isEqualTo(409);
        assertThat(visit.page("/stash/stash.csv")).isEqualTo(stash);

        visit.post("/example/away");
        assertThat(visit.page("/cloths")).contains("The first one goes here");
        assertThat(brought(archive, "add").headers().firstValue("Location").orElse(""))
                .contains("2+cloth");

        assertThat(visit.page("/stash/stash.csv")).isEqualTo(stash);
        assertThat(visit.page("/cloths")).contains("used 2 times", "Made 4 May");
        // Which of the two comes first is chance; the other may count on pieces that are cut up by now.
        assertThat(CutPageTest.all("href=\"/cut/(\\w+)\"", visit.page("/cloths")))
                .map(back -> visit.see("/cut/" + back).body())
                .anySatisfy(page -> assertThat(page).containsPattern("Piece \\d+ of"));
    }
}
