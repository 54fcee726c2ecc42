package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import hearthcloth.store.Store;
import hearthcloth.store.SwatchBook.Swatch;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The routes under /stash as a browser without JavaScript uses them, and the parts that htmx asks for. */
class StashPageTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

    private final Workroom workroom;
    private final Store store;
    private final HttpClient client = HttpClient.newHttpClient();
    private final String token;

    StashPageTest(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("workroom.db");
        workroom = Workroom.open(file, 0, CLOCK);
        store = Store.open(file, CLOCK);
        token = first("name=\"token\" content=\"([0-9a-f]+)\"", get("/stash").body());
    }

    @AfterEach
    void close() {
        workroom.close();
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + workroom.port() + path));
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(to(path).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String... namesAndValues) throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder("token=" + token);
        for (int i = 0; i < namesAndValues.length; i += 2) {
            body.append('&')
                    .append(namesAndValues[i])
                    .append('=')
                    .append(URLEncoder.encode(namesAndValues[i + 1], StandardCharsets.UTF_8));
        }
        return client.send(
                to(path).header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a form with a file, as a browser does. */
    private HttpResponse<String> send(String path, String name, byte[] file, String... namesAndValues)
            throws IOException, InterruptedException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        String line = "----cloth";
        field(body, line, "token", token);
        for (int i = 0; i < namesAndValues.length; i += 2) {
            field(body, line, namesAndValues[i], namesAndValues[i + 1]);
        }
        body.writeBytes(("--" + line + "\r\nContent-Disposition: form-data; name=\"" + name
                        + "\"; filename=\"given\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(file);
        body.writeBytes(("\r\n--" + line + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return client.send(
                to(path).header("Content-Type", "multipart/form-data; boundary=" + line)
                        .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static void field(ByteArrayOutputStream body, String line, String name, String value) {
        body.writeBytes(
                ("--" + line + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n")
                        .getBytes(StandardCharsets.UTF_8));
    }

    private static String first(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
        return matcher.group(1);
    }

    private List<Piece> pieces() {
        return store.stash().whole().pieces();
    }

    private static String seen(String page) {
        return first("name=\"seen\" value=\"([^\"]*)\"", page)
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&amp;", "&");
    }

    private static Size inches(long width, long length) {
        return new Size(Length.inches(width), Length.inches(length));
    }

    @Test
    void an_empty_stash_teaches_and_offers_the_example() throws Exception {
        HttpResponse<String> page = get("/stash");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("Nothing is laid out yet", "action=\"/example\"", "What have you got?");
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
        assertThat(get("/stash").body()).contains("12 pieces, 384 sq in", "1–12", "add 12 of green print");
    }

    @Test
    void a_line_that_is_unclear_stays_in_the_box() throws Exception {
        HttpResponse<String> answer = post("/stash/line", "line", "12 green <print>");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"12 green &lt;print", "How large is it?");
        assertThat(pieces()).isEmpty();
    }

    @Test
    void of_many_lines_the_clear_ones_are_added_and_the_others_stay() throws Exception {
        HttpResponse<String> answer =
                post("/stash/lines", "lines", "3 oat 4 x 8\n\nblue something\r\n2 moss 6 in square\n5 in of nothing");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(pieces()).hasSize(5);
        assertThat(first("(?s)<textarea[^>]*>(.*?)</textarea>", answer.body()).strip())
                .isEqualTo("blue something\n5 in of nothing");
        assertThat(answer.body()).contains("“blue something”: how large is it?", "Added 5 pieces");
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
        post("/stash/lines", "lines", "5 oat 4 x 8\n2 oat 6 in square\nmoss 3 x 3");
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

    private static byte[] png(int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
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

    @Test
    void filters_find_by_name_number_and_least_size_and_keep_the_totals() throws Exception {
        post("/stash/lines", "lines", "3 oat 4 x 8\n2 moss 12 x 5\nmoss 2 x 2");

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
