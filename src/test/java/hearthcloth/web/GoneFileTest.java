package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.RunningWorkroom;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Her file moved, deleted or replaced under the open workroom, and gone at the next start: said, and never an empty one. */
class GoneFileTest {

    private final Path folder;
    private final Path file;

    GoneFileTest(@TempDir Path folder) {
        this.folder = folder;
        this.file = folder.resolve("work.db");
    }

    private static void line(Visit visit, String line) {
        assertThat(visit.post("/stash/line", "line", line).statusCode()).isEqualTo(303);
    }

    private void away(String how) throws IOException {
        switch (how) {
            case "moved" -> Files.move(file, folder.resolve("elsewhere.db"));
            case "deleted" -> {
                for (String part : new String[] {"", "-wal", "-shm"}) {
                    Files.deleteIfExists(folder.resolve("work.db" + part));
                }
            }
            default -> {
                Files.delete(file);
                Files.writeString(file, "");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"moved", "deleted", "replaced"})
    void it_is_said_at_the_next_change_and_written_anew_when_asked(String how) throws IOException {
        try (Visit visit = new Visit(folder)) {
            line(visit, "3 oat linen 10 x 20 in");
            line(visit, "2 zinnia voile 4 x 8 in");
            String token = visit.token();
            away(how);

            HttpResponse<String> refused =
                    visit.posted("/stash/line", token, new String[] {"line", "7 kelp linen 5 x 5 in"});

            assertThat(refused.statusCode()).isEqualTo(503);
            assertThat(refused.body())
                    .contains("not in its place any more", file.toString(), "7 kelp linen 5 x 5 in", "Write it anew");
            assertThat(visit.see("/stash").statusCode()).isEqualTo(503);
            HttpResponse<String> anew = visit.posted("/anew", token, new String[0]);
            if (how.equals("replaced")) {
                assertThat(anew.body()).contains("Another file lies at");
                assertThat(file).hasContent("");
                return;
            }
            assertThat(anew.statusCode()).isEqualTo(303);
            assertThat(visit.page("/stash")).contains("10 × 20 in", "innia voile");
            line(visit, "7 kelp linen 5 x 5 in");
        }
        try (Visit visit = new Visit(folder)) {
            assertThat(visit.page("/stash")).contains("10 × 20 in", "innia voile", "5 × 5 in");
        }
    }

    @Test
    void a_part_of_a_page_is_told_in_its_own_place() throws IOException {
        try (Visit visit = new Visit(folder)) {
            line(visit, "3 oat linen 10 x 20 in");
            String token = visit.token();
            away("deleted");
            HttpResponse<String> part = visit.posted(
                    "/stash/line", token, new String[] {"line", "7 kelp linen 5 x 5 in"}, "HX-Request", "true");
            assertThat(part.headers().firstValue("HX-Retarget")).hasValue("#said");
            assertThat(part.body()).contains("not in its place").doesNotContain("<html");
        }
    }

    @Test
    void at_the_next_start_it_says_where_it_used_to_lie_and_begins_an_empty_one_only_when_told() throws IOException {
        try (RunningWorkroom room = RunningWorkroom.opened("--data", file.toString())) {
            assertThat(room.post("/stash/line", room.token("/gift"), "line", "3 oat linen 10 x 20 in")
                            .statusCode())
                    .isEqualTo(303);
        }
        away("deleted");
        String said =
                RunningWorkroom.started(List.of(), "--data", file.toString()).words();
        assertThat(said)
                .contains("Your work used to lie in " + file, "is not there any more", "--new")
                .endsWith("exit 2");
        assertThat(file).doesNotExist();
        try (RunningWorkroom room = RunningWorkroom.opened("--new", "--data", file.toString())) {
            assertThat(room.see("/stash").body()).contains("Your table is empty");
        }
    }

    @Test
    void work_and_copies_are_readable_by_their_owner_only() throws IOException {
        Files.createDirectories(folder.resolve("work.db.copies"));
        try (Visit visit = new Visit(folder)) {
            line(visit, "3 oat linen 10 x 20 in");
            visit.post("/copies");
            try (Stream<Path> all = Files.walk(folder)) {
                assertThat(all.filter(path -> !path.equals(folder)).toList())
                        .hasSizeGreaterThan(2)
                        .allSatisfy(path -> assertThat(
                                        Files.getPosixFilePermissions(path).toString())
                                .doesNotContain("GROUP", "OTHERS"));
            }
        }
    }

    @Test
    void a_file_that_others_could_read_is_closed_to_them_when_it_is_opened() throws IOException {
        try (Visit visit = new Visit(folder)) {
            line(visit, "3 oat linen 10 x 20 in");
        }
        Files.setPosixFilePermissions(file, java.nio.file.attribute.PosixFilePermissions.fromString("rw-rw-r--"));
        try (Visit visit = new Visit(folder)) {
            assertThat(visit.page("/stash")).contains("10 × 20 in");
        }
        assertThat(java.nio.file.attribute.PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }
}
