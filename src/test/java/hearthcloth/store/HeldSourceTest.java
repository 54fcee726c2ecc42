package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.store.json.FileGoneException;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.Project;
import hearthcloth.work.Promises;
import hearthcloth.work.Purpose;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The maker's file: held, closed to others, its copies thinned out, and the cloths in it. */
class HeldSourceTest {

    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
    private static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);
    private static final Plan PLAN = Planned.plans(Stashes.scraps(60, 3), 24, 1).get(0);

    private final Path folder;

    HeldSourceTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private Path path() {
        return folder.resolve("work.db");
    }

    private static long settings(HeldSource source) throws SQLException {
        try (Connection connection = source.getConnection();
                var statement = connection.createStatement();
                var rows = statement.executeQuery("select count(*) from setting")) {
            return rows.getLong(1);
        }
    }

    private static Project document() {
        return Project.of(DesignEdits.settled(PLAN, Order.ROUND), PLAN, Purpose.NOTHING);
    }

    @Test
    void a_file_that_was_moved_is_noticed_and_written_anew_as_it_was() throws Exception {
        Store.open(path(), CLOCK).set("unit", "in");
        try (HeldSource source = new HeldSource(path(), SqliteFile.usual())) {
            source.hold();
            long before = settings(source);
            assertThatThrownBy(source::writeAnew).hasMessage("Your work lies in its place. Nothing was changed.");
            for (String left : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(folder.resolve("work.db" + left));
            }
            assertThatThrownBy(source::getConnection).isInstanceOf(FileGoneException.class);
            assertThat(path()).doesNotExist();

            source.writeAnew();

            assertThat(settings(source)).isEqualTo(before);
            assertThat(Store.open(path(), CLOCK).setting("unit")).contains("in");
        }
    }

    @Test
    void another_file_in_its_place_is_neither_used_nor_overwritten() throws Exception {
        Store.open(path(), CLOCK).set("unit", "in");
        try (HeldSource source = new HeldSource(path(), SqliteFile.usual())) {
            source.hold();
            Files.move(path(), folder.resolve("moved.db"));
            Files.writeString(path(), "somebody else's");
            assertThatThrownBy(source::getConnection).isInstanceOf(FileGoneException.class);
            assertThatThrownBy(source::writeAnew)
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Move it away first; nothing was changed.");
            assertThat(path()).hasContent("somebody else's");
        }
    }

    @Test
    void files_and_folders_are_closed_to_all_but_their_owner() throws IOException {
        Path open = Files.createFile(folder.resolve("open"));
        Files.setPosixFilePermissions(open, PosixFilePermissions.fromString("rw-rw-r--"));
        Path read = Files.createFile(folder.resolve("read"));
        Files.setPosixFilePermissions(read, PosixFilePermissions.fromString("r--r-----"));
        OwnerOnly.file(open);
        OwnerOnly.file(read);
        OwnerOnly.file(folder.resolve("new"));
        OwnerOnly.folder(folder.resolve("deep").resolve("folder"));

        assertThat(permissions("open")).isEqualTo("rw-------");
        assertThat(permissions("read")).isEqualTo("r--------");
        assertThat(permissions("new")).isEqualTo("rw-------");
        assertThat(permissions("deep/folder")).isEqualTo("rwx------");
    }

    private String permissions(String name) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(name)));
    }

    private static SafetyCopy copy(int place, Duration after, SafetyCopy.Reason reason) {
        return new SafetyCopy("copy " + place, place, NOON.plus(after), reason, 1);
    }

    /** Five daily copies are kept; the newest come first. */
    @Test
    void of_a_kind_the_oldest_beyond_what_is_kept_are_too_old() {
        List<SafetyCopy> all = new ArrayList<>();
        for (int place = 9; place > 0; place--) {
            all.add(copy(
                    place, Duration.ofDays(place), place == 4 ? SafetyCopy.Reason.ASKED : SafetyCopy.Reason.DAILY));
        }
        assertThat(CopyAge.tooOld(all, SafetyCopy.Reason.DAILY))
                .extracting(SafetyCopy::place)
                .containsExactly(3, 2, 1);
        assertThat(CopyAge.tooOld(all, SafetyCopy.Reason.ASKED)).isEmpty();
    }

    /** Copies that a wrong clock dated three years ahead are a time by themselves, and so is each year apart from the next. */
    @Test
    void copies_of_times_a_year_apart_are_counted_each_by_themselves_and_three_times_are_kept() {
        List<SafetyCopy> all = new ArrayList<>();
        for (int place = 14; place > 8; place--) {
            all.add(copy(place, Duration.ofDays(1_100 + place), SafetyCopy.Reason.DAILY));
        }
        for (int place = 8; place > 2; place--) {
            all.add(copy(place, Duration.ofDays(place), SafetyCopy.Reason.DAILY));
        }
        assertThat(CopyAge.tooOld(all, SafetyCopy.Reason.DAILY))
                .extracting(SafetyCopy::place)
                .containsExactly(9, 3);

        List<SafetyCopy> years = new ArrayList<>();
        for (int place = 5; place > 0; place--) {
            years.add(copy(place, Duration.ofDays(400L * place), SafetyCopy.Reason.DAILY));
        }
        assertThat(CopyAge.tooOld(years, SafetyCopy.Reason.DAILY))
                .extracting(SafetyCopy::place)
                .containsExactly(2, 1);
        List<SafetyCopy> near = List.of(
                copy(2, Duration.ofDays(365), SafetyCopy.Reason.DAILY),
                copy(1, Duration.ZERO, SafetyCopy.Reason.DAILY));
        assertThat(CopyAge.tooOld(near, SafetyCopy.Reason.DAILY)).isEmpty();
    }

    @Test
    void what_a_cloth_counts_on_is_known_until_its_version_changes() {
        Store store = Store.open(path(), CLOCK);
        store.cloths().keep("dawn", "Dawn", document());
        Jdbi jdbi = Jdbi.create("jdbc:sqlite:" + path());
        CountedPieces counted = new CountedPieces();
        Promises promises = jdbi.withHandle(counted::promises);

        assertThat(promises.cloths()).singleElement().satisfies(one -> {
            assertThat(one.name()).isEqualTo("Dawn");
            assertThat(one.pieces())
                    .isEqualTo(PLAN.cuts().stream().map(PieceCut::piece).toList());
        });
        // a document that cannot be read any more is not read as long as the version says that nothing changed
        jdbi.useHandle(handle -> handle.execute("update cloth set document = 'gone', name = 'Dusk'"));
        assertThat(jdbi.withHandle(counted::promises).cloths().get(0).name()).isEqualTo("Dusk");
        jdbi.useHandle(handle -> handle.execute("update cloth set version = version + 1"));
        assertThatThrownBy(() -> jdbi.withHandle(counted::promises)).isInstanceOf(IllegalArgumentException.class);
        jdbi.useHandle(handle -> handle.execute("delete from cloth"));
        assertThat(jdbi.withHandle(counted::promises).cloths()).isEmpty();
    }

    @Test
    void a_cloth_that_is_cut_counts_on_nothing_any_more() {
        Store store = Store.open(path(), CLOCK);
        ClothBook book = store.cloths();
        book.keep("dawn", "Dawn", document());
        SavedCloth was = book.find("dawn").orElseThrow();
        assertThat(book.promises().cloths()).hasSize(1);
        book.save(was, "cut", was.document().with(was.document().life().at(Project.Stage.CUT)));
        assertThat(book.promises().cloths()).isEmpty();
    }

    @Test
    void a_book_keeps_each_cloth_with_its_past_and_refuses_a_state_that_was_overtaken() {
        ClothBook book = Store.open(path(), CLOCK).cloths();
        book.keep("dawn", "Dawn", document());
        SavedCloth first = book.find("dawn").orElseThrow();
        SavedCloth second = book.save(first, "step 1 sewn", sewn(first, 1));
        SavedCloth third = book.save(second, "step 2 sewn", sewn(second, 2));

        assertThat(third.version()).isEqualTo(first.version() + 2);
        assertThat(book.find("dawn")).contains(third);
        assertThat(book.as("dawn", first.version()).map(SavedCloth::document)).contains(first.document());
        assertThat(book.as("dawn", third.version())).contains(third);
        assertThat(book.as("dawn", first.version() - 1)).isEmpty();
        assertThatThrownBy(() -> book.save(first, "late", sewn(first, 3)))
                .hasMessageStartingWith("This cloth has meanwhile been changed in another window.");
        assertThat(book.undoable("dawn")).contains("step 2 sewn");
        assertThat(book.undo("dawn")).contains("step 2 sewn");
        assertThat(book.redoable("dawn")).contains("step 2 sewn");
        assertThat(book.find("dawn").map(SavedCloth::document)).contains(second.document());
        assertThat(book.redo("dawn")).contains("step 2 sewn");

        book.rename("dawn", "Morning");
        assertThat(book.all()).extracting(SavedCloth::name).containsExactly("Morning");
        book.remove("dawn");
        assertThat(book.find("dawn")).isEqualTo(Optional.empty());
        assertThat(book.undoable("dawn")).isEmpty();
        assertThatThrownBy(() -> book.save(third, "late", sewn(third, 3)))
                .hasMessage("This cloth has been removed in another window.");
    }

    private static Project sewn(SavedCloth cloth, int steps) {
        return cloth.document().with(new Project.Bench(Set.of(), Set.of(), steps, List.of(), List.of()));
    }

    @Test
    void no_more_than_twenty_past_states_are_kept() {
        ClothBook book = Store.open(path(), CLOCK).cloths();
        book.keep("dawn", "Dawn", document());
        SavedCloth now = book.find("dawn").orElseThrow();
        long first = now.version();
        for (int i = 1; i <= 25; i++) {
            now = book.save(now, "step " + i, sewn(now, i % 3 + 1));
        }
        assertThat(book.as("dawn", now.version() - 19)).isPresent();
        assertThat(book.as("dawn", now.version() - 21)).isEmpty();
        assertThat(book.as("dawn", first)).isEmpty();
    }
}
