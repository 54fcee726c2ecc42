package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.SwatchBook.Swatch;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages of one kind of piece and of one fabric. */
class StashPiecesTest extends StashVisit {

    StashPiecesTest(@TempDir Path folder) throws Exception {
        super(folder);
    }

    @Test
    void some_of_many_alike_are_changed_cut_in_two_and_used_up() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8");
        String page = get("/stash/piece/1").body();
        assertThat(page).contains("5 alike, numbers 1–5");

        post(
                "/stash/piece/1/change",
                "seen",
                seen(page),
                "many",
                "2",
                "width",
                "3 1/2",
                "length",
                "8",
                "fabric",
                "Moss",
                "washed",
                "YES");
        assertThat(pieces().stream()
                        .filter(piece -> piece.fabric().name().equals("Moss"))
                        .map(Piece::id))
                .containsExactly("1", "2");

        String oat = get("/stash/piece/3").body();
        post("/stash/piece/3/split", "seen", seen(oat), "many", "1", "cut", "length", "at", "3");
        assertThat(pieces().stream().filter(piece -> piece.id().equals("3")).map(Piece::size))
                .containsExactly(inches(4, 3));
        assertThat(pieces().stream().filter(piece -> piece.id().equals("6")).map(Piece::size))
                .containsExactly(inches(4, 5));

