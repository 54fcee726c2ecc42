package hearthcloth.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sewing over plain HTTP: one step at a time, each done once, remembered, and taken back when it was unpicked. */
class SewPageTest {

    @TempDir
    Path folder;

    private Visit visit;
    private String sew = "";

    @BeforeEach
    void open() {
        sew = BegunWork.exampleTaken(folder).replace("/cloth/", "/sew/");
        visit = new Visit(folder);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    private String cut() {
        return sew.replace("/sew/", "/cut/");
    }

    private void allCut() {
        visit.post(cut() + "/done");
    }

    /** Makes every cut that is asked for. */
    private void ticked() {
        for (int i = 0; i < 40 && visit.page(sew).contains("To look at only"); i++) {
            visit.post(cut() + "/next", "of", asked(), "number", "all");
        }
        assertThat(visit.page(cut())).contains("This cloth is cut.");
    }

    /** The piece whose cuts are asked for now. */
    private String asked() {
        return CutPageTest.all("name=\"of\" value=\"([^\"]+)\"", visit.page(cut()))
                .get(0);
    }

    private boolean isInStash(String piece) {
        return visit.page("/stash/piece/" + piece).contains("name=\"seen\"");
    }

    private int steps() {
        return Integer.parseInt(
                CutPageTest.all("Step \\d+ of (\\d+)", visit.page(sew)).get(0));
    }

    private int at() {
        return Integer.parseInt(
                CutPageTest.all("Step (\\d+) of", visit.page(sew)).get(0));
    }

    @Test
    void every_step_has_its_picture_and_the_seams_a_number_to_check() {
        int checked = 0;
        for (int i = 0; i < steps(); i++) {
            String page = visit.page(sew + "?step=" + i);
            assertThat(page).contains("<svg", "class=\"todo\"", "Step " + (i + 1) + " of");
            checked += page.contains("It should now measure") ? 1 : 0;
        }
        assertThat(checked).isGreaterThan(steps() / 2);
        assertThat(visit.page(sew)).contains("Lay everything out");
    }

    @Test
    void a_step_is_told_in_her_own_language_and_says_so() {
        allCut();
        assertThat(visit.page(sew)).contains("<h2 lang=\"en\">");
        visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter", "language", "ko");
        String page = visit.page(sew + "?step=1");
        assertThat(page).contains("<h2 lang=\"ko\">", "<ol class=\"todo\" lang=\"ko\">");
        assertThat(page.replaceAll("(?s).*<ol class=\"todo\" lang=\"ko\">(.*?)</ol>.*", "$1"))
                .containsPattern("[\uac00-\ud7a3]{2}");
    }

    @Test
    void nothing_is_sewn_before_all_is_cut() {
        assertThat(visit.page(sew)).contains("To look at only").doesNotContain("id=\"done\"");
        assertThat(visit.post(sew + "/done", "step", "0").statusCode()).isEqualTo(409);
        assertThat(at()).isEqualTo(1);
    }

    @Test
    void a_step_pressed_twice_is_done_once_and_is_remembered() {
        allCut();
        visit.post(sew + "/done", "step", "0");
        visit.post(sew + "/done", "step", "0");
        assertThat(at()).isEqualTo(2);
        assertThat(visit.page(sew + "?step=0")).contains("Step 1 of", ", done", "I need to redo this step");
        assertThat(visit.post(sew + "/done", "step", "x").statusCode()).isEqualTo(422);
        assertThat(visit.post(sew + "/done", "step", "400").statusCode()).isEqualTo(303);
        assertThat(at()).isEqualTo(2);
    }

    @Test
    void the_last_step_makes_it_a_sewn_cloth_and_unpicking_opens_it_again() {
        allCut();
        int steps = steps();
        for (int i = 0; i < steps; i++) {
            visit.post(sew + "/done", "step", String.valueOf(i));
        }
        assertThat(visit.page(sew)).contains("Sewn.");
        assertThat(visit.page("/cloths")).contains("· sewn");
        visit.post(sew + "/again", "step", "3");
        assertThat(at()).isEqualTo(4);
        assertThat(visit.page("/cloths")).contains("· cut</p>");
    }

    /** Sews up to the first bar that is sewn on and stays there; its step number and what it should measure. */
    private String[] firstSeam() {
        allCut();
        for (int i = 0; i < steps(); i++) {
            String page = visit.page(sew + "?step=" + i);
            if (page.contains("data-kind=\"seam\"")) {
                return new String[] {
                    String.valueOf(i),
                    CutPageTest.all("measure</span> <strong>([^<]+)<", page).get(0)
                };
            }
            visit.post(sew + "/done", "step", String.valueOf(i));
        }
        throw new AssertionError("no seam");
    }

    @Test
    void a_measure_as_planned_only_moves_on() {
        String[] seam = firstSeam();
        String width = seam[1].replaceFirst(" ×.*", "");
        var response = visit.post(sew + "/measure", "step", seam[0], "width", width);
        assertThat(response.statusCode()).isEqualTo(303);
        assertThat(at()).isEqualTo(Integer.parseInt(seam[0]) + 2);
    }

    @Test
    void another_measure_shows_the_ways_on_and_the_choice_is_planned_again() {
        String[] seam = firstSeam();
        String[] sides = seam[1].replace(" in", "").split(" × ", -1);
        String narrower = sides[0] + " in - 1/8";
        var refused = visit.post(sew + "/measure", "step", seam[0], "width", narrower);
        assertThat(refused.statusCode()).isEqualTo(422);
        String real = less(sides[0]);
        // What is planned next has nothing to do with this cloth, which is still for its box.
        visit.post("/gift");
        String page =
                visit.post(sew + "/measure", "step", seam[0], "width", real).body();
        assertThat(page)
                .contains(
                        "⅛ in narrower than planned",
                        "Sew on as it is",
                        "The cloth comes out",
                        "a box 12 × 9 × 4 in with the four-corner tie");
        var chosen = visit.post(sew + "/choose", "step", seam[0], "width", real, "height", sides[1], "way", "accept");
        assertThat(chosen.statusCode()).isEqualTo(303);
        assertThat(Visit.onward(chosen)).endsWith(sew);
        assertThat(at()).isEqualTo(Integer.parseInt(seam[0]) + 2);
        assertThat(visit.page(sew + "?step=" + seam[0])).contains(">" + real);
        assertThat(visit.post(sew + "/choose", "step", seam[0], "width", real, "way", "sideways")
                        .statusCode())
                .isEqualTo(422);
        String both = visit.post(sew + "/measure", "step", seam[0], "width", less(real) + " and " + less(less(real)))
                .body();
        assertThat(both)
                .containsPattern("[⅛¼] in narrower than planned")
                .contains("name=\"width\" value=\"" + less(real) + "; " + less(less(real)) + "\"")
                .contains("name=\"height\" value=\"\"");
        String crooked = real + " and " + less(less(less(real)));
        assertThat(visit.post(sew + "/measure", "step", seam[0], "width", crooked)
                        .body())
                .contains(
                        "<h3>Square it first</h3>",
                        "One end is ⅜ in longer than the other: square it first, and trim it to",
                        "<title>Square it first",
                        "name=\"width\" value=\"" + crooked + "\"")
                .doesNotContain("That did not work");
        assertThat(visit.post(sew + "/measure", "step", seam[0], "width", real, "height", "1 ell")
                        .body())
                .contains("<h3>Look once more</h3>", "name=\"height\" value=\"1 ell\"");
        assertThat(visit.post(sew + "/measure", "step", seam[0], "width", "1 and 2 and 3")
                        .body())
                .contains("more than two measures");
        assertThat(visit.post(sew + "/measure", "step", seam[0], "width", "3").body())
                .contains("far from", "<h3>Is that right?</h3>", "name=\"width\" value=\"3\"");
        String tenth = "1." + real.replaceFirst("^1(\\d).*", "$1");
        String asked =
                visit.post(sew + "/measure", "step", seam[0], "width", tenth).body();
        assertThat(asked).contains("<h3>Is it ", "Yes, that is it");
        assertThat(CutPageTest.all("type=\"hidden\" name=\"width\" value=\"(1\\d)", asked))
                .hasSize(1);
        assertThat(visit.post(sew + "/measure", "step", "0", "width", "3").body())
                .contains("after a bar is sewn on");
    }

    @Test
    void a_bar_that_is_too_short_has_ways_on_each_drawn_and_the_one_taken_is_booked_and_undone_as_one() {
        String[] seam = firstSeam();
        String stash = visit.page("/stash").replaceFirst("(?s)Undo.*", "");
        String page = visit.post(sew + "/measure", "step", seam[0], "bar", "9").body();
        assertThat(page).contains("Bar 1A measures 9 in, planned was");
        List<String> ways = CutPageTest.all("name=\"way\" value=\"([A-Z_]+)\"", page);
        assertThat(ways).hasSizeGreaterThan(1).containsAnyOf("JOINED_STRIP", "ANEW", "PIECED");
        assertThat(CutPageTest.all("(aria-label=\"The cloth then)", page)).hasSameSizeAs(ways);
        var chosen = visit.post(sew + "/choose", "step", seam[0], "bar", "9", "way", ways.get(0));
        assertThat(Visit.onward(chosen)).contains("/cut/");
        assertThat(visit.page(sew)).containsAnyOf("Bar 1A", "Join ").contains("To look at only");
        String cloth = sew.replace("/sew/", "/cloth/");
        assertThat(visit.page(cloth)).contains("bar 1A too short: ");
        assertThat(visit.post(sew + "/done", "step", seam[0]).statusCode()).isEqualTo(409);
        String asked = asked();
        assertThat(isInStash(asked)).as("until its cuts are made").isTrue();
        assertThat(visit.page("/stash/piece/" + asked)).contains("class=\"held\">");
        ticked();
        assertThat(visit.see("/stash/piece/" + asked).statusCode()).isNotEqualTo(200);
        assertThat(visit.page(sew)).doesNotContain("To look at only").contains("id=\"done\"");
        assertThat(visit.post(cut() + "/done").statusCode()).isEqualTo(409);
        visit.post(cloth + "/undo");
        assertThat(visit.page(sew)).contains("To look at only");
        while (!visit.page(cloth).contains("title=\"Undo bar 1A too short: ")) {
            visit.post(cloth + "/undo");
        }
        visit.post(cloth + "/undo");
        assertThat(visit.page("/stash").replaceFirst("(?s)Undo.*", "")).isEqualTo(stash);
        assertThat(visit.post(sew + "/measure", "step", seam[0], "bar", "90").body())
                .contains("Bar 1A is long enough");
    }

    @Test
    void a_mistake_in_a_cut_asked_for_while_sewing_is_planned_again_and_what_is_sewn_stays() {
        String[] seam = firstSeam();
        visit.post(sew + "/choose", "step", seam[0], "bar", "9", "way", "ANEW");
        String page = visit.page(cut());
        assertThat(page).contains("I cut it wrong").doesNotContain("The patch came out too small");
        String wrong = CutPageTest.all("name=\"id\" value=\"([^\"]+)\"", page).get(0);
        assertThat(visit.post(cut() + "/wrong", "id", wrong, "width", "900", "length", "900")
                        .body())
                .contains("<h3>Look once more</h3>", "name=\"width\" value=\"900\"");
        var answer = visit.post(cut() + "/wrong", "id", wrong, "width", "", "length", "");
        assertThat(Visit.onward(answer)).contains("/cut/");
        assertThat(visit.see("/stash/piece/" + wrong).statusCode()).isNotEqualTo(200);
        ticked();
        assertThat(at()).isEqualTo(Integer.parseInt(seam[0]) + 1);
        assertThat(visit.page(sew)).contains("Bar 1A");
    }

    @Test
    void a_bar_sewn_to_the_wrong_side_of_the_work_is_left_there_or_unpicked() {
        String[] seam = firstSeam();
        visit.post(sew + "/done", "step", seam[0]);
        String page =
                visit.post(sew + "/side", "step", seam[0], "wrong", "edge").body();
        assertThat(page).contains("Bar 1A is on the wrong side of the work", "Leave it as it is", "Unpick");
        String before = visit.page(sew.replace("/sew/", "/cloth/"));
        visit.post(sew + "/side/live", "step", seam[0], "wrong", "edge");
        assertThat(visit.page(sew.replace("/sew/", "/cloth/")))
                .isNotEqualTo(before)
                .contains("bar 1A left on the other side of the work");
        visit.post(sew + "/again", "step", seam[0]);
        assertThat(visit.page(sew.replace("/sew/", "/cloth/"))).contains("unpicked: ");
        assertThat(at()).isEqualTo(Integer.parseInt(seam[0]) + 1);
    }

    @Test
    void a_bar_sewn_the_other_side_up_is_lived_with_or_unpicked() {
        allCut();
        int step = -1;
        for (int i = 0; i < steps(); i++) {
            visit.post(sew + "/done", "step", String.valueOf(i));
            var side = visit.post(sew + "/side", "step", String.valueOf(i));
            if (side.statusCode() == 200) {
                step = i;
                assertThat(side.body()).contains("is wrong side up", "one step is undone");
                break;
            }
        }
        assertThat(step).as("a fabric of the example has a right side").isPositive();
        String before = visit.page(sew.replace("/sew/", "/cloth/"));
        assertThat(visit.post(sew + "/side/live", "step", String.valueOf(step)).statusCode())
                .isEqualTo(303);
        assertThat(visit.page(sew.replace("/sew/", "/cloth/"))).isNotEqualTo(before);
        visit.post(sew + "/again", "step", String.valueOf(step));
        assertThat(at()).isEqualTo(step + 1);
        assertThat(visit.post(sew + "/side", "step", "400").statusCode()).isEqualTo(422);
    }

    /** An eighth less, as the page writes it. */
    private static String less(String written) {
        var length = hearthcloth.measure.Measures.length(written, hearthcloth.measure.Unit.INCH)
                .minus(hearthcloth.measure.Length.inches(1, 8));
        return hearthcloth.measure.Ruler.EIGHTHS.number(length, hearthcloth.measure.Rounding.NEAREST);
    }
}
