package hearthcloth.store.journal;

import java.time.Clock;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Undo and redo of a book, each as one transaction. */
public record UndoRedo(Jdbi jdbi, Clock clock) {

    /** The label of the change that undo would reverse or, where {@code again}, redo would repeat. */
    public Optional<String> next(String book, boolean again) {
        return jdbi.withHandle(
                handle -> new ChangeJournal(handle, clock).last(book, again).map(ChangeJournal.Deed::label));
    }

    /** Undoes the last change, or redoes it, by {@code act}; its label, or empty where there is none. */
    public Optional<String> turn(String book, boolean again, BiConsumer<Handle, ChangeJournal.Deed> act) {
        return jdbi.inTransaction(
                handle -> new ChangeJournal(handle, clock).turn(book, again, deed -> act.accept(handle, deed)));
    }

    /** The same for a book that is one document, which {@code write} replaces. */
    public Optional<String> turnDocument(String book, boolean again, BiConsumer<Handle, String> write) {
        return turn(book, again, (handle, deed) -> {
            DocumentEdit edit = DocumentEdit.read(deed.change());
            write.accept(handle, again ? edit.after() : edit.before());
        });
    }
}
