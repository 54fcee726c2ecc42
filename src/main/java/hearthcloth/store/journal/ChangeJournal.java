package hearthcloth.store.journal;

import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Change;
import hearthcloth.work.Journal;
import hearthcloth.work.Thing;
import hearthcloth.work.Turn;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The one journal of a workroom, in its database: every change in order, so that it can be undone and redone. */
public record ChangeJournal(Handle handle, Clock clock) {

    /** How many changes are kept; an older one can no longer be undone. */
    static final int MOST = 10_000;

    private static final String ROWS = "select change.number, change.label, change.undone, touched.thing from change"
            + " join touched on touched.change = change.number where ";

    /** What a change did to one book: the stash, a cloth or a photograph. */
    public record Fact(String label, String book, String what) {}

    /**
     * Adds what was done to one book. Within {@link OneChange} it becomes part of the change that is under way, else a
     * change of its own. Changes that were undone before it on the same things can no longer be redone.
     */
    public void add(Fact fact, Set<Thing> touched) {
        forget(touched);
        Optional<Long> open = OneChange.of(handle).number();
        long number = open.orElseGet(() -> begun(fact.label()));
        OneChange.of(handle).goesOn(number);
        handle.createUpdate("insert into fact (change, place, book, what) values (:change,"
                        + " (select count(*) from fact where change = :change), :book, :what)")
                .bind("change", number)
                .bind("book", fact.book())
                .bind("what", fact.what())
                .execute();
        PreparedBatch batch = handle.prepareBatch("insert into touched (change, thing) values (:change, :thing)"
                + " on conflict (change, thing) do nothing");
        touched.forEach(thing ->
                batch.bind("change", number).bind("thing", thing.word()).add());
        batch.execute();
    }

    private long begun(String label) {
        long number = handle.createQuery("select coalesce(max(number), 0) + 1 from change")
                .mapTo(Long.class)
                .one();
        handle.createUpdate("insert into change (number, label, done, undone) values (:number, :label, :now, 0)")
                .bind("number", number)
                .bind("label", OneChange.of(handle).label().orElse(label))
                .bind("now", clock.instant().toString())
                .execute();
        thin(number - MOST);
        return number;
    }

    /** Drops changes that are too old to undo, so that a file does not grow for ever. */
    private void thin(long last) {
        if (last > 0) {
            for (String rows : List.of("touched where change", "fact where change", "change where number")) {
                handle.createUpdate("delete from " + rows + " <= :last")
                        .bind("last", last)
                        .execute();
            }
        }
    }

    private void forget(Set<Thing> touched) {
        for (Change change : new Journal(rows("change.undone > 0", 0)).forgottenBy(touched)) {
            for (String rows : List.of("touched where change", "fact where change", "change where number")) {
                handle.createUpdate("delete from " + rows + " = :number")
                        .bind("number", change.number())
                        .execute();
            }
        }
    }

    /** Removes all that was ever done to a book; what the same changes did to others stays. */
    public void remove(String book, Thing thing) {
        handle.createUpdate("delete from fact where book = :book")
                .bind("book", book)
                .execute();
        handle.createUpdate("delete from touched where thing = :thing")
                .bind("thing", thing.word())
                .execute();
        handle.execute("delete from touched where not exists (select 1 from fact where fact.change = touched.change)");
        handle.execute("delete from change where not exists (select 1 from fact where fact.change = change.number)");
    }

    /** A change while the rows of what it touched are read one by one; a line of ten thousand pieces touches as many. */
    private record Gathered(long number, String label, long undone, Set<Thing> touched) {

        Change change() {
            return new Change(number, label, touched, undone);
        }
    }

    private List<Change> rows(String which, long from) {
        Map<Long, Gathered> found = new LinkedHashMap<>();
        handle.createQuery(ROWS + which + " and change.number >= :from order by change.number")
                .bind("from", from)
                .map((row, context) -> found.computeIfAbsent(row.getLong("number"), number -> gathered(number, row))
                        .touched()
                        .add(Thing.read(row.getString("thing"))))
                .list();
        return new ArrayList<>(found.values().stream().map(Gathered::change).toList());
    }

    private static Gathered gathered(long number, ResultSet row) {
        try {
            return new Gathered(number, row.getString("label"), row.getLong("undone"), new HashSet<>());
        } catch (SQLException e) {
            throw new StoreException(StoringSentences.journal(), e);
        }
    }

    /** What undo would take back or, where {@code again}, redo would do again, for someone who looks at this. */
    Optional<Turn> next(Thing seen, boolean again) {
        if (again) {
            return new Journal(rows("change.undone > 0", 0)).redo(seen);
        }
        long last = handle.createQuery("select coalesce(max(change.number), 0) from change join touched on"
                        + " touched.change = change.number where touched.thing = :thing and change.undone = 0")
                .bind("thing", seen.word())
                .mapTo(Long.class)
                .one();
        return last == 0 ? Optional.empty() : new Journal(rows("change.undone = 0", last)).undo(seen);
    }

    /** Takes back, or does again, all of a turn. */
    void turn(Turn turn, boolean again, Replay replay) {
        List<Change> order = new ArrayList<>(turn.changes());
        if (!again) {
            java.util.Collections.reverse(order);
        }
        long undo = again ? 0 : new Journal(rows("change.undone > 0", 0)).nextUndo();
        for (Change change : order) {
            facts(change, again).forEach(fact -> replay.replay(handle, fact, again));
            handle.createUpdate("update change set undone = :undone where number = :number")
                    .bind("undone", undo)
                    .bind("number", change.number())
                    .execute();
        }
    }

    private List<Fact> facts(Change change, boolean again) {
        return handle.createQuery(
                        "select book, what from fact where change = :change order by place " + (again ? "asc" : "desc"))
                .bind("change", change.number())
                .map((row, context) -> new Fact(change.label(), row.getString("book"), row.getString("what")))
                .list();
    }
}
