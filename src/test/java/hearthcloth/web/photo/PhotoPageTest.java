package hearthcloth.web.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.web.StashVisit;
import hearthcloth.web.TestPhotographs;
import hearthcloth.web.Visit;
import hearthcloth.web.kit.PieceDrawing;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The photograph's pages as a browser without scripts sees them. */
class PhotoPageTest extends StashVisit {

    private static final byte[] FEW = TestPhotographs.few();

    PhotoPageTest(@TempDir Path folder) throws Exception {
        super(folder);
        post("/settings", "ruler", "MILLIMETRES", "paper", "a4");
    }

    private static String onward(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return response.headers().firstValue("Location").orElseThrow();
    }

    /** The page of the photograph, when it is read. */
    private String read(byte[] photograph, String... fields) throws IOException, InterruptedException {
        String page = onward(send("/stash/photo", "picture", photograph, fields));
        untilRead(page);
        return page;
    }

    /** Other pages answer meanwhile. */
    private void untilRead(String page) throws IOException, InterruptedException {
        assertThat(get("/gift").statusCode()).isEqualTo(200);
        while (get(page).body().contains("id=\"going\"")) {
            Visit.beside("reading", Visit.NOW_AND_THEN_MS);
        }
    }

    private String doubtful(String page) throws IOException, InterruptedException {
        return first("class=\"piece look\" data-piece=\"(\\w+)\"", get(page).body());
    }

