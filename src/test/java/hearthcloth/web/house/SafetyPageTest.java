package hearthcloth.web.house;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Safety copies on their page: listed, made, put back; and told on every page where one could not be made. */
class SafetyPageTest {

    @TempDir
    Path folder;

    @Test
    void a_copy_is_made_listed_and_put_back() {
        try (Visit visit = new Visit(folder)) {
            assertThat(visit.page("/settings")).contains("href=\"/copies\"");
            assertThat(visit.page("/copies")).contains("There is none yet");
            visit.post("/stash/line", "line", "3 oat linen 10 x 20 in");
            visit.post("/copies");
            visit.post("/stash/line", "line", "2 zinnia voile 4 x 8 in");
            String page = visit.page("/copies");
            assertThat(page).contains("asked for", " kB", "Put back");
            String copy = page.replaceFirst("(?s).*name=\"copy\" value=\"([^\"]+)\".*", "$1");

            HttpResponse<String> back = visit.post("/copies/back", "copy", copy);

            assertThat(back.statusCode()).isEqualTo(303);
            assertThat(visit.page("/stash")).contains("10 × 20 in").doesNotContain("innia voile");
            assertThat(visit.page("/copies")).contains("before an older copy was put back");
            assertThat(visit.post("/copies/back", "copy", "../work.db").statusCode())
                    .isEqualTo(409);
        }
    }

    @Test
    void a_copy_that_could_not_be_made_is_told_on_every_page() throws Exception {
        try (Visit visit = new Visit(folder)) {
            visit.post("/stash/line", "line", "3 oat linen 10 x 20 in");
        }
        Files.writeString(folder.resolve("work.db.copies"), "in the way");
        try (Visit visit = new Visit(folder)) {
            for (String path : new String[] {"/gift", "/stash", "/cloths", "/copies"}) {
                assertThat(visit.page(path)).as(path).contains("No safety copy could be made");
            }
            assertThat(visit.post("/stash/line", "line", "1 oat linen 3 x 3 in").statusCode())
                    .isEqualTo(303);
        }
    }
}
