package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.TestPhotographs;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    private static void isKept(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
    }
}
