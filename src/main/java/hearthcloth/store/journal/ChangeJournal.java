package hearthcloth.store.journal;

import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;

/** The changes made to each book, in order, so that they can be undone and redone. */
public record ChangeJournal(Handle handle, Clock clock) {

    /** The most changes kept for each book. */
    private static final int MOST = 200;

    /**
     * One change. {@code number} orders the changes, {@code label} names it for the maker, {@code change} holds what is
     * needed to reverse it.
     */
    public record Deed(long number, String label, String change) {}

    /** Adds a change; changes that were undone before it can no longer be redone. */
    public void add(String book, String label, String change) {
        handle.createUpdate("delete from deed where book = :book and undone = 1")
                .bind("book", book)
                .execute();
        handle.createUpdate("insert into deed (number, book, label, change, undone, done) values"
                        + " ((select coalesce(max(number), 0) + 1 from deed), :book, :label, :change, 0, :now)")
                .bind("book", book)
                .bind("label", label)
                .bind("change", change)
                .bind("now", clock.instant().toString())
                .execute();
        handle.createUpdate("delete from deed where book = :book and number <="
                        + " (select number from deed where book = :book order by number desc limit 1 offset :most)")
                .bind("book", book)
                .bind("most", MOST)
                .execute();
    }

    /** The last change that is in force, or the first that was undone. */
    Optional<Deed> last(String book, boolean undone) {
        return handle.createQuery("select number, label, change from deed where book = :book and undone = :undone"
                        + " order by number " + (undone ? "asc" : "desc") + " limit 1")
                .bind("book", book)
                .bind("undone", undone ? 1 : 0)
                .map((row, context) -> new Deed(row.getLong("number"), row.getString("label"), row.getString("change")))
                .findOne();
    }

    void mark(Deed deed, boolean undone) {
        handle.createUpdate("update deed set undone = :undone where number = :number")
                .bind("undone", undone ? 1 : 0)
                .bind("number", deed.number())
                .execute();
    }

    /** Undoes, or redoes, the last change of a book by {@code act}; its label, or empty where there is none. */
    Optional<String> turn(String book, boolean again, Consumer<Deed> act) {
        Optional<Deed> deed = last(book, again);
        deed.ifPresent(found -> {
            act.accept(found);
            mark(found, !again);
        });
        return deed.map(Deed::label);
    }
}
