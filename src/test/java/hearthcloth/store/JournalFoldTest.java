package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.store.archive.Archive;
import hearthcloth.store.archive.ArchiveTest;
import hearthcloth.store.json.StoreException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@link JournalFold}: a file whose journal does not fit its tables is opened to be read; nothing in it is overwritten. */
class JournalFoldTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("work.db");
    }

    private void damaged(String statement) {
        Jdbi.create("jdbc:sqlite:" + file()).useHandle(handle -> handle.execute(statement));
    }

    private Store opened() {
        return Store.open(file(), CLOCK);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update piece set width = width + 1 where position = 3",
                "delete from piece where position = 5",
                "update cloth set document = replace(document, '\"row\":', '\"row\":1')",
                "update cloth set name = 'other'",
                "delete from cloth",
                "update fact set what = 'nothing' where place = 0",
                "update fact set what = '{\"later\":true}'",
                "update fact set book = 'loom:3' where change = 1",
            })
    void nothing_is_changed_until_it_is_mended_and_a_safety_copy_mends_it(String damage) {
        Store store = ArchiveTest.filled(opened());
        store.cloths().rename(store.cloths().all().get(0).id(), "Dawn");
        Archive before = Archive.of(store);
        SafetyCopy copy = store.copies().orElseThrow().make(SafetyCopy.Reason.ASKED);
        store.close();
        damaged(damage);

        Store again = opened();
        assertThat(again.copies().orElseThrow().trouble())
                .hasValueSatisfying(told -> assertThat(told.english())
                        .startsWith("The record of what was done does not fit what is kept")
                        .endsWith("or put a safety copy back."));
        List<Piece> pieces = again.stash().whole().pieces();
        assertThatThrownBy(() -> again.stash()
                        .edit(new StashEdit(
                                "add", List.of(), Stashes.scraps(1, 99).pieces())))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("Nothing is changed in this file");
        assertThatThrownBy(() -> again.set("ruler", "EIGHTHS")).isInstanceOf(StoreException.class);
        assertThatThrownBy(() -> again.stash().undo()).isInstanceOf(StoreException.class);
        assertThat(again.stash().whole().pieces()).isEqualTo(pieces);

        again.copies().orElseThrow().restore(copy.name());
        assertThat(again.copies().orElseThrow().trouble()).isEmpty();
        assertThat(Archive.of(again)).isEqualTo(before);
        again.set("ruler", "EIGHTHS");
    }

    @Test
    void a_whole_file_is_opened_as_it_is() {
        Store store = ArchiveTest.filled(opened());
        store.cloths().rename(store.cloths().all().get(0).id(), "Dawn");
        store.cloths().remove(store.cloths().all().get(1).id());
        store.stash().undo();
        store.close();
        assertThat(opened().copies().orElseThrow().trouble()).isEmpty();
    }
}
