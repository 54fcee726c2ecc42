package hearthcloth.web.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import hearthcloth.web.StashVisit;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The routes that fill the stash and show it, and the parts that htmx asks for. */
class StashPageTest extends StashVisit {

    StashPageTest(@TempDir Path folder) throws Exception {
        super(folder);
    }

    @Test
    void an_empty_stash_teaches_and_offers_the_example() throws Exception {
        HttpResponse<String> page = get("/stash");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("Your table is empty", "action=\"/example\"", "What have you got?");
    }

    @Test
    void a_line_is_understood_while_typing_and_added_by_enter() throws Exception {
        HttpResponse<String> heard = get(
                "/stash/heard?line=" + URLEncoder.encode("12 green print 4 x 8, right side", StandardCharsets.UTF_8));
        assertThat(heard.body())
                .contains("12 ×", "4 × 8 in, green print", "has a right side", "<svg", "fill=\"#3f8f4f\"");

        HttpResponse<String> added = post("/stash/line", "line", "12 green print 4 x 8, right side");
        assertThat(added.statusCode()).isEqualTo(303);
        assertThat(pieces()).hasSize(12).allSatisfy(piece -> {
            assertThat(piece.size()).isEqualTo(inches(4, 8));
            assertThat(piece.fabric().name()).isEqualTo("green print");
        });
        assertThat(get("/stash").body()).contains("12 pieces, 384 sq in", "1–12", "×12", "add 12 of green print");
    }

    @Test
    void a_line_that_is_unclear_stays_in_the_box() throws Exception {
        HttpResponse<String> answer = post("/stash/line", "line", "12 green <print>");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(">12 green &lt;print", "How large is it?");
        assertThat(pieces()).isEmpty();
    }

    @Test
    void of_many_lines_the_clear_ones_are_added_and_the_others_stay() throws Exception {
        HttpResponse<String> answer =
                post("/stash/line", "line", "3 oat 4 x 8\n\nblue something\r\n2 moss 6 in square\n5 in of nothing");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(pieces()).hasSize(5);
        assertThat(first("(?s)<textarea[^>]*>(.*?)</textarea>", answer.body()).strip())
                .isEqualTo("blue something\n5 in of nothing");
        assertThat(answer.body()).contains("“blue something”: how large is it?", "Added 5 pieces");
    }

    @Test
    void no_count_makes_the_stash_larger_than_it_may_be() throws Exception {
        HttpResponse<String> answer = post("/stash/line", "line", "20000 oat 4 x 8\n".repeat(50));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("would pass 20000 pieces");
        assertThat(pieces()).isEmpty();
    }

    @Test
    void a_form_with_fields_does_the_same() throws Exception {
        post(
                "/stash/fields",
                "fabric",
                "Oat",
                "width",
                "4 1/2",
                "length",
                "20 cm",
                "count",
                "3",
                "colour",
                "sage green",
                "faces",
                "right",
                "nap",
                "lengthwise",
                "washed",
                "yes");

        assertThat(pieces()).hasSize(3);
        Piece piece = pieces().get(0);
        assertThat(piece.size()).isEqualTo(new Size(Length.inches(9, 2), Length.cm(20)));
        assertThat(piece.washed()).isEqualTo(Piece.Washed.YES);
        assertThat(piece.fabric().colour().hex()).isEqualTo("#a3b08e");
        assertThat(post("/stash/fields", "fabric", "Oat", "width", "wide", "length", "2")
                        .body())
                .contains("is not a unit");
    }

    @Test
    void undo_and_redo_name_what_they_do_and_refuse_what_was_not_seen() throws Exception {
        post("/stash/line", "line", "oat 4 x 8");
        post("/stash/line", "line", "moss 4 x 8");

        assertThat(post("/stash/undo", "label", "add 1 of oat").statusCode()).isEqualTo(409);
        assertThat(pieces()).hasSize(2);
        assertThat(post("/stash/undo", "label", "add 1 of moss").statusCode()).isEqualTo(303);
        assertThat(pieces()).hasSize(1);
        assertThat(post("/stash/redo", "label", "add 1 of moss").statusCode()).isEqualTo(303);
        assertThat(pieces()).hasSize(2);
    }

