package hearthcloth.cli.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.wish.BadInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

    @TempDir
    private Path parent = Path.of("");

    private static OutputFolder.Proposal saying(String text) {
        return folder -> Files.writeString(folder.resolve("plan.json"), text);
    }

    private static OutputFolder.Proposal failing() {
        return folder -> {
            Files.writeString(folder.resolve("front.svg"), "half a pict");
            throw new IOException("the disk is full");
        };
    }

    private Path out() {
        return parent.resolve("deep").resolve("out");
    }

    private List<String> held(Path folder) throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.map(entry -> String.valueOf(entry.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void numbers_the_proposals_and_makes_missing_folders() throws IOException {
        OutputFolder.of(out().toString()).write(List.of(saying("a"), saying("b")));
        assertThat(held(out())).containsExactly("1", "2");
        assertThat(out().resolve("2/plan.json")).hasContent("b");
        assertThat(held(parent.resolve("deep"))).containsExactly("out");
    }

    @Test
    void planning_again_replaces_the_numbered_folders() throws IOException {
        OutputFolder.of(out().toString()).write(List.of(saying("a"), saying("b"), saying("c")));
        OutputFolder.of(out().toString()).write(List.of(saying("d")));
        assertThat(held(out())).containsExactly("1");
        assertThat(out().resolve("1/plan.json")).hasContent("d");
    }

    @Test
    void a_failure_half_way_leaves_what_was_there() throws IOException {
        OutputFolder.of(out().toString()).write(List.of(saying("a")));
        OutputFolder again = OutputFolder.of(out().toString());
        assertThatThrownBy(() -> again.write(List.of(saying("b"), failing())))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("Nothing was changed");
        assertThat(held(out())).containsExactly("1");
        assertThat(out().resolve("1/plan.json")).hasContent("a");
    }

    @Test
    void a_failure_the_first_time_leaves_nothing() throws IOException {
        Files.createDirectory(parent.resolve("deep"));
        OutputFolder first = OutputFolder.of(out().toString());
        assertThatThrownBy(() -> first.write(List.of(failing()))).isInstanceOf(BadInputException.class);
        assertThat(held(parent.resolve("deep"))).isEmpty();
    }

    @Test
    void a_numbered_folder_with_the_makers_own_notes_is_not_touched() throws IOException {
        OutputFolder.of(out().toString()).write(List.of(saying("a")));
        Files.writeString(out().resolve("1/my notes.txt"), "sewn on Sunday");
        assertThatThrownBy(() -> OutputFolder.of(out().toString())).isInstanceOf(BadInputException.class);
        assertThat(out().resolve("1/my notes.txt")).exists();
    }

    /** What a run leaves that was killed while it put its folders in place. */
    private Path left(List<String> made, List<String> old) throws IOException {
        Path left = Files.createDirectories(out().resolve(".hearthcloth-1"));
        Files.writeString(left.resolve("lock"), "");
        for (String number : made) {
            Files.writeString(
                    Files.createDirectories(left.resolve("new/" + number)).resolve("plan.json"), "new");
        }
        Files.createDirectories(left.resolve("new"));
        Files.createDirectories(left.resolve("old"));
        for (String number : old) {
            Files.writeString(
                    Files.createDirectories(left.resolve("old/" + number)).resolve("plan.json"), "old");
        }
        return left;
    }

    @Test
    void killed_while_the_old_ones_went_out_they_come_back_at_the_next_run() throws IOException {
        OutputFolder.of(out().toString()).write(List.of(saying("a"), saying("b")));
        Files.move(out().resolve("1"), parent.resolve("taken"));
        Path left = left(List.of("1"), List.of());
        Files.move(parent.resolve("taken"), left.resolve("old/1"));

        assertThatThrownBy(() -> OutputFolder.of(out().toString()).write(List.of(failing())))
                .isInstanceOf(BadInputException.class);

        assertThat(held(out())).containsExactly("1", "2");
        assertThat(out().resolve("1/plan.json")).hasContent("a");
    }

    @Test
    void killed_while_the_new_ones_came_in_the_rest_follows_at_the_next_run() throws IOException {
        OutputFolder.of(out().toString()).write(List.of(saying("new")));
        left(List.of("2", "3"), List.of("1", "2"));

        assertThatThrownBy(() -> OutputFolder.of(out().toString()).write(List.of(failing())))
                .isInstanceOf(BadInputException.class);

        assertThat(held(out())).containsExactly("1", "2", "3");
        assertThat(out().resolve("2/plan.json")).hasContent("new");
    }

    @Test
    void what_another_run_still_writes_stays() throws IOException {
        try (HiddenFolder other = HiddenFolder.in(Files.createDirectories(out()))) {
            Files.createDirectory(other.made());
            OutputFolder.of(out().toString()).write(List.of(saying("a")));
            assertThat(other.made()).exists();
        }
        assertThat(held(out())).containsExactly("1");
    }
}
