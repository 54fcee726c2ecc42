package hearthcloth.web.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** A cloth of scraps in the workroom, over plain HTTP: chosen, kept, cut and sewn like any other. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FreeClothPageTest {

    @TempDir
    static Path folder;

    private Visit visit;
    private String id;

    @BeforeAll
    void open() {
        BegunWork.example(folder);
        visit = new Visit(folder);
        visit.post("/gift", "size", "30 in");
        visit.post("/proposals", "patchwork", "free");
        String found = visit.firstProposals();
        assertThat(found).contains(" patches · ").doesNotContain("joins");
        String name = found("name=\"name\" value=\"(\\w+)\"", found);
        id = Visit.onward(visit.post("/proposals/open", "name", name)).replaceFirst(".*/", "");
    }

    @AfterAll
    void close() {
        visit.close();
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    @Test
    void the_choice_stays_chosen_in_the_wishes() {
        assertThat(visit.page("/cloth")).containsPattern("value=\"free\"[^>]* selected");
    }

    @Test
    void wishes_of_scraps_stay_filled_in_and_what_cannot_be_used_is_said() {
        String piece = found("name=\"with\" value=\"([^\"]+)\"", visit.page("/cloth"));
        visit.post(
                "/proposals",
                "patchwork",
                "free",
                "with",
                piece,
                "scraps",
                "as-they-are",
                "most-trim",
                "3",
                "sizes",
                "even");
        assertThat(visit.page("/cloth"))
                .containsPattern("name=\"with\" value=\"" + piece + "\" checked")
                .containsPattern("value=\"as-they-are\"[^>]* selected")
                .containsPattern("name=\"most-trim\" value=\"3\"")
                .containsPattern("value=\"even\"[^>]* selected");
        assertThat(visit.post("/proposals", "patchwork", "free", "most-trim", "far")
                        .body())
                .contains("Most trim");
        visit.post("/proposals", "patchwork", "free");
        assertThat(visit.page("/cloth")).doesNotContainPattern("name=\"with\"[^>]* checked");
    }

    @Test
    void its_page_shows_both_faces_and_offers_cutting_but_no_bars_to_change() {
        assertThat(visit.page("/cloth/" + id))
                .contains("Front", "Back", "Patches", "Cut this cloth", "30 in square")
                .doesNotContain("Tap the hearth", "Plan the colours again");
    }

    @Test
    void it_is_cut_and_sewn_by_the_same_pages_with_names_in_sewing_order() {
        assertThat(visit.page("/cut/" + id)).containsPattern("class=\"sr\">Gives [A-Z]+\\d+: ");
        assertThat(visit.page("/sew/" + id)).contains("Lay everything out");
        assertThat(visit.page("/cloths/" + id + "/plan.json")).contains("\"A1\"");
        assertThat(visit.page("/cloths")).contains("/cloth/" + id);
    }

    @Test
    void a_change_of_a_bar_that_it_has_not_is_refused_in_a_sentence() {
        String version = found("data-version=\"(\\d+)\"", visit.page("/cloth/" + id));
        assertThat(visit.post("/cloth/" + id + "/change", "version", version, "what", "rounds", "rounds", "2")
                        .body())
                .contains("has no bars to change");
    }
}