    @Test
    void a_file_comes_in_and_goes_out_the_same() throws Exception {
        byte[] file =
                "fabric,width,length,count,colour,faces\r\n=cmd|'x',4 in,8 in,3,#112233,right\r\nOat,2 1/2,9,1,,\r\n"
                        .getBytes(StandardCharsets.UTF_8);

        assertThat(send("/stash/file", "file", file).statusCode()).isEqualTo(303);
        assertThat(pieces()).hasSize(4);
        HttpResponse<String> out = get("/stash/stash.csv");
        assertThat(out.headers().firstValue("Content-Type").orElse("")).startsWith("text/csv");
        assertThat(out.body()).contains("'=cmd|'x',4 in,8 in,3,#112233,right").doesNotContain("\n=");
        StashFile.Reading again = StashFile.read(out.body(), java.util.Optional.empty());
        assertThat(((StashFile.Read) again).stash().pieces().stream().map(Piece::size))
                .containsExactlyElementsOf(pieces().stream().map(Piece::size).toList());
    }

    @Test
    void a_faulty_file_is_told_line_by_line_and_changes_nothing() throws Exception {
        HttpResponse<String> answer = send(
                "/stash/file", "file", "fabric,width,length\nOat,wide,8\nMoss,4,0\n".getBytes(StandardCharsets.UTF_8));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("line 2, width:", "line 3, length:");
        assertThat(pieces()).isEmpty();
        assertThat(send("/stash/file", "file", new byte[9 << 20]).statusCode()).isEqualTo(413);
        assertThat(send("/stash/file", "file", new byte[] {(byte) 0xff, 'a'}).body())
                .contains("UTF-8");
    }

    @Test
    void filters_find_by_name_number_and_least_size_and_keep_the_totals() throws Exception {
        post("/stash/line", "line", "3 oat 4 x 8\n2 moss 12 x 5\nmoss 2 x 2");

        assertThat(get("/stash?text=MOS").body()).contains("3 of 6 pieces");
        assertThat(get("/stash?least=10+x+4").body()).contains("2 of 6 pieces");
        assertThat(get("/stash?fabric=oat").body()).contains("3 of 6 pieces", "<span class=\"name\">moss</span>");
        assertThat(get("/stash?text=6").body()).contains("1 of 6 pieces");
        assertThat(get("/stash?least=wide").body()).contains("is not a unit");
        assertThat(get("/stash?text=silk").body()).contains("No piece is like that");
    }

    @Test
    void ten_thousand_pieces_are_shown_a_page_at_a_time_each_of_them_once() throws Exception {
        Random random = new Random(3);
        StringBuilder file = new StringBuilder("fabric,width,length\n");
        for (int i = 0; i < 10_000; i++) {
            file.append("Cloth ")
                    .append(random.nextInt(40))
                    .append(',')
                    .append(20 + random.nextInt(400))
                    .append(" mm,")
                    .append(20 + i)
                    .append(" mm\n");
        }
        send("/stash/file", "file", file.toString().getBytes(StandardCharsets.UTF_8));

        int pages = Integer.parseInt(first("Page 1 of (\\d+)", get("/stash").body()));
        assertThat(pages).isEqualTo((10_000 + StashView.LOTS - 1) / StashView.LOTS);
        int shown = 0;
        for (int page : new int[] {1, 2, pages / 2, pages}) {
            shown += get("/stash?page=" + page).body().split("class=\"lot\"", -1).length - 1;
        }
        assertThat(shown).isEqualTo(3 * StashView.LOTS + 10_000 - (pages - 1) * StashView.LOTS);
    }

    @Test
    void htmx_is_given_the_part_it_asks_for() throws Exception {
        post("/stash/line", "line", "oat 4 x 8");
        HttpResponse<String> part = client.send(
                to("/stash?text=oat")
                        .header("HX-Request", "true")
                        .header("HX-Target", "found")
                        .build(),
                HttpResponse.BodyHandlers.ofString());

        assertThat(part.body()).doesNotContain("<html").contains("class=\"lot\"", "hx-swap-oob");
    }
}