    @Test
    void the_measuring_sheet_is_there_to_print_and_what_its_line_measures_is_looked_at() throws Exception {
        assertThat(get("/stash/photo").body()).contains("/stash/measuring-sheet.pdf", "The measuring sheet");
        HttpResponse<String> sheet = get("/stash/measuring-sheet.pdf?paper=letter");
        assertThat(sheet.statusCode()).isEqualTo(200);
        assertThat(sheet.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/pdf");
        HttpResponse<String> refused = send("/stash/photo", "picture", FEW, "sheet", "sheet", "line", "5 cm");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("about 20 cm");
    }

    private HttpResponse<String> change(String page, String... fields) throws IOException, InterruptedException {
        return post(page + "/change", fields);
    }

    @Test
    void the_stash_has_a_door_to_a_page_that_opens_the_camera_on_a_phone() throws Exception {
        assertThat(get("/stash").body()).contains("href=\"/stash/photo\" aria-label=\"Photograph them\"");
        assertThat(get("/stash/photo").body())
                .contains("capture=\"environment\"", "accept=\"image/jpeg,image/png\"")
                .contains("Take a picture now", "touching nothing");
    }

    @Test
    void what_is_accepted_comes_in_and_what_is_doubtful_stays_until_it_is_looked_at() throws Exception {
        String page = read(FEW, "sheet", "a4");
        String doubtful = doubtful(page);
        assertThat(get(page).body()).contains("Take 4 pieces in", "1 stays until you have looked at it");

        String onward = onward(post(page + "/accept"));

        assertThat(onward).startsWith(page).contains("stays+on+the+photograph");
        assertThat(pieces()).hasSize(4);
        assertThat(get(page).body()).contains("in the stash", "Take 0 pieces in");
        assertThat(change(page, "what", "drop", "piece", "1").statusCode()).isEqualTo(422);
        onward(change(page, "what", "check", "piece", doubtful));
        assertThat(onward(post(page + "/accept"))).startsWith("/stash?said");
        assertThat(pieces()).hasSize(5);
        assertThat(store.photographs().taken(page.replaceFirst(".*/", ""))).hasSize(5);
    }

    @Test
    void pieces_come_in_with_their_true_size_rounded_down_their_colour_and_a_swatch() throws Exception {
        String page = read(FEW, "sheet", "a4");
        onward(post(page + "/accept"));

        Fabric navy = nearest(TestPhotographs.NAVY);
        List<Piece> own = store.stash().whole().of(navy);
        assertThat(own).hasSize(2);
        isRead(own.get(0), 200, 260);
        isRead(own.get(1), 190, 260);
        Fabric orange = nearest(TestPhotographs.ORANGE);
        isRead(store.stash().whole().of(orange).get(0), 200, 240);
        for (Fabric fabric : store.stash().whole().fabrics()) {
            HttpResponse<byte[]> swatch = client.send(
                    to(PieceDrawing.address(fabric.name())).build(), HttpResponse.BodyHandlers.ofByteArray());
            BufferedImage seen = ImageIO.read(new ByteArrayInputStream(swatch.body()));
            assertThat(seen.getWidth()).isEqualTo(seen.getHeight()).isGreaterThan(90);
        }
        assertThat(store.swatches().across().keySet())
                .containsExactlyInAnyOrderElementsOf(store.stash().whole().fabrics().stream()
                        .map(Fabric::name)
                        .toList());
        assertThat(store.swatches().across().get(navy.name())).isLessThanOrEqualTo(Length.mm(150));
    }

    private Fabric nearest(int colour) {
        return store.stash().whole().fabrics().stream()
                .filter(fabric ->
                        fabric.colour().lab().difference(Colour.of(colour).lab()) < 12)
                .findFirst()
                .orElseThrow();
    }

    private static void isRead(Piece piece, double width, double length) {
        assertThat(piece.size().width().in(Unit.MILLIMETRE)).isBetween(width - 5, width);
        assertThat(piece.size().height().in(Unit.MILLIMETRE)).isBetween(length - 5, length);
        assertThat(piece.size().width().nm() % 1_000_000).isZero();
    }

    @Test
    void the_stash_takes_everything_back_at_once_and_it_can_come_in_again() throws Exception {
        String page = read(FEW, "sheet", "a4");
        onward(change(page, "what", "drop", "piece", doubtful(page)));
        assertThat(onward(post(page + "/accept"))).startsWith("/stash?said");
        String label = "add 4 pieces from a photograph";

        onward(post("/stash/undo", "label", label));
        assertThat(pieces()).isEmpty();
        assertThat(store.swatches().across()).isEmpty();
        assertThat(get(page).body()).contains("Take 4 pieces in");
        onward(post("/stash/redo", "label", label));
        assertThat(pieces()).hasSize(4);
        assertThat(get(page).body()).contains("Take 0 pieces in");
        onward(post("/stash/undo", "label", label));
        onward(post(page + "/accept"));
        assertThat(pieces()).hasSize(4);
    }

    @Test
    void a_name_is_for_all_pieces_of_the_fabric_and_a_known_one_joins_what_is_there() throws Exception {
        post("/stash/line", "line", "1 harbour linen 30 x 40 cm, right side");
        String page = read(FEW, "sheet", "a4");
        String navy = group(page, "2 pieces");
        onward(change(page, "what", "fabric", "group", navy, "name", "Harbour LINEN", "faces", "same", "nap", "any"));
        String nasty = group(page, "1 piece");
        onward(change(page, "what", "fabric", "group", nasty, "name", "<b>&\"'</b>", "washed", "yes"));
        assertThat(get(page).body()).doesNotContain("<b>&\"'</b>").contains("Your stash has this fabric");

        assertThat(onward(post(page + "/accept"))).contains("was+here+already");
        assertThat(store.stash().whole().fabric("harbour linen")).hasValueSatisfying(fabric -> {
            assertThat(fabric.faces()).isEqualTo(Fabric.Faces.RIGHT);
            assertThat(store.stash().whole().of(fabric)).hasSize(3);
        });
        Fabric other = store.stash().whole().fabric("<b>&\"'</b>").orElseThrow();
        assertThat(store.stash().whole().of(other)).allMatch(piece -> piece.washed() == Piece.Washed.YES);
    }

    /** The first fabric of so many pieces. */
    private String group(String page, String count) throws IOException, InterruptedException {
        return first(
                "Name, " + count + "</span><input id=\"name-(f\\d+)\"",
                get(page).body());
    }

    @Test
    void every_change_can_be_taken_back_and_survives_another_opening() throws Exception {
        String page = read(FEW, "sheet", "a4");
        String fresh = marks(get(page).body());
        String piece = doubtful(page);
        onward(change(page, "what", "more", "piece", piece, "i", "0"));
        onward(change(page, "what", "drop", "piece", "1"));
        onward(change(page, "what", "move", "piece", "2", "group", "new"));
        String changed = marks(get(page).body());
        assertThat(changed).isNotEqualTo(fresh);
        for (int i = 0; i < 3; i++) {
            onward(post(page + "/undo"));
        }
        assertThat(marks(get(page).body())).isEqualTo(fresh);
        for (int i = 0; i < 3; i++) {
            onward(post(page + "/redo"));
        }
        assertThat(marks(get(page).body())).isEqualTo(changed);
    }

    private static String marks(String page) {
        return page.substring(page.indexOf("<svg class=\"photo\""), page.indexOf("</figure>"))
                + page.substring(page.indexOf("id=\"fabrics-of\""), page.indexOf("class=\"taking\""));
    }

    @Test
    void a_change_made_on_an_older_page_is_told_and_changes_nothing() throws Exception {
        String page = read(FEW, "sheet", "a4");
        String version = first("name=\"version\" value=\"(\\d+)\"", get(page).body());
        onward(change(page, "what", "drop", "piece", "1", "version", version));

        HttpResponse<String> late = change(page, "what", "drop", "piece", "2", "version", version);

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("another window");
        assertThat(post(page + "/accept", "version", version).statusCode()).isEqualTo(409);
        assertThat(pieces()).isEmpty();
    }

    @Test
    void nonsense_in_a_form_is_answered_in_words() throws Exception {
        String page = read(FEW, "sheet", "a4");
        for (String[] fields : new String[][] {
            {"what", "corner", "piece", "1", "i", "99", "x", "1", "y", "1"},
            {"what", "corner", "piece", "1", "i", "0", "x", "NaN", "y", "1"},
            {"what", "corner", "piece", "99", "i", "0", "x", "1", "y", "1"},
            {"what", "corner", "piece", "1", "i", "-1", "x", "1", "y", "1"},
            {"what", "split", "piece", "1", "x", "1", "y", "1", "x2", "1", "y2", "1"},
            {"what", "grain", "piece", "1", "x", "1", "y", "1", "x2", "1", "y2", "1"},
            {"what", "move", "piece", "1", "group", "f77"},
            {"what", "fabric", "group", "f1", "name", " "},
            {"what", "sing", "piece", "1"}
        }) {
            HttpResponse<String> answer = change(page, fields);
            assertThat(answer.statusCode()).as(Arrays.toString(fields)).isEqualTo(422);
            assertThat(answer.body()).doesNotContain("Exception", "went wrong inside");
        }
        assertThat(get("/stash/photo/nothing").statusCode()).isEqualTo(404);
        assertThat(post("/stash/photo/nothing/accept").statusCode()).isEqualTo(404);
    }

    @Test
    void what_is_no_photograph_is_refused_in_a_sentence() throws Exception {
        byte[] heic = Arrays.copyOf("\0\0\0\30ftypheic".getBytes(StandardCharsets.ISO_8859_1), 4000);
        isRefused("fabric,width".getBytes(StandardCharsets.UTF_8), "JPEG or PNG");
        isRefused(heic, "most compatible");
        isRefused(pngHeader(60_000, 60_000), "60000 × 60000");
        isRefused(pngHeader(640, 480), "original size");
        isRefused(new byte[0], "No picture was chosen");
        isRefused(Arrays.copyOf(FEW, Photograph.MOST_BYTES + 1), "larger than 80 MB");
        HttpResponse<String> size = send("/stash/photo", "picture", FEW, "sheet", "size", "size", "quite large");
        assertThat(size.statusCode()).isEqualTo(422);
        assertThat(store.photographs().all()).isEmpty();
    }

    private void isRefused(byte[] file, String words) throws IOException, InterruptedException {
        HttpResponse<String> answer = send("/stash/photo", "picture", file, "sheet", "a4");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(words, "touching nothing").doesNotContain("Exception");
    }

    @Test
    void without_its_sheet_nothing_is_measured_and_another_can_be_said() throws Exception {
        String page = read(TestPhotographs.withoutSheet(), "sheet", "letter");
        assertThat(get(page).body()).contains("No Letter was found", "Was it another reference?", "touching nothing");
        assertThat(get("/stash/photo").body()).contains("nothing was read off it");

        onward(post(page + "/again", "sheet", "size", "size", "9 x 14"));
        untilRead(page);
        assertThat(get(page).body()).contains("data-piece=\"1\"");

        onward(post(page + "/away"));
        assertThat(get(page).statusCode()).isEqualTo(404);
    }

    @Test
    void a_sheet_that_is_not_taken_is_shown_by_its_corners_one_tap_after_the_other() throws Exception {
        Reading.Read known = (Reading.Read) PhotoReader.read(FEW, ReferenceSheet.A4, ReadingProgress.NONE);
        String page = read(FEW, "sheet", "letter");
        assertThat(get(page).body()).contains("looks like A4", "Tap one corner of it", "type=\"image\"");
        assertThat(get(page + "/picture").headers().firstValue("Content-Type").orElse(""))
                .startsWith("image/jpeg");
        String high = first("name=\"high\" value=\"(\\d+)\"", get(page).body());

        String at = page;
        for (Point corner : known.scale().sheetInPicture()) {
            String corners = first("name=\"corners\" value=\"([^\"]*)\"", get(at).body());
            double x = 300 * corner.x() / known.scale().pictureWidth();
            double y = Integer.parseInt(high) * corner.y() / known.scale().pictureHeight();
            at = onward(post(
                    page + "/corners",
                    "corners",
                    corners,
                    "high",
                    high,
                    "at.x",
                    String.valueOf(Math.round(x)),
                    "at.y",
                    String.valueOf(Math.round(y))));
        }
        String marked = get(at).body();
        assertThat(marked).contains("All four are marked", "Read it by these corners");
        assertThat(Pattern.compile("<circle cx=\"[0-9.]+\" cy=\"[0-9.]+\" r=\"5\"")
                        .matcher(marked)
                        .results())
                .hasSize(4);
        onward(post(
                page + "/corners",
                "corners",
                first("name=\"corners\" value=\"([^\"]*)\"", marked),
                "high",
                high,
                "read",
                "yes"));
        untilRead(page);
        // It is an A4 all the same, and that is said of each piece.
        assertThat(get(page).body()).contains("data-piece=\"4\"", "too long or too short");
    }

    @Test
    void a_piece_that_was_missed_is_found_by_one_tap_and_where_no_rim_shows_that_is_said() throws Exception {
        Reading.Read known = (Reading.Read) PhotoReader.read(FEW, ReferenceSheet.A4, ReadingProgress.NONE);
        String page = read(FEW, "sheet", "a4");
        Point middle = known.scale().inPicture(known.pieces().get(0).usable().middle());
        String tap = String.format(java.util.Locale.ROOT, "%.1f,%.1f,1.00", middle.x(), middle.y());

        onward(change(page, "what", "draw", "find", "yes", "corners", tap));

        String after = get(page).body();
        assertThat(after).contains("data-piece=\"6\"", "It lies over piece 1");
        Point sheet = known.scale().inPicture(known.scale().sheetMiddle());
        String off = String.format(java.util.Locale.ROOT, "%.1f,%.1f,1.00", 5.0, sheet.y());
        assertThat(change(page, "what", "draw", "find", "yes", "corners", off).statusCode())
                .isEqualTo(422);
    }

    @Test
    void the_same_heap_on_a_second_photograph_is_offered_as_one_and_never_merged_unasked() throws Exception {
        String one = read(FEW, "sheet", "a4");
        assertThat(get(one).body()).doesNotContain("Seen on another photograph");
        onward(post(one + "/accept"));

        String two = read(FEW, "sheet", "a4");

        String body = get(two).body();
        assertThat(body).contains("Seen on another photograph too?", "which is in the stash", "Take 4 pieces in");
        onward(change(two, "what", "drop", "piece", "1"));
        assertThat(get(two).body()).contains("Take 3 pieces in").doesNotContain("twice-drop-1\"");
        String closely = get(two + "?piece=1").body();
        assertThat(closely).contains("Its diagonals are", "Its picture as from straight above");
        assertThat(get(two + "/straight/1").headers().firstValue("Content-Type").orElse(""))
                .startsWith("image/jpeg");
        assertThat(get(two + "/straight/99").statusCode()).isEqualTo(404);
    }

    @Test
    void all_with_a_question_are_taken_at_once() throws Exception {
        String page = read(FEW, "sheet", "a4");

        onward(change(page, "what", "check-all"));

        assertThat(get(page).body()).contains("Take 5 pieces in").doesNotContain("Look at these first");
        onward(post(page + "/undo"));
        assertThat(get(page).body()).contains("Take 4 pieces in", "Look at these first");
    }

    @Test
    void corners_written_down_are_marked_and_what_is_none_is_left_aside() throws Exception {
        String page = read(FEW, "sheet", "letter");

        String marked =
                onward(post(page + "/corners", "high", "225", "hundredths", "21 30, 44 31, <b>, 43 62, 20 600, 20 60"));

        assertThat(get(marked).body()).contains("All four are marked").doesNotContain("<b>");
        String pressed = onward(post(page + "/corners", "high", "225", "at.x", "0", "at.y", "0"));
        assertThat(get(pressed).body()).contains("Tap one corner of it");
    }

    @Test
    void several_at_once_are_read_one_after_the_other_and_one_can_be_put_away() throws Exception {
        String one = onward(send("/stash/photo", "picture", FEW, "sheet", "a4"));
        String two = onward(send("/stash/photo", "picture", FEW, "sheet", "a4"));
        String three = onward(send("/stash/photo", "picture", FEW, "sheet", "a4"));
        assertThat(get(three + "/progress").body()).contains("before yours");
        onward(post(two + "/away"));
        untilRead(three);
        assertThat(get(one).body()).contains("Take 4 pieces in");
        assertThat(get(two).statusCode()).isEqualTo(404);
        assertThat(get(three).body()).contains("Take 4 pieces in");
    }

    /** A PNG that says its size and then ends. */
    private static byte[] pngHeader(int width, int height) {
        ByteBuffer chunk = ByteBuffer.allocate(17);
        chunk.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
        chunk.put((byte) 8).put((byte) 2).put((byte) 0).put((byte) 0).put((byte) 0);
        CRC32 crc = new CRC32();
        crc.update(chunk.array());
        ByteBuffer out = ByteBuffer.allocate(33);
        out.put("\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1)).putInt(13);
        out.put(chunk.array()).putInt((int) crc.getValue());
        return out.array();
    }
}
