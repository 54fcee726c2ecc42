package hearthcloth.web.tie;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page of a cloth tied and the pages of the ties, over plain HTTP: everything works without a script. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TiedPageTest {

    @TempDir
    static Path folder;

    private Visit visit;
    private String tied;

    @BeforeAll
    void open() {
        tied = BegunWork.example(folder).replace("/cloth/", "/tied/");
        visit = new Visit(folder);
    }

    @AfterAll
    void close() {
        visit.close();
    }

    @Test
    void the_cloth_leads_to_its_gift_tied_and_on_to_the_tie() {
        String bench = tied.replace("/tied/", "/cloth/");
        assertThat(visit.page(bench)).contains("href=\"" + bench + "?look=tied", "</span>Tied</a>");
        assertThat(visit.page(bench + "?look=tied")).contains("href=\"" + tied + "?gift=box");
        String page = visit.page(tied);
        assertThat(page)
                .contains(
                        "From above", "From the front", "From a corner", "What shows", "Where the cloth of each fabric")
                .contains("a box 12 × 9 × 4 in with the four-corner tie", "How the four-corner tie is tied");
        Matcher link = Pattern.compile("href=\"(/tie/[^\"]+)\"").matcher(page);
        assertThat(link.find()).isTrue();
        assertThat(visit.page(link.group(1).replace("&amp;", "&")))
                .contains("drawn with your cloth", "a reef, not a granny", "When a corner will not reach", "Take care");
    }

    private String shown(String query) {
        String page = visit.page(tied + query);
        return page.substring(page.indexOf("id=\"tied\""));
    }

    @Test
    void face_turn_and_shift_change_what_shows() {
        String asked = "?gift=box+8+x+6+x+3+in&tie=four-corner+tie";
        String still = shown(asked);
        assertThat(shown(asked + "&out=back")).isNotEqualTo(still);
        assertThat(shown(asked + "&turn=1")).isNotEqualTo(still);
        assertThat(shown(asked + "&right=1+1/2&away=-1")).isNotEqualTo(still);
        assertThat(shown(asked + "&right=0")).contains("From a corner");
    }

    @Test
    void on_the_bench_gift_tie_face_and_quarters_are_small_pictures_and_each_shows_at_once() {
        String bench = tied.replace("/tied/", "/cloth/");
        String page = visit.page(bench + "?look=tied");
        assertThat(page)
                .contains("id=\"round-box\"", "id=\"tie-errand-wrap\"", "id=\"out-back\"", "id=\"quarter-3\"")
                .contains("data-model=\"" + tied + "/model?gift=box", "/large.svg?gift=box");
        String errand = link("tie-errand-wrap", page);
        String shown = visit.page(errand);
        assertThat(shown).contains("with the errand wrap", "/model?gift=box+12+x+9+x+4+in&amp;tie=errand+wrap");
        String back = visit.page(link("out-back", shown));
        assertThat(back).contains("tie=errand+wrap&amp;out=back");
        assertThat(visit.page(link("quarter-1", back))).contains("out=back&amp;turn=1");
        assertThat(visit.page(link("round-bottle", back))).contains("one-bottle wrap");
        assertThat(visit.page(link("grey", shown))).contains("five-steps", "In its colours", "tie=errand+wrap");
        assertThat(visit.page(bench + "?look=tied&gift=%3Cb%3Ewombat"))
                .contains("wombat")
                .doesNotContain("<b>wombat");
        assertThat(visit.page(bench + "?look=tied&gift=box+30+x+20+x+12+in"))
                .contains("too small")
                .doesNotContain("data-model");
        for (String picture : new String[] {"large", "small"}) {
            HttpResponse<String> svg = visit.see(tied + "/" + picture + ".svg?out=back&turn=2");
            assertThat(svg.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
            assertThat(svg.body()).startsWith("<svg xmlns=").contains("<path");
        }
        assertThat(visit.see(tied + "/large.svg?gift=box+30+x+20+x+12+in").statusCode())
                .isEqualTo(404);
    }

    private static String link(String id, String page) {
        Matcher link =
                Pattern.compile("id=\"" + id + "\"[^>]* href=\"([^\"]+)\"").matcher(page);
        assertThat(link.find()).as(id).isTrue();
        return link.group(1).replace("&amp;", "&");
    }

    /** Without a script each side is a link to the page with that side large. */
    @Test
    void each_side_is_a_picture_that_shows_it_large() {
        String page = visit.page(tied);
        for (String side : new String[] {"from-front", "from-above", "from-corner"}) {
            String large = visit.page(link(side, page));
            Matcher picture = Pattern.compile("class=\"tied-large\"[^>]* src=\"([^\"]+)\"")
                    .matcher(large);
            assertThat(picture.find()).as(side).isTrue();
            assertThat(picture.group(1)).contains("/still.svg");
            assertThat(visit.see(picture.group(1).replace("&amp;", "&")).body()).startsWith("<svg");
        }
    }

    @Test
    void a_tie_that_does_not_suit_gives_way_to_one_that_does() {
        assertThat(shown("?gift=bottle+3+x+9+in&tie=four-corner+tie")).contains("one-bottle wrap");
    }

    @Test
    void a_cloth_too_small_is_told_with_the_size_that_would_do() {
        String page = shown("?gift=box+30+x+20+x+12+in");
        assertThat(page).contains("is large enough").doesNotContain("tied-large", "data-model");
    }

    @Test
    void what_cannot_be_read_is_told_in_words_and_escaped() {
        for (String query : new String[] {
            "?gift=%3Cb%3Ewombat",
            "?gift=box+3+x+2",
            "?gift=box+8+x+6+x+3+in&right=wide",
            "?gift=box+8+x+6+x+3+in&away=9+km"
        }) {
            String page = shown(query);
            assertThat(page).contains("note trouble").doesNotContain("<b>", "Exception");
        }
        assertThat(shown("?gift=")).contains("Say what it is to be tied round");
        assertThat(visit.see("/tied/none").statusCode()).isEqualTo(404);
        assertThat(visit.see("/tie/granny").statusCode()).isEqualTo(404);
        assertThat(visit.see("/tie/roll-wrap?gift=box+8+x+6+x+3+in").statusCode())
                .isEqualTo(422);
    }

    @Test
    void the_part_comes_with_the_ties_for_the_new_gift() {
        HttpResponse<String> part = visit.see(tied + "?gift=roll+2+x+9+in", "HX-Request", "true", "HX-Target", "tied");
        assertThat(part.body())
                .contains("id=\"tie-roll-wrap\"", "id=\"tie-two-knot-wrap\"")
                .doesNotContain("<html");
    }

    @Test
    void the_model_is_what_the_page_names() throws IOException {
        Matcher model = Pattern.compile("data-model=\"([^\"]+)\"").matcher(visit.page(tied));
        assertThat(model.find()).isTrue();
        HttpResponse<String> response = visit.see(model.group(1).replace("&amp;", "&"));
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith("application/json");
        JsonNode read = new JsonMapper().readTree(response.body());
        assertThat(read.get("places").asText()).isNotEmpty();
        assertThat(read.get("outer").asText()).contains("<pattern");
        assertThat(read.get("strands")).hasSize(4);
        Matcher net = Pattern.compile("href=\"([^\"]+net.pdf[^\"]*)\"").matcher(visit.page(tied));
        assertThat(net.find()).isTrue();
        assertThat(visit.see(net.group(1).replace("&amp;", "&")).body()).startsWith("%PDF-");
        assertThat(visit.see(tied + "/model?gift=box+30+x+20+x+12+in").statusCode())
                .isEqualTo(404);
    }

    @ParameterizedTest
    @EnumSource(hearthcloth.wrap.Tie.class)
    void every_tie_has_a_page_with_steps_in_pictures(hearthcloth.wrap.Tie tie) {
        String page = visit.page("/tie/" + TiedView.word(tie));
        assertThat(page).contains("drawn with a plain cloth", "Take care", "Sizes that are sold", "chuhaba");
        assertThat(page.split("class=\"moment drawn\"", -1)).hasSizeGreaterThanOrEqualTo(4);
        assertThat(page.contains("reef, not a granny")).isEqualTo(tie.isKnotted());
        assertThat(page.contains("The uncertain part is the knot")).isEqualTo(tie.isKnotted());
    }

    @Test
    void the_gift_page_leads_to_each_tie() {
        assertThat(visit.page("/gift?kind=box&a=12&b=9&c=4"))
                .contains("/tie/four-corner-tie?gift=box+12+x+9+x+4", "tie=flat+wrap");
        assertThat(visit.page("/gift?kind=box&a=12&b=9&c=4&tie=flat+wrap")).contains("/tie/flat-wrap?gift=");
        assertThat(visit.page("/tie/flat-wrap?gift=box%2012%20x%209%20x%204")).contains("12 × 9 × 4 in");
    }

    @Test
    void a_fabric_can_be_wished_to_the_outside() {
        assertThat(visit.page("/cloth")).contains("Shows when tied Kelp linen");
        visit.post("/wishes", "what", "show", "value", "Kelp linen");
        assertThat(visit.page("/cloth")).contains("Take back: shows: Kelp linen");
        String found;
        do {
            found = visit.page("/proposals");
        } while (!found.contains("Take this one") || found.contains("class=\"progress\""));
        assertThat(found)
                .containsPattern("Kelp linen( shows however you tie it)?: \\d+ %( to \\d+ %)? of what shows once tied");
        visit.post("/wishes", "do", "less", "what", "show", "value", "Kelp linen");
    }

    @Test
    void a_cloth_for_no_gift_is_shown_tied_all_the_same(@TempDir Path own) {
        try (Visit visit = new Visit(own)) {
            visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            visit.post("/stash/line", "line", "4 navy linen 12 x 18 in\n4 oat cotton 6 x 30 in");
            Matcher name = Pattern.compile("name=\"name\" value=\"(\\w+)\"").matcher(visit.proposals(""));
            assertThat(name.find()).isTrue();
            String cloth = Visit.onward(visit.post("/proposals/open", "name", name.group(1)))
                    .replaceFirst("[?].*", "");
            assertThat(visit.page(cloth + "?look=tied"))
                    .contains("You have not said what it wraps. Here it is round a box")
                    .doesNotContain("Say what it is to be tied round");
            assertThat(visit.page(cloth.replace("/cloth/", "/cloths/") + "/small/tied.svg"))
                    .contains("<path fill=\"#");
            assertThat(visit.page(cloth + "?look=tied&gift=")).contains("Say what it is to be tied round");
        }
    }
}
