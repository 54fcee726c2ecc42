package hearthcloth.web.made;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import hearthcloth.web.make.CutPageTest;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The end of a cloth over plain HTTP: its photograph, its slip, each time it wrapped something, what is left over. */
class MadePageTest {

    @TempDir
    Path folder;

    private Visit visit;
    private String id = "";

    @BeforeEach
    void sew() {
        id = BegunWork.of(folder, "sewn", MadePageTest::sewn);
        visit = new Visit(folder);
    }

    /** The id of a cloth that was sewn step by step. */
    private static String sewn(Visit visit) {
        visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
        visit.post("/example");
        String id = CutPageTest.taken(visit).replaceFirst(".*/cloth/", "").replaceFirst("\\?.*", "");
        visit.post("/cut/" + id + "/done");
        String page = visit.page("/sew/" + id);
        int steps =
                Integer.parseInt(CutPageTest.all("Step \\d+ of (\\d+)", page).get(0));
        for (int step = 0; step < steps; step++) {
            String to = Visit.onward(visit.post("/sew/" + id + "/done", "step", String.valueOf(step)));
            assertThat(to).endsWith(step == steps - 1 ? "/made/" + id : "/sew/" + id);
        }
        return id;
    }

    @AfterEach
    void close() {
        visit.close();
    }

    private String made() {
        return visit.page("/made/" + id);
    }

