package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.words.Language;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second start finds the workroom that is open on the same file. */
class OpenMarkTest {

    @TempDir
    Path folder;

    private Path data() {
        return folder.resolve("work.db");
    }

    @Test
    void only_one_marks_a_file_and_the_other_reads_where_it_is() {
        try (OpenMark mark = OpenMark.set(data()).orElseThrow()) {
            assertThat(OpenMark.address(data())).isEmpty();
            mark.say("http://localhost:4732/");
            assertThat(OpenMark.set(data())).isEmpty();
            assertThat(OpenMark.address(data())).contains("http://localhost:4732/");
        }
        assertThat(OpenMark.address(data())).isEmpty();
        OpenMark.set(data()).orElseThrow().close();
    }

    @Test
    void a_mark_left_by_a_program_that_died_keeps_nobody_out() throws IOException {
        Files.writeString(folder.resolve("work.db.open"), "http://localhost:9/\n");
        OpenMark.set(data()).orElseThrow().close();
    }

    @Test
    void a_second_start_shows_the_first_and_opens_nothing() {
        try (OpenMark mark = OpenMark.set(data()).orElseThrow()) {
            mark.say("http://localhost:4799/");
            assertThat(run(Optional.empty(), false))
                    .isEqualTo("0 The workroom is open already at http://localhost:4799/");
            assertThat(run(Optional.of("last"), false)).startsWith("2 ").contains("close it first");
            assertThat(run(Optional.empty(), true)).startsWith("2 ").contains("close it first");
            assertThat(data()).doesNotExist();
        }
    }

    private String run(Optional<String> restore, boolean lan) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
        int code = new Opening(
                        0,
                        Optional.of(data().toString()),
                        false,
                        new Opening.Start(restore, false),
                        new Opening.Network(lan, false, Optional.empty()),
                        Language.ENGLISH)
                .run(stream, stream);
        return code + " " + said.toString(StandardCharsets.UTF_8).strip();
    }
}
