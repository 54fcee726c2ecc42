package hearthcloth.web.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import hearthcloth.web.kit.Swatches;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The gallery as a browser without scripts sees it: names, wishes as chips, more on demand. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GalleryPageTest {

    @TempDir
    static Path folder;

    private Visit visit;

    @BeforeAll
    void open() {
        visit = new Visit(folder);
        visit.post("/example");
    }

    @AfterAll
    void close() {
        visit.close();
    }

    /** What stands in the gallery once the search is over. */
    private String found() {
        return visit.proposals("?more=2");
    }

    private static List<String> all(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        return matcher.results().map(one -> one.group(1)).collect(Collectors.toList());
    }

    private void wish(String what, String value) {
        visit.post("/wishes", "what", what, "value", value);
    }

    private void takeBack(String what, String value) {
        visit.post("/wishes", "do", "less", "what", what, "value", value);
    }

    @Test
    void four_stand_there_each_flat_and_tied_and_more_on_demand_under_names_that_differ() {
        String all = found();

        assertThat(all("<h2>(.*?)</h2>", all)).hasSizeGreaterThan(4).doesNotHaveDuplicates();
        String page = visit.page("/cloth");
        assertThat(all("class=\"(proposal)", page)).hasSize(4);
        assertThat(all("class=\"(tied)\"", page)).hasSize(4);
        assertThat(page).contains("href=\"/cloth?more=1\"", ">hearth</text>");
    }

    @Test
    void three_stand_where_there_is_nothing_to_cut_or_to_sew_yet() {
        found();
        String few = visit.page("/proposals/three");
        assertThat(all("class=\"(proposal)", few)).hasSize(3);
        assertThat(few).contains("action=\"/proposals/open\"");
    }

    /** A picture half of one of her colours, half of a colour she has not. */
    @Test
    void a_picture_she_loves_shows_its_colours_beside_her_nearest_fabrics_and_only_these_are_planned_with()
            throws IOException {
        BufferedImage picture = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        graphics.setColor(new Color(0xd9c7a0));
        graphics.fillRect(0, 0, 60, 40);
        graphics.setColor(new Color(0xff00ff));
        graphics.fillRect(0, 0, 20, 40);
        graphics.dispose();
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", png);

        visit.send("/wishes/picture", "picture", png.toByteArray());

        String page = visit.page("/cloth");
        assertThat(page).contains("class=\"loved\"", "nothing near it", "<i>only:</i>");
        takeBack("only", "");
        assertThat(visit.page("/cloth")).doesNotContain("class=\"loved\"", "<i>only:</i>");
        assertThat(visit.send("/wishes/picture", "picture", "no picture".getBytes(StandardCharsets.UTF_8))
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void a_kept_cloth_bears_the_name_it_was_taken_under_and_the_next_is_called_otherwise() {
        String shown = found();
        String title = all("<h2>(.*?)</h2>", shown).get(0);

        visit.post(
                "/proposals/open",
                "name",
                all("name=\"name\" value=\"(\\w+)\"", shown).get(0));

        assertThat(visit.page("/cloths")).contains(title);
        assertThat(all("<h2>(.*?)</h2>", visit.page("/proposals"))).doesNotContain(title);
    }

    @Test
    void what_is_left_out_is_in_no_proposal_and_what_is_wished_for_the_hearth_is_named() {
        wish("without", "Madder check");
        wish("hearth", "Lantern print");

        String page = visit.page("/cloth");
        assertThat(page).contains("Take back: without: Madder check", "Take back: hearth: Lantern print");
        assertThat(found()).contains("Take this one").doesNotContain(Swatches.id("Madder check"));

        takeBack("without", "Madder check");
        takeBack("hearth", "");
        assertThat(visit.page("/cloth")).doesNotContain("Take back");
    }

    @Test
    void wishes_for_an_earlier_gift_wait_until_she_says_whether_they_hold() {
        wish("bars", "wide");
        visit.post("/gift", "gift", "bottle 3 x 12", "tie", "");

        assertThat(visit.page("/cloth"))
                .contains("Do they hold for this one too?")
                .doesNotContain("Take back: bars:");
        wish("before", "keep");
        assertThat(visit.page("/cloth")).contains("Take back: bars:").doesNotContain("Do they hold for this one too?");

        visit.post("/gift", "gift", "box 12 x 9 x 4", "tie", "");
        wish("before", "drop");
        assertThat(visit.page("/cloth")).doesNotContain("Take back");
    }

    @Test
    void a_plan_of_colour_that_is_liked_best_comes_before_the_others() {
        for (String kind : Stream.of("ROUNDS", "FIELD").toList()) {
            wish("scheme", kind);
            String page = found();
            assertThat(page).contains("Take this one");
            assertThat(page).doesNotContain("than the first");
            takeBack("scheme", "");
        }
    }

    /** Everything is counted on by the one cloth she keeps, and then her gift is another. */
    @Test
    void what_another_question_found_is_never_shown_under_a_new_one(@TempDir Path own) {
        try (Visit all = new Visit(own)) {
            all.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            all.post("/stash/line", "line", "4 navy linen 12 x 18 in\n4 oat cotton 6 x 30 in");
            String found = all.proposals("?more=2");
            String most = all("(?s)name=\"name\" value=\"(\\w+)\"", found).get(0);
            all.post("/proposals/open", "name", most);
            all.post("/gift", "gift", "box 12 x 9 x 4", "tie", "");
            boolean isAllTaken = !all.page("/cloth").contains("proposal sheet");

            String page = all.page("/cloth");
            assertThat(isAllTaken).isTrue();
            assertThat(page).contains("Every piece is spoken for", "8 pieces that", "Plan with them too");
            assertThat(all("<h2>(.*?)</h2>", all.page("/proposals"))).isEmpty();

            all.post("/wishes", "what", "also", "do", "more");
            assertThat(all.page("/cloth")).contains("Planned with too: 8 pieces that", "Leave them out");
            assertThat(all.proposals("")).contains("Take this one");
            all.post("/wishes", "what", "also", "do", "less");
            assertThat(all.page("/cloth")).contains("Every piece is spoken for");
        }
    }

    @Test
    void wishes_that_leave_no_piece_say_so(@TempDir Path own) {
        try (Visit one = new Visit(own)) {
            one.post("/stash/line", "line", "4 navy linen 30 x 45 cm");
            one.page("/cloth");
            one.post("/wishes", "what", "without", "value", "navy linen");
            assertThat(one.page("/cloth"))
                    .contains("Your wishes leave no piece to plan from")
                    .doesNotContain("proposal sheet");
        }
    }

    /** The first look is over before she asks; the long one begins when she does. */
    @Test
    void what_her_heap_can_make_for_the_gift_she_looks_at_is_there_when_she_asks(@TempDir Path own) {
        try (Visit one = new Visit(own)) {
            one.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            one.post("/example");
            one.page("/gift?kind=box&a=11&b=9&c=4");
            Visit.beside("planning", 0);
            assertThat(one.page("/proposals")).doesNotContain("Take this one");

            one.post("/gift", "gift", "box 11 x 9 x 4 in", "tie", "four-corner tie");
            String page = one.page("/cloth");

            assertThat(all("class=\"(proposal) sheet\"", page)).hasSize(4);
            assertThat(page).contains("for a box 11 × 9 × 4 in, four-corner tie");
            assertThat(one.proposals("?more=2")).contains("Take this one").doesNotContain("still looking");
        }
    }
}
