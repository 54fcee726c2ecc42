package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.SafetyCopy.Reason;
import hearthcloth.store.json.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Copies are whole, few, made in time, and one is put back by one action that loses nothing. */
class SafetyCopiesTest {

    private static final Instant MONDAY = Instant.parse("2026-05-04T10:00:00Z");
    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);

    private final Path file;

    SafetyCopiesTest(@TempDir Path folder) {
        file = folder.resolve("work.db");
    }

    private Store on(int day) {
        return Store.open(file, Clock.fixed(MONDAY.plus(Duration.ofDays(day)), ZoneOffset.UTC));
    }

    private static void add(Store store, int centimetres) {
        int number = store.stash().nextPiece();
        Size size = Size.square(Length.cm(centimetres));
        Piece piece = new Piece(String.valueOf(number), OAT, size, Piece.Washed.YES, number);
        store.stash().edit(new StashEdit("add " + centimetres, List.of(), List.of(piece)));
    }

    private static SafetyCopies copies(Store store) {
        return store.copies().orElseThrow();
    }

    @Test
    void the_first_opening_of_a_day_makes_a_copy_and_later_ones_make_none() {
        add(on(0), 10);
        assertThat(copies(on(0)).all()).hasSize(1);
        assertThat(copies(on(0)).all()).hasSize(1);
        assertThat(copies(on(1)).all()).extracting(SafetyCopy::reason).containsExactly(Reason.DAILY, Reason.DAILY);
    }

    @Test
    void a_workroom_left_open_over_night_makes_its_copy_too() {
        Store store = on(0);
        add(store, 10);
        SafetyCopies tomorrow =
                new SafetyCopies(fileOf(store), Clock.fixed(MONDAY.plus(Duration.ofDays(1)), ZoneOffset.UTC));
        tomorrow.daily();
        tomorrow.daily();
        assertThat(tomorrow.all()).hasSize(1);
    }

    private SqliteFile fileOf(Store store) {
        return copies(store).file();
    }

    @Test
    void a_copy_is_the_whole_work_of_its_moment() {
        Store store = on(0);
        add(store, 10);
        SafetyCopy copy = copies(store).make(Reason.ASKED);
        add(store, 20);
        Path there = copies(store).folder().resolve(copy.name());
        assertThat(Store.open(there, Clock.systemUTC()).stash().whole().pieces())
                .hasSize(1);
        assertThat(Store.open(there, Clock.systemUTC()).stash().undoable()).contains("add 10");
        assertThat(copy.bytes()).isPositive();
    }

    @Test
    void five_of_a_kind_are_kept_and_no_stranger_is_touched() throws IOException {
        for (int day = 0; day < 9; day++) {
            add(on(day), 10 + day);
        }
        Path stranger = Files.writeString(copies(on(8)).folder().resolve("notes.txt"), "mine");
        on(9);
        assertThat(copies(on(9)).all())
                .extracting(copy -> copy.made().toString().substring(0, 10))
                .containsExactly("2026-05-13", "2026-05-12", "2026-05-11", "2026-05-10", "2026-05-09");
        assertThat(stranger).hasContent("mine");
    }

    @Test
    void putting_back_brings_the_old_state_and_keeps_the_new_one_as_a_copy() {
        Store store = on(0);
        add(store, 10);
        SafetyCopy old = copies(store).make(Reason.ASKED);
        List<Piece> before = store.stash().whole().pieces();
        add(store, 20);
        store.stash().undo();
        add(store, 30);
        List<Piece> later = store.stash().whole().pieces();

        copies(store).restore(old.name());
        assertThat(store.stash().whole().pieces()).isEqualTo(before);
        assertThat(store.stash().undoable()).contains("add 10");
        add(store, 40);
        assertThat(store.stash().whole().pieces()).hasSize(2);

        SafetyCopy newest = copies(store).all().stream()
                .filter(copy -> copy.reason() == Reason.RESTORE)
                .findFirst()
                .orElseThrow();
        copies(store).restore(newest.name());
        assertThat(store.stash().whole().pieces()).isEqualTo(later);
    }

    @Test
    void the_copy_being_put_back_is_never_thinned_out() {
        Store store = on(0);
        add(store, 10);
        SafetyCopy first = copies(store).make(Reason.RESTORE);
        copies(store).make(Reason.RESTORE);
        copies(store).make(Reason.RESTORE);
        copies(store).restore(first.name());
        assertThat(copies(store).all()).extracting(SafetyCopy::name).contains(first.name());
        assertThat(store.stash().whole().pieces()).hasSize(1);
    }

    @Test
    void a_damaged_copy_and_a_name_that_is_none_change_nothing() throws IOException {
        Store store = on(0);
        add(store, 10);
        SafetyCopy copy = copies(store).make(Reason.ASKED);
        add(store, 20);
        Path there = copies(store).folder().resolve(copy.name());
        byte[] bytes = Files.readAllBytes(there);
        Files.write(there, Arrays.copyOf(bytes, bytes.length / 2));

        assertThatThrownBy(() -> copies(store).restore(copy.name())).hasMessageContaining("damaged");
        assertThatThrownBy(() -> copies(store).restore("../work.db")).hasMessageContaining("no such copy");
        assertThat(store.stash().whole().pieces()).hasSize(2);
    }

    @Test
    void where_no_copy_can_be_made_it_is_said_and_nothing_is_put_back() throws IOException {
        Store store = on(0);
        add(store, 10);
        SafetyCopy copy = copies(store).make(Reason.ASKED);
        add(store, 20);
        Path folder = copies(store).folder();
        Path aside = folder.resolveSibling("aside");
        Files.move(folder, aside);
        Files.writeString(folder, "in the way");

        assertThatThrownBy(() -> copies(store).make(Reason.ASKED))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("No safety copy could be made");
        Store tomorrow = on(1);
        assertThat(copies(tomorrow).trouble())
                .hasValueSatisfying(words -> assertThat(words.english()).contains("No safety copy could be made"));
        assertThat(tomorrow.stash().whole().pieces()).hasSize(2);
        assertThatThrownBy(() -> copies(store).restore(copy.name())).isInstanceOf(StoreException.class);
        assertThat(store.stash().whole().pieces()).hasSize(2);
    }

    @Test
    void a_damaged_file_is_set_aside_and_the_last_copy_takes_its_place() throws IOException {
        add(on(0), 10);
        add(on(1), 20);
        Files.deleteIfExists(file.resolveSibling("work.db-wal"));
        byte[] noise = new byte[8_000];
        Files.write(file, noise);
        assertThatThrownBy(() -> on(1)).isInstanceOf(StoreException.class);

        SafetyCopies.putBack(file, "last", Clock.fixed(MONDAY, ZoneOffset.UTC));
        assertThat(on(1).stash().whole().pieces()).hasSize(1);
        assertThat(file.resolveSibling("work.db.aside-2026-05-04T100000Z")).hasBinaryContent(noise);
        assertThatThrownBy(() -> SafetyCopies.putBack(file, "none", Clock.systemUTC()))
                .hasMessageContaining("There is no safety copy \"none\"");
    }

    private List<String> days() {
        return SafetyCopies.all(file).stream()
                .map(copy -> copy.made().toString().substring(0, 10))
                .toList();
    }

    @Test
    void days_that_a_wrong_clock_made_up_push_no_true_day_out_and_count_by_the_order_of_making() {
        for (int day = 0; day < 5; day++) {
            add(on(day), 10 + day);
        }
        for (int day = 0; day < 7; day++) {
            add(on(16_000 + day), 30 + day);
        }
        add(on(5), 50);
        on(6);

        assertThat(days().stream().filter(day -> day.startsWith("2026")))
                .containsExactly("2026-05-10", "2026-05-09", "2026-05-08", "2026-05-07", "2026-05-06");
        assertThat(days()).startsWith("2026-05-10", "2026-05-09", "2070-02-28").hasSize(10);
        Clock now = Clock.fixed(MONDAY.plus(Duration.ofDays(6)), ZoneOffset.UTC);
        assertThat(SafetyCopies.putBack(file, "last", now).made()).isEqualTo(now.instant());
    }

    @Test
    void a_clock_that_was_years_ahead_keeps_no_later_day_without_its_copy() throws IOException {
        add(on(0), 10);
        Instant[] now = {MONDAY.plus(Duration.ofDays(16_000))};
        SafetyCopies copies = new SafetyCopies(fileOf(on(0)), new Moved(now));
        Path folder = copies.folder();
        Files.move(folder, folder.resolveSibling("aside"));
        Files.writeString(folder, "in the way");
        copies.daily();
        assertThat(copies.trouble()).isPresent();
        Files.delete(folder);
        now[0] = MONDAY.plus(Duration.ofDays(1));
        copies.daily();
        assertThat(copies.all()).hasSize(1);
        assertThat(copies.trouble()).isEmpty();
    }

    /** A clock that is set. */
    private static final class Moved extends Clock {

        private final Instant[] now;

        private Moved(Instant[] now) {
            super();
            this.now = now;
        }

        @Override
        public Instant instant() {
            return now[0];
        }

        @Override
        public java.time.ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }
    }

    @Test
    void copies_of_an_earlier_hearthcloth_count_as_older_than_all_that_have_a_place() throws IOException {
        add(on(0), 10);
        add(on(1), 20);
        Path folder = SafetyCopies.folder(file);
        Files.move(folder.resolve(copies(on(1)).all().get(0).name()), folder.resolve("2071-01-01T100000Z-daily-01.db"));
        on(2);
        assertThat(days()).containsExactly("2026-05-06", "2071-01-01");
        assertThat(copies(on(2)).restore("2071-01-01T100000Z-daily-01.db").place())
                .isZero();
    }

    @Test
    void at_any_date_it_opens_and_works() {
        for (String date : new String[] {"1970-01-01", "1999-12-31", "2038-01-20", "2071-02-28", "9999-12-30"}) {
            Store store = Store.open(file, Clock.fixed(Instant.parse(date + "T12:00:00Z"), ZoneOffset.UTC));
            int before = store.stash().whole().pieces().size();
            add(store, 10);
            assertThat(store.stash().whole().pieces()).as(date).hasSize(before + 1);
            assertThat(copies(store).trouble()).as(date).isEmpty();
        }
    }
}
