package hearthcloth.web.house;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** An idea handed on as a file and taken in again, over plain HTTP, in a workroom without a studio. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandOnPageTest {

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

    private HttpResponse<String> in(String file) {
        return visit.send("/hand-on", "file", file.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void an_idea_goes_out_as_a_file_and_comes_in_fitted_to_the_stash() {
        assertThat(visit.page("/hand-on")).contains("/hand-on/" + id);
        assertThat(visit.page("/hand-on/" + id)).contains("Save as a guideline file");
        HttpResponse<String> file = visit.post(
                "/hand-on/" + id + "/idea.json",
                "name",
                "Mine <script>",
                "words",
                "Begin here.",
                "size-own",
                "12 to 16 in",
                "hearth",
                "share",
                "rounds",
                "open",
                "colours",
                "open",
                "middle",
                "any");
        assertThat(file.headers().firstValue("Content-Disposition").orElse("")).contains("idea.json");
        assertThat(GuidelineFile.read(file.body())).isInstanceOf(GuidelineFile.Reading.Read.class);
        HttpResponse<String> taken = in(file.body());
        String cloth = Visit.onward(taken).replaceFirst("^https?://[^/]+", "");
        assertThat(cloth).startsWith("/cloth/");
        assertThat(visit.page(cloth)).contains("Mine &lt;script&gt;").doesNotContain("Mine <script>");
    }

    @Test
    void one_cloth_goes_by_its_plan_file() {
        String plan = visit.page("/cloths/" + id + "/plan.json");
        assertThat(Visit.onward(in(plan))).contains("/cloth/");
    }

    @Test
    void a_bad_file_is_refused_with_its_field_and_nothing_is_taken_in() {
        String before = visit.page("/hand-on");
        HttpResponse<String> refused =
                in("{\"format\":\"hearthcloth-guideline\",\"version\":1,\"name\":\"A\",\"hearth\":\"big\"}");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("hearth", "largest square");
        assertThat(in("not json").statusCode()).isEqualTo(422);
        assertThat(visit.post("/hand-on/" + id + "/idea.json", "bars-own", "wide")
                        .body())
                .contains("strips");
        assertThat(visit.page("/hand-on").replaceAll("token\" value=\"[^\"]*", ""))
                .isEqualTo(before.replaceAll("token\" value=\"[^\"]*", ""));
    }
}
