package hearthcloth.web.kits;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import hearthcloth.web.make.CutPageTest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many cloths from one stash in the workroom, over plain HTTP. */
class KitsPageTest {

    @TempDir
    Path folder;

    /** Sixty pieces of six fabrics. */
    private static Visit stocked(Path folder) {
        Visit visit = new Visit(folder);
        visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
        List<String> lines = new ArrayList<>();
        for (String fabric :
                List.of("rust linen", "oat linen", "slate check", "moss print", "white lawn", "plum silk")) {
            lines.add("7 x 9 in, 2 of them, " + fabric);
            lines.add("4 x 20 in, 8 of them, " + fabric);
        }
        visit.post("/stash/line", "line", String.join("\n", lines));
        return visit;
    }

    private static String planned(Visit visit, String... fields) {
        visit.post("/kits", fields);
        String page = visit.page("/kits");
        while (page.contains("hx-get=\"/kits\"")) {
            page = visit.page("/kits");
        }
        return page;
    }

    @Test
    void a_class_of_three_is_planned_printed_and_kept_with_its_pieces_promised() throws Exception {
        try (Visit visit = stocked(folder)) {
            String page = planned(visit, "students", "3", "size", "14 in");
            assertThat(CutPageTest.all("<h3>(Student \\d)</h3>", page)).hasSize(3);
            List<String> pieces = CutPageTest.all("<option value=\"(\\d+)\">\\d+, ", page);
            assertThat(pieces).hasSizeGreaterThan(9).doesNotHaveDuplicates();
            byte[] pdf = visit.bytes("/kits/kits.pdf");
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(new PDFTextStripper().getText(document)).contains("Shopping list", "Student 3");
            }
            assertThat(visit.page("/kits/1/guide.pdf")).startsWith("%PDF");
            visit.post("/kits/keep");
            assertThat(visit.page("/cloths")).contains("Student 1", "Student 2", "Student 3");
            assertThat(visit.page("/kits"))
                    .contains((60 - new HashSet<>(pieces).size()) + " pieces of your stash are free");
        }
    }

    @Test
    void a_piece_moved_by_hand_is_in_the_other_cloth_and_in_no_other() {
        try (Visit visit = stocked(folder)) {
            String page = planned(visit, "lines", "Anna, 14 in\nBo, 14 in");
            List<String> cards = List.of(page.split("<h3>", -1));
            String piece = CutPageTest.all("<option value=\"(\\d+)\">\\d+, ", cards.get(1))
                    .get(0);
            HttpResponse<String> moved = visit.post("/kits/move", "piece", piece, "to", "1");
            String said = moved.headers().firstValue("Location").orElse("");
            List<String> after = List.of(visit.page("/kits").split("<h3>", -1));
            String option = "<option value=\"" + piece + "\"";
            assertThat(said).contains("settled");
            assertThat(after.get(1)).doesNotContain(option);
            assertThat(after.get(2)).contains(option);
            assertThat(CutPageTest.all("<option value=\"(\\d+)\">\\d+, ", String.join("", after)))
                    .doesNotHaveDuplicates();
        }
    }

    @Test
    void gifts_and_sizes_are_told_apart_and_a_fault_is_named_with_the_list_kept() {
        try (Visit visit = stocked(folder)) {
            String page = planned(visit, "lines", "Anna, 14 in\nNana, box 6 x 5 x 2 in");
            assertThat(page).contains("<h3>Anna</h3>", "<h3>Nana</h3>");
            HttpResponse<String> refused = visit.post("/kits", "lines", "Anna, 14 in\nBo, box six by\n<b>Cy</b>, wide");
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains("line 3", "line 4", "&lt;b&gt;Cy&lt;/b&gt;, wide");
            assertThat(visit.post("/kits", "students", "0", "size", "14 in").body())
                    .contains("from 1 to 99");
        }
    }

    @Test
    void a_kit_goes_out_as_a_file_and_comes_in_with_its_pieces() throws Exception {
        Files.createDirectories(folder.resolve("other"));
        try (Visit visit = stocked(folder);
                Visit other = new Visit(folder.resolve("other"))) {
            planned(visit, "lines", "Anna, 14 in");
            String kit = visit.page("/kits/0/kit.json");
            HttpResponse<String> came = other.send("/hand-on", "file", kit.getBytes(StandardCharsets.UTF_8));
            String cloth = Visit.onward(came).replaceFirst("^https?://[^/]+", "");
            assertThat(cloth).startsWith("/cloth/");
            assertThat(other.page(cloth)).contains("Anna");
            assertThat(other.page("/cut/" + cloth.substring("/cloth/".length())))
                    .contains("Cut");
            for (String bad : List.of(
                    "{\"format\":\"hearthcloth-kit\"}",
                    kit.replace("\"version\":1,\"name\"", "\"version\":9,\"name\""),
                    kit.substring(0, kit.length() / 2),
                    kit.replace("Anna", "A\\u0000"),
                    kit.replaceFirst("\\\\\"width\\\\\":\\d+", "\\\\\\\\\"width\\\\\\\\\":7"))) {
                assertThat(bad).isNotEqualTo(kit);
                HttpResponse<String> refused = other.send("/hand-on", "file", bad.getBytes(StandardCharsets.UTF_8));
                assertThat(refused.statusCode()).as(bad.substring(0, 28)).isEqualTo(422);
                assertThat(refused.body()).contains("kit");
            }
        }
    }
}
