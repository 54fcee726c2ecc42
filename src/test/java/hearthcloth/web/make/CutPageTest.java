package hearthcloth.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cutting over plain HTTP: ticks stay, a slip is mended, what is cut leaves the stash. */
public class CutPageTest {

    @TempDir
    Path folder;

    private Visit visit;
    private String cut = "";

    @BeforeEach
    void open() {
        cut = BegunWork.exampleTaken(folder).replace("/cloth/", "/cut/");
        visit = new Visit(folder);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    /** Takes the first proposal as soon as there is one; the path of its page. */
    public static String taken(Visit visit) {
        String found = visit.firstProposals();
        return Visit.onward(visit.post(
                        "/proposals/open",
                        "name",
                        all("name=\"name\" value=\"(\\w+)\"", found).get(0)))
                .replaceFirst("^https?://[^/]+", "");
    }

    public static List<String> all(String pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private int pieces() {
        return Integer.parseInt(all("Piece \\d+ of (\\d+);", visit.page(cut)).get(0));
    }

    /** A piece that gives whole bars only, and not without a cut. */
    private int withCuts() {
        for (int at = 0; at < pieces(); at++) {
            String page = piece(at);
            boolean parts = all("class=\"sr\">Gives ([^<]+)", page).stream().anyMatch(gives -> gives.contains("·"));
            if (page.contains("name=\"cut\"") && !parts) {
                return at;
            }
        }
        throw new AssertionError("every piece is used as it is, or for parts of bars");
    }

    private String piece(int at) {
        return visit.page(cut + "?piece=" + at);
    }

    private void tickAll(int at) {
        String page = piece(at);
        all("name=\"cut\" value=\"([^\"]+)\"", page)
                .forEach(key -> visit.post(cut + "/tick", "piece", String.valueOf(at), "cut", key));
    }

    @Test
    void each_piece_is_shown_as_it_lies_with_its_cuts_in_order() {
        String page = piece(0);
        assertThat(page).contains("<svg", "Piece 1 of ", "Back", "I cut it wrong", "Take care", "fingers well");
        List<String> numbers = all("<span class=\"sr\">(\\d+): ", page);
        for (int i = 0; i < numbers.size(); i++) {
            assertThat(numbers.get(i)).isEqualTo(String.valueOf(i + 1));
        }
        assertThat(visit.page("/cut")).contains("href=\"" + cut + "\"", "Example: ");
    }

    @Test
    void a_tick_stays_and_a_second_press_takes_it_off() {
        int at = withCuts();
        String key = all("name=\"cut\" value=\"([^\"]+)\"", piece(at)).get(0);
        visit.post(cut + "/tick", "piece", String.valueOf(at), "cut", key);
        assertThat(all("aria-pressed=\"(true)\"", piece(at))).hasSize(1);
        HttpResponse<String> part = visit.posted(
                cut + "/tick",
                visit.token(),
                new String[] {"piece", String.valueOf(at), "cut", key},
                "HX-Request",
                "true");
        assertThat(part.body()).contains("id=\"mat\"", "hx-swap-oob").doesNotContain("<html", "aria-pressed=\"true\"");
        assertThat(visit.post(cut + "/tick", "cut", "\"><script>").statusCode()).isEqualTo(422);
    }

    /** Every cut of the cloth with one press, or all of a piece at once: the page moves on by itself. */
    private int presses(boolean pieceByPiece) {
        int presses = 0;
        String page = visit.page(cut);
        while (!page.isEmpty()) {
            String of = all("name=\"of\" value=\"([^\"]+)\"", page).get(0);
            List<String> numbers = all("name=\"number\" value=\"(\\w+)\"", page);
            String number = pieceByPiece ? numbers.get(0) : numbers.get(numbers.size() - 1);
            HttpResponse<String> answer = visit.posted(
                    cut + "/next", visit.token(), new String[] {"of", of, "number", number}, "HX-Request", "true");
            page = answer.body();
            presses++;
            // The last one sends her on to the sewing, with nothing more to press.
            assertThat(page.isEmpty())
                    .isEqualTo(answer.headers()
                            .firstValue("HX-Redirect")
                            .orElse("")
                            .contains("/sew/"));
        }
        return presses;
    }

    @Test
    void cutting_takes_one_press_a_cut_or_one_a_piece_and_moves_on_by_itself() {
        int cuts = 0;
        int pieces = 0;
        for (int at = 0; at < pieces(); at++) {
            int of = all("name=\"cut\" value=\"([^\"]+)\"", piece(at)).size();
            cuts += of;
            pieces += of > 0 ? 1 : 0;
        }
        assertThat(presses(false)).isEqualTo(cuts);
        assertThat(Visit.onward(visit.post(cut + "/not-all"))).contains("/cut/");
        for (int at = 0; at < pieces(); at++) {
            String page = piece(at);
            String of = all("name=\"of\" value=\"([^\"]+)\"", page).get(0);
            all("aria-pressed=\"(true)\"", page).forEach(tick -> visit.post(cut + "/back", "of", of));
        }
        assertThat(presses(true)).isEqualTo(pieces).isLessThanOrEqualTo(cuts);
    }

    @Test
    void a_slip_plans_the_rest_again_and_keeps_what_is_cut() {
        int at0 = withCuts();
        tickAll(at0);
        String cutOf = all("name=\"id\" value=\"([^\"]+)\"", piece(at0)).get(0);
        int other = IntStream.range(0, pieces())
                .filter(at -> at != at0)
                .filter(at -> all("class=\"sr\">Gives ([^<]+)", piece(at)).stream()
                        .noneMatch(gives -> gives.contains("hearth")))
                .findFirst()
                .orElseThrow();
        String wrong = all("name=\"id\" value=\"([^\"]+)\"", piece(other)).get(0);
        assertThat(wrong).isNotEqualTo(cutOf);
        assertThat(visit.post(cut + "/wrong", "id", wrong, "width", "900", "length", "900")
                        .statusCode())
                .isEqualTo(422);
        assertThat(visit.post(cut + "/wrong", "id", "no such", "width", "", "length", "")
                        .statusCode())
                .isEqualTo(409);

        HttpResponse<String> answer = visit.post(cut + "/wrong", "id", wrong, "width", "", "length", "");

        String where = answer.headers().firstValue("Location").orElse("");
        assertThat(where).contains("Planned+again+from+what+is+left", "Every+patch+you+have+cut+is+used");
        List<String> ids = new ArrayList<>();
        for (int at = 0; at < pieces(); at++) {
            ids.addAll(all("name=\"id\" value=\"([^\"]+)\"", piece(at)));
        }
        assertThat(ids).doesNotContain(wrong, cutOf).isNotEmpty();
        assertThat(all("class=\"sr\">Gives ([^<]+)", piece(0)).get(0))
                .as("what was cut before is told still")
                .isNotBlank();
        assertThat(piece(0)).contains("This piece is cut.");
        visit.post(cut + "/done");
        assertThat(visit.page(cut.replace("/cut/", "/sew/"))).doesNotContain("To look at only");
    }

    @Test
    void a_patch_cut_short_leaves_the_stash_alone_and_keeps_the_ticks() {
        String stash = visit.page("/stash/stash.csv");
        int cutAt = withCuts();
        tickAll(cutAt);
        String cutOf = all("name=\"id\" value=\"([^\"]+)\"", piece(cutAt)).get(0);
        int other = IntStream.range(0, pieces())
                .filter(at -> at != cutAt && piece(at).contains("name=\"cut\""))
                .findFirst()
                .orElseThrow();
        String wrong = all("name=\"id\" value=\"([^\"]+)\"", piece(other)).get(0);

        String[] told = {"id", wrong, "short", "yes", "width", "3 in", "length", "3 in", "way", ""};
        String ways = visit.post(cut + "/wrong", told).body();
        assertThat(ways).contains("is too small by", "How will you go on?", "<svg");
        told[9] = all("name=\"way\" value=\"(\\w+)\"", ways).get(0);

        HttpResponse<String> answer = visit.post(cut + "/wrong", told);

        assertThat(answer.headers().firstValue("Location").orElse("")).contains("is+too+small+by");
        assertThat(visit.page("/stash/stash.csv")).isEqualTo(stash);
        List<String> ids = new ArrayList<>();
        int ticked = 0;
        for (int at = 0; at < pieces(); at++) {
            ids.addAll(all("name=\"id\" value=\"([^\"]+)\"", piece(at)));
            ticked += all("aria-pressed=\"(true)\"", piece(at)).size();
        }
        assertThat(ids).contains(wrong, cutOf);
        assertThat(ticked).isPositive();
    }

    @Test
    void all_cut_takes_the_pieces_out_of_the_stash_once_and_undo_brings_them_back() {
        assertThat(piece(0)).doesNotContain("All is cut");
        for (int at = 0; at < pieces(); at++) {
            tickAll(at);
        }
        assertThat(piece(0)).contains("All is cut");
        String before = visit.page("/stash/stash.csv");

        assertThat(visit.post(cut + "/done").headers().firstValue("Location").orElse(""))
                .contains("back+in+the+stash");

        assertThat(visit.page("/stash/stash.csv")).isNotEqualTo(before);
        assertThat(visit.post(cut + "/done").statusCode()).isEqualTo(409);
        assertThat(visit.page("/cloths")).contains("· cut</p>");
        String label = all("name=\"label\" value=\"(cut [^\"]+)\"", visit.page("/stash"))
                .get(0);
        visit.post("/stash/undo", "label", label);
        assertThat(visit.page("/stash/stash.csv")).isEqualTo(before);
        assertThat(visit.page("/cloths")).doesNotContain("· cut</p>");
        assertThat(piece(0)).contains("All is cut");

        visit.post(cut + "/done");
        visit.post(cut.replace("/cut/", "/cloth/") + "/undo");
        assertThat(visit.page("/stash/stash.csv")).isEqualTo(before);
        assertThat(visit.page("/cloths")).doesNotContain("· cut</p>");

        visit.post(cut + "/done");
        assertThat(visit.page(cut.replace("/cut/", "/sew/"))).contains("Back to the cutting");
        assertThat(Visit.onward(visit.post(cut + "/not-all"))).contains("/cut/");
        assertThat(visit.page("/stash/stash.csv")).isEqualTo(before);
        assertThat(Visit.onward(visit.post(cut + "/not-all"))).contains("/sew/");
        assertThat(visit.page("/stash/stash.csv")).isEqualTo(before);
    }

    @Test
    void a_piece_used_up_elsewhere_is_told_on_the_cloth_which_is_planned_again_before_it_is_cut() {
        String cloth = cut.replace("/cut/", "/cloth/");
        String used = all("name=\"id\" value=\"([^\"]+)\"", piece(0)).get(0);
        String stash = "/stash/piece/" + used;
        String page = visit.page(stash);
        assertThat(page).contains("class=\"held\">");
        assertThat(visit.page("/cloth")).contains(" counts on.", "Also what another cloth counts on");
        assertThat(visit.page(cloth)).doesNotContain("This cloth counts on");

        visit.post(
                stash + "/use",
                "seen",
                all("name=\"seen\" value=\"([^\"]+)\"", page).get(0),
                "many",
                "1",
                "back",
                "");

        assertThat(visit.page(cloth)).contains("This cloth counts on", "Plan it again from the stash");
        assertThat(Visit.onward(visit.see(cut))).contains(cloth);
        visit.post(cloth + "/replan");
        assertThat(visit.page(cloth)).doesNotContain("This cloth counts on");
    }

    @Test
    void a_cloth_that_is_not_there_is_told() {
        assertThat(visit.see("/cut/none").statusCode()).isEqualTo(404);
        assertThat(visit.post("/cut/none/done").statusCode()).isEqualTo(404);
        assertThat(piece(9_999)).contains("Piece " + pieces() + " of " + pieces());
    }
}
