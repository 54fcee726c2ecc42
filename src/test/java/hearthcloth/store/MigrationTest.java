package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hearthcloth.measure.Length;
import hearthcloth.stash.Piece;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.Project;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.flywaydb.core.api.MigrationVersion;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A workroom of every earlier form, with work in it, is opened today and nothing of it is lost. */
class MigrationTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    /** Every form but that of today, as the migrations name them. */
    static List<String> earlier() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/db/migration"))) {
            return files.map(file -> file.getFileName().toString().replaceFirst("^V(.*)__.*", "$1"))
                    .map(version -> version.replace('_', '.'))
                    .filter(version -> !version.equals(SqliteFile.FORM))
                    .sorted(Comparator.comparing(MigrationVersion::fromVersion))
                    .toList();
        }
    }

    /** A file of that form, made of the statements that SQLite wrote of one. */
    private Path workroom(String form) throws IOException {
        Path file = folder.resolve("work.db");
        try (InputStream in = MigrationTest.class.getResourceAsStream("form-" + form + ".sql")) {
            assertThat(in).as("a workroom of form " + form + " to be opened").isNotNull();
            String script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Jdbi.create("jdbc:sqlite:" + file)
                    .useTransaction(handle -> handle.createScript(script).execute());
        }
        return file;
    }

    private static List<Map<String, Object>> rows(Path file, String query) {
        return Jdbi.create("jdbc:sqlite:" + file)
                .withHandle(handle -> handle.createQuery(query).mapToMap().list());
    }

    /** What was done to each book, in order; up to form 4 it lay in the table "deed". */
    private static List<Map<String, Object>> deeds(Path file) {
        boolean old = !rows(file, "select name from sqlite_master where name = 'deed'")
                .isEmpty();
        return rows(
                file,
                old
                        ? "select book, change as what from deed order by number"
                        : "select book, what from fact order by change, place");
    }

    @ParameterizedTest
    @MethodSource("earlier")
    void every_earlier_form_is_brought_to_todays_with_all_its_work(String form) throws IOException {
        Path file = workroom(form);
        List<Map<String, Object>> pieces = rows(file, "select * from piece order by position, id");
        List<Map<String, Object>> cloths = rows(file, "select * from cloth order by id");
        List<Map<String, Object>> deeds = deeds(file);
        assertThat(pieces).hasSizeGreaterThan(20);
        assertThat(cloths).hasSize(2);
        assertThat(deeds).hasSizeGreaterThan(3);

        Store store = Store.open(file, CLOCK);

        assertThat(rows(file, "select * from piece order by position, id")).isEqualTo(pieces);
        assertThat(rows(file, "select * from cloth order by id")).isEqualTo(cloths);
        assertThat(rows(file, "select book, what from fact order by fact.change, place"))
                .isEqualTo(deeds);
        assertThat(store.stash().whole().pieces())
                .extracting(Piece::id)
                .isEqualTo(pieces.stream().map(row -> row.get("id")).toList());
        for (Map<String, Object> row : cloths) {
            SavedCloth cloth =
                    store.cloths().find(String.valueOf(row.get("id"))).orElseThrow();
            JsonNode was = JSON.readTree(String.valueOf(row.get("document")));
            JsonNode is = JSON.readTree(KeptCloth.text(cloth.document()));
            was.properties().forEach(field -> assertThat(is.get(field.getKey())).isEqualTo(field.getValue()));
            assertThat(store.cloths().as(cloth.id(), cloth.version())).contains(cloth);
        }
        assertThat(store.setting("ruler")).contains("EIGHTHS");
        assertThat(store.swatches().find("Oat linen")).hasValueSatisfying(swatch -> {
            assertThat(swatch.kind()).isEqualTo("image/png");
            assertThat(swatch.across()).isEqualTo(form.equals("1") ? Length.cm(10) : Length.cm(7));
        });
    }

    @ParameterizedTest
    @MethodSource("earlier")
    void what_was_done_before_can_be_undone_after(String form) throws IOException {
        Path file = workroom(form);
        Store store = Store.open(file, CLOCK);
        List<Piece> all = store.stash().whole().pieces();
        int undone = 0;
        while (store.stash().undo().isPresent()) {
            undone++;
        }
        assertThat(undone).isGreaterThan(1);
        assertThat(store.stash().isEmpty()).isTrue();
        assertThat(store.cloths().all()).noneMatch(MigrationTest::isCut);
        while (store.stash().redo().isPresent()) {
            undone--;
        }
        assertThat(undone).isZero();
        assertThat(store.stash().whole().pieces()).isEqualTo(all);
    }

    private static boolean isCut(SavedCloth cloth) {
        return cloth.document().life().stage() != Project.Stage.DESIGNED;
    }

    @Test
    void a_cloth_that_was_cut_before_gives_its_pieces_back_with_one_undo_after() throws IOException {
        Store store = Store.open(workroom("4"), CLOCK);
        List<Piece> cut = store.stash().whole().pieces();
        assertThat(store.cloths().find("a1b2c3"))
                .hasValueSatisfying(cloth -> assertThat(isCut(cloth)).isTrue());

        assertThat(store.cloths().undo("a1b2c3")).contains("cut Two halves");

        assertThat(store.cloths().find("a1b2c3"))
                .hasValueSatisfying(cloth -> assertThat(isCut(cloth)).isFalse());
        assertThat(store.stash().whole().pieces()).hasSize(cut.size() + 5);
        assertThat(store.stash().redo()).contains("cut Two halves");
        assertThat(store.stash().whole().pieces()).isEqualTo(cut);
    }

    @ParameterizedTest
    @MethodSource("earlier")
    void a_copy_of_the_earlier_form_is_made_first_and_can_be_put_back(String form) throws IOException {
        Path file = workroom(form);
        Store store = Store.open(file, CLOCK);
        SafetyCopies copies = store.copies().orElseThrow();
        SafetyCopy before = copies.all().stream()
                .filter(copy -> copy.reason() == SafetyCopy.Reason.UPDATE)
                .findFirst()
                .orElseThrow();
        assertThat(rows(copies.folder().resolve(before.name()), "select version from flyway_schema_history"))
                .last()
                .satisfies(row -> assertThat(row.get("version")).isEqualTo(form));
        List<Piece> all = store.stash().whole().pieces();
        store.stash().edit(new StashEdit("use up all", all, List.of()));

        copies.restore(before.name());
        assertThat(store.stash().whole().pieces()).isEqualTo(all);
        assertThat(store.cloths().all()).hasSize(2);
    }

    @Test
    void a_file_that_cannot_be_copied_first_is_not_brought_up_to_date() throws IOException {
        Path file = workroom("1");
        Files.writeString(SafetyCopies.folder(file), "in the way");
        assertThatThrownBy(() -> Store.open(file, CLOCK))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("No safety copy could be made");
        assertThat(rows(file, "select version from flyway_schema_history")).hasSize(1);
        assertThat(rows(file, "select * from piece")).isNotEmpty();
    }
}
