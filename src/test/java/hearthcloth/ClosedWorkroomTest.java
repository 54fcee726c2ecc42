package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workroom closed on its page, as whoever opened it from a menu has to. */
class ClosedWorkroomTest {

    @TempDir
    Path folder;

    @Test
    void closed_on_its_page_it_answers_ends_and_opens_again_with_all_of_her_work() throws IOException {
        String file = folder.resolve("work.db").toString();
        try (RunningWorkroom room = RunningWorkroom.opened("--data", file)) {
            assertThat(room.see("/settings").body()).contains("href=\"/close\"");
            String token = room.token("/gift");
            room.post("/stash/line", token, "line", "3 oat linen 10 x 20 in");

            assertThat(room.post("/close", token).body()).contains("The workroom is closed", "Your work is kept");
            assertThat(room.words()).endsWith("exit 0");
        }
        try (RunningWorkroom room = RunningWorkroom.opened("--data", file)) {
            assertThat(room.see("/stash").body()).contains("at linen");
        }
    }

    @Test
    void from_behind_a_proxy_it_stays_open() {
        try (Visit visit = new Visit(folder)) {
            assertThat(visit.posted("/close", visit.token(), new String[0], "X-Forwarded-For", "192.0.2.7")
                            .body())
                    .contains("runs on another machine");
            assertThat(visit.page("/close")).contains("Closing loses nothing");
        }
    }
}
