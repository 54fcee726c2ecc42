package hearthcloth.web.piecing;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scraps put together by hand, over plain HTTP: tapped, filled, exchanged, taken back, kept and cut. */
class PiecingPageTest {

    @TempDir
    Path folder;

    private Visit visit;

    @BeforeEach
    void open() {
        BegunWork.example(folder);
        visit = new Visit(folder);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    private static List<String> all(String pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    /** Does something on the table and reads the page after it. */
    private String done(String at, String... fields) {
        String mark =
                all("name=\"mark\" value=\"([^\"]*)\"", visit.page("/piecing")).get(0);
        List<String> form = new ArrayList<>(List.of("mark", mark, "at", at));
        form.addAll(List.of(fields));
        return after(visit.post("/piecing/do", form.toArray(String[]::new)));
    }

    /** The page an answer leads to, with what is said there. */
    private String after(HttpResponse<String> answer) {
        return visit.page(answer.headers().firstValue("Location").orElseThrow());
    }

    private String first() {
        return all("class=\"scrap\" href=\"/piecing\\?at=([^\"]*)\"", visit.page("/piecing"))
                .get(3);
    }

    @Test
    void two_scraps_are_put_together_and_taken_back() {
        String piece = first();
        String chosen = visit.page("/piecing?at=" + piece);
        assertThat(chosen).contains("What fits next", "Lay on the table");
        String way = all("name=\"join\" value=\"([^\"]*)\"", chosen).get(0);
        String joined = done(piece, "join", way);
        assertThat(joined).contains("are together").contains("svg class=\"part\"");
        assertThat(all("(class=\"patch)", joined)).hasSize(2);
        String undone = done("", "do", "undo");
        assertThat(undone).contains("Undone.").doesNotContain("svg class=\"part\"");
        assertThat(done("", "do", "redo")).contains("svg class=\"part\"");
    }

    @Test
    void a_tap_on_a_second_scrap_shows_the_ways_the_two_go_together() {
        String piece = first();
        String to = all("class=\"scrap\" href=\"(/piecing\\?at=[^\"]*?to=[^\"]*)\"", visit.page("/piecing?at=" + piece))
                .get(0)
                .replace("&amp;", "&");
        assertThat(visit.page(to)).contains("Together with").containsPattern("to the right|below|do not go together");
    }

    @Test
    void the_rest_is_filled_a_patch_is_exchanged_and_locked_and_the_cloth_is_kept_and_cut() {
        done("", "do", "size", "size", "22 in");
        String piece = first();
        done(piece, "do", "lay");
        String filled = done("", "do", "fill");
        assertThat(filled).contains("The cloth is filled").contains("Make this cloth");
        String patch = all("class=\"tap\" id=\"tap-[^\"]*\" href=\"/piecing\\?at=([^\"]*)\"", filled)
                .get(0);
        String chosen = visit.page("/piecing?at=" + patch);
        assertThat(chosen).contains("Another scrap in its place");
        assertThat(done(patch, "do", "lock")).containsPattern("Unlock|>Lock");
        HttpResponse<String> made = visit.post("/piecing/make");
        String cloth = Visit.onward(made).replaceFirst("\\?.*", "");
        assertThat(visit.page(cloth)).contains("Put together by hand", "Change it patch by patch", "22 in square");
        String id = cloth.replaceFirst(".*/", "");
        assertThat(visit.page("/cut/" + id)).containsPattern("class=\"sr\">Gives [A-Z]+\\d+: ");
        String again = after(visit.post("/piecing/from/" + id));
        assertThat(again).contains("Keep it in Put together by hand");
        assertThat(done("", "do", "fill")).contains("The cloth is filled");
        assertThat(Visit.onward(visit.post("/piecing/make"))).startsWith(cloth);
        assertThat(visit.page(cloth)).contains("Undo");
    }

    @Test
    void a_form_of_an_older_table_changes_nothing() {
        String piece = first();
        HttpResponse<String> late = visit.post("/piecing/do", "mark", "0", "at", piece, "do", "lay");
        assertThat(after(late)).contains("has changed meanwhile").doesNotContain("svg class=\"part\"");
    }
}
