package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.make.CutPageTest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is set aside, and what a kept cloth counts on, is in no new plan of any page: gallery, idea of a teacher, kits, bench; and
 * where it is shared on purpose both cloths say so.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LeftOutTest {

    @TempDir
    static Path folder;

    private Visit visit;
    private String kept = "";
    private Set<String> promised = Set.of();
    private Set<String> aside = Set.of();

    @BeforeAll
    void open() {
        kept = BegunWork.exampleTaken(folder);
        visit = new Visit(folder);
        // The example's own cloth goes, so that there is fabric for more than one plan.
        CutPageTest.all("action=\"(/cloths/[\\w-]+/remove)\"", visit.page("/cloths")).stream()
                .filter(remove -> !remove.contains(kept.replace("/cloth/", "")))
                .forEach(remove -> visit.post(remove));
        promised = pieces(kept);
        aside = IntStream.rangeClosed(1, 60)
                .mapToObj(number -> "ex" + number)
                .filter(piece -> !promised.contains(piece))
                .limit(3)
                .collect(Collectors.toSet());
        aside.forEach(piece -> moved(piece, "aside"));
    }

    @AfterAll
    void close() {
        visit.close();
    }

    /** Sets a piece aside, or gives it back. */
    private void moved(String piece, String where) {
        String seen = CutPageTest.all("name=\"seen\" value=\"([^\"]+)\"", visit.page("/stash/piece/" + piece))
                .get(0);
        HttpResponse<String> done =
                visit.post("/stash/piece/" + piece + "/" + where, "seen", unescaped(seen), "many", "1");
        assertThat(done.statusCode()).isEqualTo(303);
    }

    private static String unescaped(String html) {
        return html.replace("&#39;", "'")
                .replace("&#34;", "\"")
                .replace("&lt;", "<")
                .replace("&amp;", "&");
    }

    /** The pieces a cloth counts on, as its plan file names them. */
    private Set<String> pieces(String cloth) {
        String plan = visit.page(cloth.replace("/cloth/", "/cloths/") + "/plan.json");
        Set<String> pieces = new HashSet<>(CutPageTest.all("\"from\" ?: ?\"(\\w+)\"", plan));
        assertThat(pieces).as(cloth).isNotEmpty();
        return pieces;
    }

    private void remove(String cloth) {
        visit.post(cloth.replace("/cloth/", "/cloths/") + "/remove");
    }

    private void leftOut(Set<String> used) {
        assertThat(used).doesNotContainAnyElementsOf(promised).doesNotContainAnyElementsOf(aside);
    }

    @Test
    void the_gallery_plans_without_them_and_says_so() {
        String gallery = visit.page("/cloth");
        assertThat(gallery).contains("Left out: ", "3 pieces you have set aside", promised.size() + " pieces that ");
        String cloth = CutPageTest.taken(visit);
        leftOut(pieces(cloth));
        remove(cloth);
    }

    @Test
    void an_idea_of_a_teacher_is_followed_without_them() {
        String id = kept.replace("/cloth/", "");
        String idea =
                visit.post("/hand-on/" + id + "/idea.json", "name", "Idea").body();
        String cloth = Visit.onward(visit.send("/hand-on", "file", idea.getBytes(StandardCharsets.UTF_8)))
                .replaceFirst("^https?://[^/]+", "");
        assertThat(cloth).startsWith("/cloth/");
        leftOut(pieces(cloth));
        remove(cloth);
    }

    @Test
    void kits_are_planned_without_them() {
        visit.post("/kits", "lines", "Anna, 12 in");
        String page = visit.page("/kits");
        while (page.contains("hx-get=\"/kits\"")) {
            page = visit.page("/kits");
        }
        Set<String> dealt = new HashSet<>(CutPageTest.all("<option value=\"(\\w+)\">\\w+, ", page));
        assertThat(dealt).isNotEmpty();
        leftOut(dealt);
    }

    @Test
    void a_cloth_whose_piece_is_set_aside_says_so_cannot_be_cut_and_is_planned_again_without_it() {
        String own = promised.stream().sorted().findFirst().orElseThrow();
        moved(own, "aside");

        assertThat(visit.page(kept)).contains("which you have set aside");
        assertThat(visit.page("/")).as("the table says so").contains("which you have set aside");
        assertThat(visit.see(kept.replace("/cloth/", "/cut/")).statusCode())
                .as("cutting does not open on a plan that cannot be cut")
                .isEqualTo(303);
        visit.post(kept + "/replan");
        String page = visit.page(kept);
        assertThat(page).doesNotContain("which you have set aside");
        if (!page.contains("You don't have enough fabric for this.")) {
            assertThat(pieces(kept)).doesNotContain(own).doesNotContainAnyElementsOf(aside);
        }
        visit.post(kept + "/undo");
        moved(own, "back");
        assertThat(visit.page(kept)).doesNotContain("which you have set aside");
    }

    @Test
    void a_copy_counts_on_the_same_pieces_and_both_say_so() {
        String copy = Visit.onward(visit.post(kept + "/copy")).replaceFirst("^https?://[^/]+", "");
        assertThat(visit.page(copy)).contains(" counts on ", " too. The cloth that is cut first gets them");
        assertThat(visit.page(kept)).contains(" counts on ", " too. The cloth that is cut first gets them");
        remove(copy);
        assertThat(visit.page(kept)).doesNotContain(" too. The cloth that is cut first gets them");
    }

    @Test
    void a_design_for_which_the_fabric_does_not_suffice_has_the_nearest_beside_it_ready_to_take() {
        String copy = Visit.onward(visit.post(kept + "/copy")).replaceFirst("^https?://[^/]+", "");
        visit.post(copy + "/change", "what", "hearth", "width", "70", "height", "70");
        assertThat(visit.page(copy))
                .contains("You don't have enough fabric for this.", "hx-get=\"" + copy + "/nearest\"");
        visit.post(copy + "/undo");
        visit.post(copy + "/change", "what", "rounds", "rounds", "16");
        String lacking = visit.page(copy);
        assertThat(lacking).contains("You don't have enough fabric for this.");
        String nearest = visit.page(copy + "/nearest");
        assertThat(nearest).contains("The nearest cloths you can make", "With fewer rounds", "Take this one");
        String version =
                CutPageTest.all("name=\"version\" value=\"(\\d+)\"", nearest).get(0);
        visit.post(copy + "/nearest", "version", version, "way", "ROUNDS");
        assertThat(visit.page(copy))
                .doesNotContain("You don't have enough fabric for this.")
                .contains("Cut this cloth");
        assertThat(pieces(copy)).doesNotContainAnyElementsOf(aside);
        assertThat(visit.post(copy + "/nearest", "version", version, "way", "ROUNDS")
                        .statusCode())
                .as("there is nothing to mend any more")
                .isEqualTo(303);
        remove(copy);
    }
}
