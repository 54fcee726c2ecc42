package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hearthcloth.RunningWorkroom;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.json.StoreException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteConfig;

/** What cannot be opened or written is refused in a clear sentence, and the file stays byte by byte as it is. */
class RefusedFileTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("work.db");
    }

    /** Opening it is refused with these words, and nothing of it or beside it is changed. */
    private void refused(Path file, String... words) throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> Store.open(file, CLOCK))
                .isInstanceOf(StoreException.class)
                .message()
                .contains(words)
                .contains("left as it is")
                .doesNotContain("SQL", "Exception", "null");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        assertThat(SafetyCopies.folder(file)).doesNotExist();
    }

    private Jdbi sqlite(Path file) {
        return Jdbi.create("jdbc:sqlite:" + file);
    }

    /** A workroom of sixty pieces, all of it in the one file. */
    private Path workroom() {
        Store.open(file(), CLOCK)
                .stash()
                .edit(new StashEdit("add", List.of(), Stashes.scraps(60, 1).pieces()));
        sqlite(file())
                .useHandle(handle -> handle.createQuery("pragma wal_checkpoint(truncate)")
                        .mapToMap()
                        .list());
        return file();
    }

    @Test
    void random_bytes_and_other_kinds_of_files() throws IOException {
        byte[] noise = new byte[20_000];
        new Random(3).nextBytes(noise);
        refused(Files.write(folder.resolve("noise.db"), noise), "was not written by Hearthcloth");
        refused(
                Files.writeString(folder.resolve("stash.csv"), "fabric,width,length\nOat,4,8\n"),
                "was not written by Hearthcloth");
        byte[] half = Arrays.copyOf("SQLite format 3\0".getBytes(StandardCharsets.US_ASCII), 60);
        refused(Files.write(folder.resolve("half.db"), half), "half.db");
    }

    @Test
    void a_workroom_that_was_cut_off() throws IOException {
        byte[] whole = Files.readAllBytes(workroom());
        for (int part = 1; part < 8; part++) {
            Path cut = folder.resolve("cut-" + part + ".db");
            refused(Files.write(cut, Arrays.copyOf(whole, whole.length * part / 8)), "cut-" + part + ".db");
        }
    }

    @Test
    void a_workroom_whose_pages_were_overwritten() throws IOException {
        byte[] whole = Files.readAllBytes(workroom());
        Random random = new Random(9);
        int page = 4096;
        for (int number = 1; number < whole.length / page; number++) {
            byte[] damaged = whole.clone();
            byte[] noise = new byte[page];
            random.nextBytes(noise);
            System.arraycopy(noise, 0, damaged, number * page, page);
            Path file = Files.write(folder.resolve("page-" + number + ".db"), damaged);
            refused(file, "is damaged");
        }
    }

    @Test
    void a_database_of_another_program() throws IOException {
        Path recipes = folder.resolve("recipes.db");
        sqlite(recipes).useHandle(handle -> handle.execute("create table recipe (name text)"));
        refused(recipes, "belongs to another program");

        Path marked = folder.resolve("marked.db");
        sqlite(marked).useHandle(handle -> {
            handle.execute("pragma application_id = 1196444487");
            handle.execute("create table a (b)");
            handle.execute("drop table a");
        });
        refused(marked, "belongs to another program");

        Path numbered = folder.resolve("numbered.db");
        sqlite(numbered).useHandle(handle -> handle.execute("pragma user_version = 7"));
        refused(numbered, "belongs to another program");

        Path alike = folder.resolve("alike.db");
        sqlite(alike).useHandle(handle -> {
            for (String table : List.of("piece", "cloth", "deed", "setting")) {
                handle.execute("create table " + table + " (id integer)");
            }
        });
        refused(alike, "belongs to another program");
    }

    @Test
    void a_first_start_that_was_killed_before_its_first_table_begins_anew() throws IOException {
        workroom();
        String history = sqlite(file())
                .withHandle(handle -> handle.createQuery(
                                "select sql from sqlite_master where name = 'flyway_schema_history'")
                        .mapTo(String.class)
                        .one());
        Path begun = folder.resolve("begun.db");
        sqlite(begun).useHandle(handle -> handle.execute(history));
        try (Store store = Store.open(begun, Clock.systemUTC())) {
            assertThat(store.stash().isEmpty()).isTrue();
        }
        int mark = sqlite(begun)
                .withHandle(handle -> handle.createQuery("pragma application_id")
                        .mapTo(Integer.class)
                        .one());
        assertThat(mark).isNotZero();
    }

    @Test
    void a_workroom_of_a_newer_hearthcloth() throws IOException {
        workroom();
        sqlite(file())
                .useHandle(handle -> handle.execute("insert into flyway_schema_history"
                        + " select 99, '99', 'more', type, 'V99__more.sql', 1, installed_by, installed_on, 1, success"
                        + " from flyway_schema_history where installed_rank = 1"));
        sqlite(file())
                .useHandle(handle -> handle.createQuery("pragma wal_checkpoint(truncate)")
                        .mapToMap()
                        .list());
        refused(file(), "was written by a newer Hearthcloth");
    }

    @Test
    void the_form_of_today_is_that_of_the_last_migration() {
        int last = sqlite(workroom())
                .withHandle(handle -> handle.createQuery(
                                "select version from flyway_schema_history" + " order by installed_rank desc limit 1")
                        .mapTo(Integer.class)
                        .one());
        assertThat(String.valueOf(last)).isEqualTo(SqliteFile.FORM);
    }

    @Test
    void a_folder_in_its_place_and_a_folder_that_is_none() throws IOException {
        Files.createDirectory(file());
        assertThatThrownBy(() -> Store.open(file(), CLOCK)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> Store.open(folder.resolve("nowhere/work.db"), CLOCK))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("cannot be opened or made");
    }

    /** Root may write what is read-only, so the program is started without that right. */
    private static List<String> withoutRoot() {
        return System.getProperty("user.name").equals("root")
                ? List.of("setpriv", "--bounding-set=-dac_override", "--inh-caps=-dac_override")
                : List.of();
    }

    @Test
    void a_file_that_may_only_be_read() throws IOException {
        byte[] before = Files.readAllBytes(workroom());
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("r--------"));
        try (RunningWorkroom room = RunningWorkroom.started(withoutRoot(), "--data", file().toString())) {
            assertThat(room.words())
                    .contains("cannot be written", "left as it is", "exit 2")
                    .doesNotContain("Exception");
        }
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    private static List<Piece> pieces(int change) {
        return IntStream.rangeClosed(1, 30)
                .mapToObj(i -> piece(30 * change + i))
                .toList();
    }

    private static Piece piece(int number) {
        return new Piece(String.valueOf(number), OAT, Size.square(Length.mm(100 + number)), Piece.Washed.YES, number);
    }

    @Test
    void on_a_full_disk_a_change_is_refused_whole_and_all_before_it_stays() {
        Store.open(file(), CLOCK);
        SQLiteConfig full = SqliteFile.usual();
        full.setMaxPageCount(64);
        StashBook book = SqliteFile.open(file(), full, CLOCK).stash();
        List<Piece> kept = new ArrayList<>();
        StoreException refusal = catchThrowableOfType(StoreException.class, () -> {
            for (int change = 0; change < 10_000; change++) {
                List<Piece> come = pieces(change);
                book.edit(new StashEdit("add", List.of(), come));
                kept.addAll(come);
            }
        });
        assertThat(refusal).hasMessageContaining("The disk is full. Nothing was changed");
        assertThat(kept).hasSizeGreaterThan(100);
        assertThat(book.whole().pieces()).isEqualTo(kept);
        assertThat(Store.open(file(), CLOCK).stash().whole().pieces()).isEqualTo(kept);
    }
}