        String left = get("/stash/piece/4").body();
        post("/stash/piece/4/use", "seen", seen(left), "many", "2");
        assertThat(pieces().stream().map(Piece::id)).containsExactlyInAnyOrder("1", "2", "3", "6");
    }

    @Test
    void some_of_many_alike_are_set_aside_and_given_back_and_no_cloth_is_planned_with_them_meanwhile()
            throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8");
        String page = get("/stash/piece/1").body();

        post("/stash/piece/1/aside", "seen", seen(page), "many", "2");

        assertThat(pieces()).hasSize(5);
        assertThat(store.atHand().free(Set.of()).pieces()).extracting(Piece::id).containsExactly("3", "4", "5");
        assertThat(get("/stash").body()).contains("numbers 1–5, 2 set aside");
        assertThat(get("/stash/piece/1").body()).contains("How many of the 3", "How many of the 2", "2 set aside.");
        assertThat(get("/cloth").body()).contains("Left out: 2 pieces you have set aside.");

        post("/stash/piece/1/back", "seen", seen(page), "many", "1");
        assertThat(store.stash().aside()).containsExactly("2");
        assertThat(store.stash().undo()).contains("give back 1 of oat");
        assertThat(store.stash().aside()).containsExactlyInAnyOrder("1", "2");
        assertThat(store.stash().undo()).contains("set aside 2 of oat");
        assertThat(store.stash().aside()).isEmpty();
    }

    @Test
    void pieces_chosen_on_the_table_are_kept_given_back_and_used_up_at_once_and_undone_at_once() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8\n2 moss 6 in square");

        post("/stash/chosen", "piece", "1:5", "piece", "6:2", "do", "keep");
        assertThat(store.atHand().free(Set.of()).pieces()).isEmpty();
        assertThat(get("/stash").body()).contains("data-kept=\"yes\"", "set aside 7 pieces");
        post("/stash/chosen", "piece", "6:2", "do", "back");
        assertThat(store.atHand().free(Set.of()).fabrics())
                .extracting(Fabric::name)
                .containsExactly("moss");

        post("/stash/chosen", "piece", "1:5", "piece", "6:2", "do", "use");
        assertThat(pieces()).isEmpty();
        assertThat(store.stash().undo()).contains("use up 7 pieces");
        assertThat(pieces()).hasSize(7);
    }

    @Test
    void pieces_chosen_as_they_no_longer_are_stay_untouched() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8");
        String seen = seen(get("/stash/piece/1").body());
        post("/stash/piece/1/use", "seen", seen, "many", "1");

        assertThat(post("/stash/chosen", "piece", "2:5", "do", "use").body())
                .contains("meanwhile been changed in another window");
        assertThat(pieces()).hasSize(4);
        assertThat(post("/stash/chosen", "do", "use").statusCode()).isEqualTo(303);
    }

    @Test
    void what_is_wanted_used_first_is_a_wish_of_the_next_cloth_until_it_is_taken_back() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8\n2 moss 6 in square");

        post("/stash/chosen", "piece", "1:5", "do", "first");
        assertThat(get("/cloth").body()).contains("Take back: first: oat 5");
        post("/wishes", "do", "less", "what", "first", "value", "");
        assertThat(get("/cloth").body()).doesNotContain("Take back: first");
    }

    @Test
    void the_table_is_looked_at_nearer_and_in_greys_and_so_again_tomorrow() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8");
        String before = first("class=\"table\\s+t(\\d+)", get("/stash").body());

        post("/stash/look", "look", "farther");
        post("/stash/look", "look", "greys");

        String page = get("/stash").body();
        assertThat(Integer.parseInt(first("class=\"table\\s+t(\\d+)", page))).isEqualTo(Integer.parseInt(before) - 1);
        assertThat(page).contains("<span class=\"shade\">5</span>", "fill=\"#e2e2e2\"");
    }

    @Test
    void a_whole_fabric_is_set_aside_in_one_tap() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8\n2 moss 6 in square");
        String page = get("/stash/fabric?name=oat").body();

        post("/stash/fabric/aside", "was", "oat", "seen", seen(page));

        assertThat(store.atHand().free(Set.of()).fabrics())
                .extracting(Fabric::name)
                .containsExactly("moss");
        post("/stash/fabric/back", "was", "oat", "seen", seen(page));
        assertThat(store.atHand().free(Set.of()).pieces()).hasSize(7);
    }

    @Test
    void setting_aside_more_than_are_left_is_refused_with_how_many_there_are() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8");
        String seen = seen(get("/stash/piece/1").body());
        post("/stash/piece/1/aside", "seen", seen, "many", "3");

        assertThat(post("/stash/piece/1/aside", "seen", seen, "many", "3").body())
                .contains("There are 2 of these; say how many of them, from 1 to 2");
    }

    @Test
    void a_page_left_open_in_another_window_changes_nothing() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8");
        String seen = seen(get("/stash/piece/1").body());
        post("/stash/piece/1/use", "seen", seen, "many", "1");
        List<Piece> before = pieces();

        HttpResponse<String> stale = post("/stash/piece/2/delete", "seen", seen, "many", "5");

        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(stale.body()).contains("meanwhile been changed in another window");
        assertThat(pieces()).isEqualTo(before);
        assertThat(post("/stash/piece/1/use", "seen", seen, "many", "1").statusCode())
                .isEqualTo(409);
    }

    @Test
    void a_cut_outside_the_piece_is_refused() throws Exception {
        post("/stash/line", "line", "oat 4 x 8");
        String seen = seen(get("/stash/piece/1").body());

        for (String at : List.of("8", "0", "-1", "9 in", "x")) {
            assertThat(post("/stash/piece/1/split", "seen", seen, "cut", "length", "at", at)
                            .statusCode())
                    .as(at)
                    .isEqualTo(422);
        }
        assertThat(pieces()).hasSize(1);
    }

    @Test
    void a_fabric_is_changed_for_all_its_pieces_and_undone_at_once() throws Exception {
        post("/stash/line", "line", "5 oat 4 x 8\n2 oat 6 in square\nmoss 3 x 3");
        List<Piece> before = pieces();
        String page = get("/stash/fabric?name=oat").body();

        post(
                "/stash/fabric",
                "was",
                "oat",
                "seen",
                seen(page),
                "name",
                "moss",
                "colour",
                "#102030",
                "faces",
                "right",
                "nap",
                "any");

        assertThat(pieces()).hasSize(8).allSatisfy(piece -> {
            assertThat(piece.fabric().name()).isEqualTo("moss");
            assertThat(piece.fabric().colour().hex()).isEqualTo("#102030");
        });
        post("/stash/undo", "label", "change the fabric oat");
        assertThat(pieces()).isEqualTo(before);
        assertThat(post("/stash/fabric", "was", "oat", "seen", "another", "name", "x", "colour", "red")
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void her_own_picture_of_a_fabric_is_checked_made_small_and_tiled() throws Exception {
        post("/stash/line", "line", "oat 4 x 8");

        assertThat(send("/stash/fabric/picture", "picture", png(1400, 900), "was", "oat", "across", "6 in")
                        .statusCode())
                .isEqualTo(303);
        HttpResponse<byte[]> swatch =
                client.send(to("/stash/swatch?fabric=oat").build(), HttpResponse.BodyHandlers.ofByteArray());
        assertThat(swatch.headers().firstValue("Content-Type").orElse("")).startsWith("image/jpeg");
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(swatch.body()));
        assertThat(read.getWidth()).isEqualTo(read.getHeight()).isLessThanOrEqualTo(512);
        assertThat(store.swatches().find("oat").map(Swatch::across)).contains(Length.inches(6));
        assertThat(get("/stash").body()).contains("<pattern", "href=\"/stash/swatch?fabric=oat\"");

        post("/stash/fabric/picture/away", "was", "oat");
        assertThat(get("/stash/swatch?fabric=oat").statusCode()).isEqualTo(404);
    }

    @Test
    void what_is_no_picture_is_refused_in_words() throws Exception {
        post("/stash/line", "line", "oat 4 x 8");
        byte[] torn = java.util.Arrays.copyOf(png(300, 300), 60);
        byte[] huge = png(10, 10);
        // The header of a PNG says its width and height at bytes 16 to 23.
        huge[16] = 0;
        huge[17] = 1;
        huge[21] = 1;

        assertThat(send("/stash/fabric/picture", "picture", "<svg/>".getBytes(StandardCharsets.UTF_8), "was", "oat")
                        .body())
                .contains("no PNG or JPEG");
        assertThat(send("/stash/fabric/picture", "picture", torn, "was", "oat").body())
                .contains("damaged");
        assertThat(send("/stash/fabric/picture", "picture", huge, "was", "oat").body())
                .contains("over 50 megapixels");
        assertThat(send("/stash/fabric/picture", "picture", new byte[0], "was", "oat")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void names_with_markup_are_shown_as_they_are_written() throws Exception {
        post("/stash/line", "line", "<script>alert(1)</script> \"&' 4 x 8 in");

        for (String path : List.of(
                "/stash",
                "/stash/piece/1",
                "/stash/fabric?name="
                        + URLEncoder.encode(pieces().get(0).fabric().name(), StandardCharsets.UTF_8))) {
            HttpResponse<String> page = get(path);
            assertThat(page.statusCode()).as(path).isEqualTo(200);
            assertThat(page.body()).doesNotContain("<script>alert").contains("&lt;script&gt;alert");
        }
    }

    private static byte[] png(int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }
}
