package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.TestPhotographs;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real workroom is killed by SIGKILL while it reads a photograph, and after each change of what was read. */
class KilledReadingTest {

    @TempDir
    Path folder;

    private String page = "";

    private RunningWorkroom opened() {
        return RunningWorkroom.opened("--data", folder.resolve("work.db").toString());
    }

    @Test
    void a_photograph_that_arrived_is_read_after_the_kill_and_no_change_of_it_is_lost() throws IOException {
        try (RunningWorkroom room = opened()) {
            HttpResponse<String> sent =
                    room.send("/stash/photo", room.token("/gift"), "picture", TestPhotographs.few(), "sheet", "a4");
            page = sent.headers().firstValue("Location").orElseThrow();
            room.kill();
        }
        String piece;
        try (RunningWorkroom room = opened()) {
            while (room.see(page).body().contains("id=\"going\"")) {
                assertThat(room.see("/gift").statusCode()).isEqualTo(200);
            }
            Matcher doubtful = Pattern.compile("class=\"piece look\" data-piece=\"(\\w+)\"")
                    .matcher(room.see(page).body());
            assertThat(doubtful.find()).isTrue();
            piece = doubtful.group(1);
            String token = room.token("/gift");
            isKept(room.post(page + "/change", token, "what", "drop", "piece", piece));
            room.kill();
        }
        try (RunningWorkroom room = opened()) {
            assertThat(room.see(page).body()).contains("class=\"piece dropped\" data-piece=\"" + piece + "\"");
            String token = room.token("/gift");
            isKept(room.post(page + "/accept", token));
            room.kill();
        }
        try (RunningWorkroom room = opened()) {
            assertThat(room.see("/stash").body()).contains("4 pieces", "add 4 pieces from a photograph");
            assertThat(room.see(page).body()).contains("leave out piece " + piece, "Take 0 pieces in");
        }
    }

    @Test
    @Tag("long")
    void a_piece_drawn_in_is_there_after_the_kill_as_it_was_drawn() throws IOException {
        try (RunningWorkroom room = opened()) {
            HttpResponse<String> sent =
                    room.send("/stash/photo", room.token("/gift"), "picture", TestPhotographs.few(), "sheet", "a4");
            page = sent.headers().firstValue("Location").orElseThrow();
            while (room.see(page).body().contains("id=\"going\"")) {
                assertThat(room.see("/gift").statusCode()).isEqualTo(200);
            }
            HttpResponse<String> drawn = room.post(
                    page + "/change",
                    room.token("/gift"),
                    "what",
                    "draw",
                    "corners",
                    "40.5,30.5,2.25 340.5,30.5,1.50 340.5,330.5,1.50 40.5,330.5,9.00");
            isKept(drawn);
            page = drawn.headers().firstValue("Location").orElseThrow();
            room.kill();
        }
        String before;
        try (RunningWorkroom room = opened()) {
            before = close(room);
            assertThat(before).contains("Drawn in by you", "placed roughly");
            assertThat(outline(before)).isEqualTo("40.5,30.5 340.5,30.5 340.5,330.5 40.5,330.5");
            isKept(room.post(page.replaceFirst("\\?.*", "/undo"), room.token("/gift")));
            room.kill();
        }
        try (RunningWorkroom room = opened()) {
            assertThat(room.see(page).body()).doesNotContain("id=\"close\"");
            isKept(room.post(page.replaceFirst("\\?.*", "/redo"), room.token("/gift")));
            room.kill();
        }
        try (RunningWorkroom room = opened()) {
            assertThat(close(room)).isEqualTo(before);
        }
    }

    /** What the page says of the piece that is looked at closely. */
    private String close(RunningWorkroom room) throws IOException {
        String body = room.see(page).body();
        int from = body.indexOf("id=\"close\"");
        assertThat(from).isPositive();
        return body.substring(from, body.indexOf("</section>", from))
                .replaceAll("name=\"(token|version)\" value=\"\\w+\"", "");
    }

    private static String outline(String close) {
        Matcher points = Pattern.compile("class=\"case\" points=\"([^\"]+)\"").matcher(close);
        assertThat(points.find()).isTrue();
        return points.group(1);
    }

    private static void isKept(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
    }
}