    private HttpResponse<byte[]> photograph(String more) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(visit.address() + "/made/" + id + "/photograph.jpg" + more))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
    }

    /** Three times as wide as high, red to the left and blue to the right. */
    private static byte[] picture() throws IOException {
        BufferedImage image = new BufferedImage(1800, 600, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, 900, 600);
        graphics.setColor(Color.BLUE);
        graphics.fillRect(900, 0, 900, 600);
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    /** With the block in which a camera writes how it was held, where it was, and who owns it. */
    private static byte[] ofACamera(int turn) throws IOException {
        byte[] whole = picture();
        ByteArrayOutputStream exif = new ByteArrayOutputStream();
        exif.writeBytes("Exif\0\0MM\0*\0\0\0\10".getBytes(StandardCharsets.ISO_8859_1));
        // Two entries: orientation (0x0112, one short), the owner (0x013b, letters that lie at 38).
        exif.writeBytes(new byte[] {0, 2, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) turn, 0, 0});
        exif.writeBytes(new byte[] {1, 0x3b, 0, 2, 0, 0, 0, 8, 0, 0, 0, 38, 0, 0, 0, 0});
        exif.writeBytes("Ada Box\0".getBytes(StandardCharsets.ISO_8859_1));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(whole, 0, 2);
        out.writeBytes(new byte[] {(byte) 0xff, (byte) 0xe1, 0, (byte) (exif.size() + 2)});
        out.writeBytes(exif.toByteArray());
        out.write(whole, 2, whole.length - 2);
        return out.toByteArray();
    }

    @Test
    void the_last_step_leads_to_a_page_with_the_drawing_and_an_empty_slip() {
        assertThat(made())
                .contains("It is sewn, and it holds.", "Take its photograph", "Keep this slip", "tied.svg", "bunting")
                .contains("leftover", "Use the leftovers", "sewn in one day")
                .contains("box 12 × 9 × 4 in");
        assertThat(visit.page("/")).contains("Take its photograph", "/made/" + id);
    }

    @Test
    void a_photograph_is_kept_upright_and_small_and_nothing_of_the_camera_with_it() throws Exception {
        byte[] given = ofACamera(6);
        assertThat(new String(given, StandardCharsets.ISO_8859_1)).contains("Exif", "Ada Box");

        assertThat(Visit.onward(visit.send("/made/" + id + "/photograph", "picture", given)))
                .contains("/made/" + id);

        HttpResponse<byte[]> kept = photograph("");
        assertThat(kept.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("image/jpeg"));
        assertThat(new String(kept.body(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "Ada");
        BufferedImage upright = ImageIO.read(new ByteArrayInputStream(kept.body()));
        assertThat(upright.getHeight()).isEqualTo(1280);
        assertThat(upright.getWidth()).isEqualTo(427);
        // Turned a quarter clockwise, its left is above.
        assertThat(new Color(upright.getRGB(200, 100)).getRed()).isGreaterThan(200);
        assertThat(new Color(upright.getRGB(200, 1200)).getBlue()).isGreaterThan(200);
        BufferedImage small =
                ImageIO.read(new ByteArrayInputStream(photograph("?small").body()));
        assertThat(small.getHeight()).isEqualTo(480);
        assertThat(made()).contains("/made/" + id + "/photograph.jpg?v=", "Another photograph");
        assertThat(visit.page("/cloths")).contains("/made/" + id + "/photograph.jpg?v=");

        visit.post("/made/" + id + "/photograph/away");
        assertThat(photograph("").statusCode()).isEqualTo(404);
        assertThat(made()).contains("Take its photograph");
    }

    @Test
    void what_is_no_picture_or_too_large_is_refused_in_words() {
        String to = "/made/" + id + "/photograph";
        HttpResponse<String> none = visit.send(to, "picture", "no picture".getBytes(StandardCharsets.UTF_8));
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("no PNG or JPEG");
        assertThat(visit.send(to, "picture", new byte[(20 << 20) + 1]).statusCode())
                .isEqualTo(413);
        assertThat(made()).contains("Take its photograph");
    }

    @Test
    void the_slip_tells_how_it_came_out_and_is_taken_back_as_one() {
        String was = CutPageTest.all("name=\"name\" value=\"([^\"]+)\"", made()).get(0);
        String planned = CutPageTest.all("planned ([^<]+)<", made()).get(0);
        String side = planned.split(" ×", 2)[0].replace(" in", "");
        String[] slip = {
            "name",
            "Harbour",
            "width",
            "90 in",
            "height",
            side,
            "corner",
            "40",
            "corner2",
            "41 1/2",
            "keeper",
            "Nora",
            "wrapped",
            "a box",
            "made",
            "May",
            "word",
            "Press from the <back>"
        };
        assertThat(Visit.onward(visit.post("/made/" + id + "/slip", slip))).endsWith("/made/" + id);
        assertThat(made())
                .contains("wider than planned. Corner to corner the two ways differ by 1½ in")
                .contains("value=\"Harbour\"", "value=\"90\"", "Press from the &lt;back>")
                .contains("value=\"Nora\"");
        assertThat(visit.page("/cloths")).contains("Made May; wrapped a box; with Nora");

        visit.post("/cloth/" + id + "/undo");
        assertThat(made()).contains("value=\"" + was + "\"").doesNotContain("wider than planned");

        slip[3] = "wide";
        HttpResponse<String> wrong = visit.post("/made/" + id + "/slip", slip);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("The width");
        slip[3] = "";
        assertThat(visit.post("/made/" + id + "/slip", slip).body()).contains("Give the width as well");
    }

    @Test
    void each_use_is_written_down_and_found_again() {
        visit.post("/made/" + id + "/used", "day", "4 May", "what", "a pot of honey", "who", "Ines");
        visit.post("/made/" + id + "/used", "day", "1 June", "what", "two books", "who", "");
        assertThat(made()).containsSubsequence("two books", "1 June", "a pot of honey", "Ines", "4 May");
        assertThat(visit.page("/cloths")).contains("used 2 times, last: 1 June, two books");
        assertThat(visit.page("/cloths?find=honey")).contains("1 of 2 for", "/made/" + id);
        assertThat(visit.page("/cloths?find=nobody%20has%20this"))
                .contains("0 of 2 for")
                .doesNotContain("/made/" + id);
        assertThat(visit.page("/cloths?find=%3Cscript%3E"))
                .contains("“&lt;script&gt;”")
                .doesNotContain("“<script>");
    }

    @Test
    void the_leftovers_are_wished_to_be_used_first() {
        assertThat(Visit.onward(visit.post("/made/" + id + "/leftovers"))).contains("/gift");
        assertThat(visit.page("/cloth")).contains("first");
    }

    @Test
    void the_photograph_goes_into_the_archive_and_comes_back() throws Exception {
        visit.send("/made/" + id + "/photograph", "picture", picture());
        byte[] before = photograph("").body();
        byte[] archive = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(visit.address() + "/archive"))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray())
                .body();
        visit.post("/made/" + id + "/photograph/away");

        assertThat(Visit.onward(visit.send("/archive", "file", archive, "how", "add")))
                .contains("/");

        assertThat(photograph("").body()).isEqualTo(before);
    }
}
