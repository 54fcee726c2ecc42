package hearthcloth.web.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The gallery and the page of one cloth, over plain HTTP: everything can be changed, told, undone and done again. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ClothPageTest {

    @TempDir
    static Path folder;

    private Visit visit;
    private String cloth;

    @BeforeAll
    void open() {
        cloth = BegunWork.exampleTaken(folder);
        visit = new Visit(folder);
    }

    @AfterAll
    void close() {
        visit.close();
    }

    private String version() {
        return found("data-version=\"(\\d+)\"", visit.page(cloth));
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    private HttpResponse<String> change(String... fields) {
        String[] all = new String[fields.length + 2];
        all[0] = "version";
        all[1] = version();
        System.arraycopy(fields, 0, all, 2, fields.length);
        return visit.posted(cloth + "/change", visit.token(), all, "HX-Request", "true");
    }

    @Test
    void proposals_show_both_faces_and_how_near_they_are_to_the_fewest_joins() {
        assertThat(visit.firstProposals()).contains("<svg class=\"cloth\"", "Take this one", "in square");
        assertThat(visit.page(cloth)).contains("Front", "Back", "Joins", "Thickest place", "Cut this cloth");
    }

    @Test
    void sections_which_the_page_has_are_not_sent_again_unless_they_changed() {
        String whole = visit.see(cloth + "?at=1A", "HX-Request", "true").body();
        String held = Pattern.compile("data-held=\"([^\"]+)\"")
                .matcher(whole)
                .results()
                .map(mark -> mark.group(1))
                .collect(Collectors.joining(" "));
        String less =
                visit.see(cloth + "?at=1A", "HX-Request", "true", "Held", held).body();
        assertThat(whole).contains("id=\"hem\"", "id=\"fabric-0\"", "<pattern");
        assertThat(less)
                .doesNotContain("id=\"hem\"", "id=\"fabric-0\"")
                .contains("id=\"more\"")
                .contains(held.split(" ", -1));
        assertThat(less.length()).isLessThan(whole.length() / 4 * 3);
        String hemmed = visit.posted(
                        cloth + "/change",
                        visit.token(),
                        new String[] {"version", version(), "at", "1A", "what", "hem", "hem", "1/4 + 5/8"},
                        "HX-Request",
                        "true",
                        "Held",
                        held)
                .body();
        assertThat(hemmed).contains("id=\"hem\"").doesNotContain("<svg class=\"tiles\"");
        assertThat(visit.see(cloth, "Held", held).body()).contains("id=\"hem\"", "<svg class=\"tiles\"");
    }

    @Test
    void it_can_be_looked_at_with_eyes_that_lack_a_kind_of_cone_and_says_what_its_colours_do() {
        assertThat(visit.page(cloth)).contains("class=\"colours\">The hearth");
        for (String eyes : new String[] {"red-blind", "green-blind", "blue-blind"}) {
            assertThat(visit.page(cloth + "?look=" + eyes))
                    .contains(
                            "<filter id=\"" + eyes + "\"",
                            "filter=\"url(#" + eyes + ")\"",
                            "To " + eyes + " eyes the hearth");
        }
    }

    @Test
    void colours_are_planned_again_in_the_plan_of_colour_that_is_wished_or_it_is_said_what_that_needs() {
        for (String scheme : new String[] {"Spiral", "One field", "Scattered evenly"}) {
            HttpResponse<String> response = visit.posted(
                    cloth + "/again",
                    visit.token(),
                    new String[] {"version", version(), "scheme", scheme, "contrast", "reads"},
                    "HX-Request",
                    "true");
            if (response.statusCode() == 200) {
                visit.posted(cloth + "/undo", visit.token(), new String[0], "HX-Request", "true");
            } else {
                assertThat(response.statusCode()).isEqualTo(422);
                assertThat(response.body()).contains("was not found for these sizes; it needs ");
            }
        }
    }

    @Test
    void a_width_typed_is_the_width_cut_and_undo_takes_it_back() {
        String before = visit.page(cloth);
        String width = found("id=\"round-1\" name=\"width\" value=\"([^\"]+)\"", before);
        HttpResponse<String> response = change("what", "round", "round", "1", "width", "3 7/8");
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.body()).contains("id=\"round-1\" name=\"width\" value=\"3⅞\"", "Size ");
        visit.posted(cloth + "/undo", visit.token(), new String[0], "HX-Request", "true");
        assertThat(visit.page(cloth)).contains("id=\"round-1\" name=\"width\" value=\"" + width + "\"");
        visit.posted(cloth + "/redo", visit.token(), new String[0], "HX-Request", "true");
        assertThat(visit.page(cloth)).contains("id=\"round-1\" name=\"width\" value=\"3⅞\"");
        visit.posted(cloth + "/undo", visit.token(), new String[0], "HX-Request", "true");
    }

    @Test
    void what_cannot_be_is_refused_in_words_and_nothing_changes() {
        String version = version();
        for (String width : new String[] {"kelp", "", "0", "-3", "1/4", "9999 m", "<b>"}) {
            HttpResponse<String> response = change("what", "round", "round", "1", "width", width);
            assertThat(response.statusCode()).as(width).isEqualTo(422);
            assertThat(response.body()).contains("note trouble").doesNotContain("Exception", "<b>");
        }
        assertThat(change("what", "order", "order", "spiral").statusCode()).isEqualTo(422);
        assertThat(change("what", "nonsense").statusCode()).isEqualTo(422);
        assertThat(version()).isEqualTo(version);
    }

    @Test
    void a_second_window_that_is_out_of_date_keeps_its_change_beside_and_overwrites_nothing() {
        String old = version();
        change("what", "rounds", "rounds", "1");
        HttpResponse<String> response = visit.posted(
                cloth + "/change",
                visit.token(),
                new String[] {"version", old, "what", "rounds", "rounds", "3"},
                "HX-Request",
                "true");
        assertThat(response.headers().firstValue("HX-Redirect").orElse(""))
                .startsWith("/cloths/compare?c=")
                .contains("another+window");
        assertThat(visit.page(cloth)).contains("name=\"rounds\" type=\"number\" min=\"1\" max=\"30\" value=\"1\"");
        visit.posted(cloth + "/undo", visit.token(), new String[0], "HX-Request", "true");
    }

    @Test
    void a_hearth_no_piece_holds_is_told_with_what_is_short() {
        HttpResponse<String> response = change("what", "hearth", "width", "70", "height", "70");
        assertThat(response.body()).contains("You don't have enough fabric for this.");
        HttpResponse<String> back = visit.posted(cloth + "/undo", visit.token(), new String[0], "HX-Request", "true");
        assertThat(back.body()).doesNotContain("does not suffice");
    }

    @Test
    void a_fabric_chosen_for_a_bar_is_the_fabric_it_is_cut_from() {
        HttpResponse<String> response = change("at", "1A", "what", "fabric", "fabric", "Kelp linen");
        assertThat(response.body()).contains("Bar 1A, Kelp linen");
        visit.posted(cloth + "/undo", visit.token(), new String[0], "HX-Request", "true");
    }
}
