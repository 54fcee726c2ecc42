package hearthcloth.store.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Thing;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The journal in its database, with books that only write down what is done to them. */
class ChangeJournalTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Thing DAWN = Thing.cloth("dawn");
    private static final Thing DUSK = Thing.cloth("dusk");

    private final Jdbi jdbi;
    private final List<String> replayed = new ArrayList<>();
    private final Replay replay =
            (handle, fact, again) -> replayed.add((again ? "+" : "-") + fact.book() + " " + fact.what());
    private final UndoRedo turns;

    ChangeJournalTest(@TempDir Path folder) {
        jdbi = Jdbi.create("jdbc:sqlite:" + folder.resolve("journal.db"));
        jdbi.setTransactionHandler(WholeChange.inFile(jdbi.getTransactionHandler(), Sentence::none));
        jdbi.useHandle(handle -> {
            handle.execute("create table change (number bigint primary key, label text not null, done text not null,"
                    + " undone bigint not null)");
            handle.execute("create table fact (change bigint not null, place bigint not null, book text not null,"
                    + " what text not null, primary key (change, place))");
            handle.execute("create table touched (change bigint not null, thing text not null,"
                    + " primary key (change, thing))");
        });
        turns = new UndoRedo(jdbi, CLOCK, replay);
    }

    private void add(String label, String what, Thing... touched) {
        jdbi.useTransaction(handle -> new ChangeJournal(handle, CLOCK)
                .add(new ChangeJournal.Fact(label, touched[0].word(), what), Set.of(touched)));
    }

    private long rows(String table) {
        return jdbi.withHandle(handle -> handle.createQuery("select count(*) from " + table)
                .mapTo(Long.class)
                .one());
    }

    @Test
    void the_last_change_of_what_she_looks_at_is_taken_back_and_done_again() {
        add("sew 1", "a", DAWN);
        add("lock 1A", "b", DUSK);

        assertThat(turns.next(DAWN, false)).contains("sew 1");
        assertThat(turns.next(DAWN, true)).isEmpty();
        assertThat(turns.turn(DAWN, false)).contains("sew 1");
        assertThat(turns.next(DAWN, false)).isEmpty();
        assertThat(turns.next(DUSK, false)).contains("lock 1A");
        assertThat(turns.turn(DAWN, true)).contains("sew 1");
        assertThat(turns.turn(DAWN, true)).isEmpty();
        assertThat(replayed).containsExactly("-" + DAWN.word() + " a", "+" + DAWN.word() + " a");
    }

    @Test
    void what_rests_on_a_change_goes_with_it_newest_first_and_comes_again_oldest_first() {
        add("cut Dawn", "a", DAWN, Thing.piece("3"));
        add("use up 3", "b", Thing.STASH, Thing.piece("3"));

        assertThat(turns.turn(DAWN, false)).contains("cut Dawn (use up 3)");
        turns.turn(DAWN, true);

        String stash = Thing.STASH.word();
        assertThat(replayed)
                .containsExactly(
                        "-" + stash + " b", "-" + DAWN.word() + " a", "+" + DAWN.word() + " a", "+" + stash + " b");
    }

    @Test
    void edits_of_several_books_are_one_change_whose_facts_are_taken_back_in_reverse() {
        jdbi.useTransaction(handle -> OneChange.named(handle, "cut Dawn", () -> {
            ChangeJournal journal = new ChangeJournal(handle, CLOCK);
            journal.add(new ChangeJournal.Fact("one", "cloth", "a"), Set.of(DAWN));
            journal.add(new ChangeJournal.Fact("two", "stash", "b"), Set.of(Thing.STASH, Thing.piece("3")));
            return true;
        }));
        add("later", "c", DUSK);

        assertThat(rows("change")).isEqualTo(2);
        assertThat(turns.next(Thing.STASH, false)).contains("cut Dawn");
        turns.turn(DAWN, false);
        assertThat(replayed).containsExactly("-stash b", "-cloth a");
    }

    @Test
    void a_new_change_forgets_what_was_taken_back_from_the_same_thing_alone() {
        add("sew 1", "a", DAWN);
        add("lock 1A", "b", DUSK);
        turns.turn(DAWN, false);
        turns.turn(DUSK, false);
        add("sew 2", "c", DAWN);

        assertThat(turns.next(DAWN, true)).isEmpty();
        assertThat(turns.next(DUSK, true)).contains("lock 1A");
        assertThat(rows("change")).isEqualTo(2);
        assertThat(rows("fact")).isEqualTo(2);
        assertThat(rows("touched")).isEqualTo(2);
    }

    @Test
    void what_a_book_did_is_removed_with_it_and_the_rest_of_the_change_stays() {
        jdbi.useTransaction(handle -> OneChange.named(handle, "cut Dawn", () -> {
            ChangeJournal journal = new ChangeJournal(handle, CLOCK);
            journal.add(new ChangeJournal.Fact("one", DAWN.word(), "a"), Set.of(DAWN));
            journal.add(new ChangeJournal.Fact("two", "stash", "b"), Set.of(Thing.STASH));
            return true;
        }));
        add("sew 1", "c", DAWN);
        jdbi.useTransaction(handle -> new ChangeJournal(handle, CLOCK).remove(DAWN.word(), DAWN));

        assertThat(turns.next(DAWN, false)).isEmpty();
        assertThat(rows("change")).isEqualTo(1);
        turns.turn(Thing.STASH, false);
        assertThat(replayed).containsExactly("-stash b");
    }

    @Test
    void no_more_than_ten_thousand_changes_are_kept() {
        jdbi.useTransaction(handle ->
                handle.execute("insert into change (number, label, done, undone) values (10001, 'old', '', 0)"));
        add("sew 1", "a", DAWN);
        jdbi.useTransaction(handle -> handle.execute(
                "insert into change (number, label, done, undone) values (2, 'older', '', 0), (3, 'x', '', 0)"));
        // the next has number 10003, and 3 is then one too many
        add("sew 2", "b", DAWN);

        List<Long> kept = jdbi.withHandle(handle -> handle.createQuery("select number from change order by number")
                .mapTo(Long.class)
                .list());
        assertThat(kept).containsExactly(10_001L, 10_002L, 10_003L);
    }

    @Test
    void a_change_that_throws_leaves_nothing_and_a_fault_of_the_database_is_told_in_words() {
        assertThatThrownBy(() -> jdbi.useTransaction(handle -> {
                    new ChangeJournal(handle, CLOCK).add(new ChangeJournal.Fact("sew 1", "cloth", "a"), Set.of(DAWN));
                    throw new StoreException("The pieces are gone.");
                }))
                .hasMessage("The pieces are gone.");
        assertThat(rows("change")).isZero();

        assertThatThrownBy(() ->
                        jdbi.useTransaction(handle -> handle.execute("insert into change values (1, null, '', 0)")))
                .isInstanceOf(StoreException.class)
                .hasMessage(
                        "Another window was quicker with something under the same number. Nothing was changed; try again.");
    }

    /** Each writer of a schema first takes the lock of it; a file needs no such statement. */
    @Test
    void in_a_schema_a_change_first_waits_for_its_turn() {
        Jdbi studio = Jdbi.create("jdbc:sqlite::memory:");
        studio.setTransactionHandler(WholeChange.inSchema(studio.getTransactionHandler()));
        // SQLite knows no advisory locks, so the statement that waits is refused, and told
        assertThatThrownBy(() -> studio.useTransaction(handle -> handle.execute("select 1")))
                .isInstanceOf(StoreException.class)
                .hasMessageEndingWith("Nothing was changed; try again.");
        studio.setTransactionHandler(
                WholeChange.inFile(new org.jdbi.v3.core.transaction.LocalTransactionHandler(), Sentence::none));
        studio.useTransaction(handle -> handle.execute("select 1"));
    }
}
