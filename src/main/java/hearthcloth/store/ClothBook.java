package hearthcloth.store;

import hearthcloth.store.journal.ChangeJournal;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.journal.UndoRedo;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.store.json.StoreException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The cloths she designed and made, with every change undoable. Thread-safe. */
public final class ClothBook {

    /** Past states of a cloth that are kept for pages that are out of date. */
    private static final int PAST = 20;

    private final Jdbi jdbi;
    private final Clock clock;
    private final UndoRedo turns;

    ClothBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
        this.turns = new UndoRedo(jdbi, clock);
    }

    private static String book(String id) {
        return "cloth:" + id;
    }

    /** All cloths, the last changed first. */
    public List<SavedCloth> all() {
        return jdbi.withHandle(handle -> handle.createQuery("select * from cloth order by changed desc, id")
                .map((row, context) -> cloth(row))
                .list());
    }

    public Optional<SavedCloth> find(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("select * from cloth where id = :id")
                .bind("id", id)
                .map((row, context) -> cloth(row))
                .findOne());
    }

    private static SavedCloth cloth(ResultSet row) throws SQLException {
        return new SavedCloth(
                row.getString("id"),
                row.getString("name"),
                ClothDocument.read(row.getString("document")),
                row.getString("changed"),
                row.getLong("version"));
    }

    /** Stores a new cloth under {@code id}. */
    public void keep(String id, String name, ClothDocument document) {
        jdbi.useTransaction(handle -> {
            handle.createUpdate(
                            "insert into cloth (id, name, document, changed, version) values (:id, :name, :doc, :now, 1)")
                    .bind("id", id)
                    .bind("name", name)
                    .bind("doc", document.text())
                    .bind("now", clock.instant().toString())
                    .execute();
            remember(handle, id);
        });
    }

    /** The cloth as it was at a version; empty where that version is no longer kept. */
    public Optional<SavedCloth> as(String id, long version) {
        return jdbi.withHandle(handle -> handle.createQuery("select cloth.id, cloth.name, past.document, cloth.changed,"
                        + " past.version from past join cloth on cloth.id = past.cloth"
                        + " where past.cloth = :id and past.version = :version")
                .bind("id", id)
                .bind("version", version)
                .map((row, context) -> cloth(row))
                .findOne());
    }

    private static void remember(Handle handle, String id) {
        handle.createUpdate("insert into past (cloth, version, document) select id, version, document from cloth"
                        + " where id = :id")
                .bind("id", id)
                .execute();
        handle.createUpdate("delete from past where cloth = :id and version <="
                        + " (select version from cloth where id = :id) - :most")
                .bind("id", id)
                .bind("most", PAST)
                .execute();
    }

    /**
     * Saves a changed cloth and records how to undo the change.
     *
     * @throws StoreException where the cloth was changed elsewhere in the meantime; nothing is changed then
     */
    public SavedCloth save(SavedCloth was, String label, ClothDocument document) {
        return jdbi.inTransaction(handle -> {
            SavedCloth now = handle.createQuery("select * from cloth where id = :id")
                    .bind("id", was.id())
                    .map((row, context) -> cloth(row))
                    .findOne()
                    .orElseThrow(() -> new StoreException("This cloth has been removed in another window."));
            if (now.version() != was.version()) {
                throw new StoreException(
                        "This cloth has meanwhile been changed in another window. Nothing was changed; look again.");
            }
            write(handle, was.id(), document.text());
            new ChangeJournal(handle, clock)
                    .add(book(was.id()), label, new DocumentEdit(was.document().text(), document.text()).text());
            return new SavedCloth(
                    was.id(), was.name(), document, clock.instant().toString(), was.version() + 1);
        });
    }

    private void write(Handle handle, String id, String document) {
        handle.createUpdate("update cloth set document = :doc, changed = :now, version = version + 1 where id = :id")
                .bind("doc", document)
                .bind("now", clock.instant().toString())
                .bind("id", id)
                .execute();
        remember(handle, id);
    }

    public void rename(String id, String name) {
        jdbi.useTransaction(handle -> handle.createUpdate("update cloth set name = :name where id = :id")
                .bind("name", name)
                .bind("id", id)
                .execute());
    }

    public void remove(String id) {
        jdbi.useTransaction(handle -> {
            handle.createUpdate("delete from cloth where id = :id")
                    .bind("id", id)
                    .execute();
            handle.createUpdate("delete from past where cloth = :id")
                    .bind("id", id)
                    .execute();
            handle.createUpdate("delete from deed where book = :book")
                    .bind("book", book(id))
                    .execute();
        });
    }

    /** The label of the change that undo would reverse. */
    public Optional<String> undoable(String id) {
        return turns.next(book(id), false);
    }

    /** The label of the change that redo would repeat. */
    public Optional<String> redoable(String id) {
        return turns.next(book(id), true);
    }

    /** Undoes the last change; its label, or empty where there is none. */
    public Optional<String> undo(String id) {
        return turns.turnDocument(book(id), false, (handle, document) -> write(handle, id, document));
    }

    /** Redoes the change that was undone last. */
    public Optional<String> redo(String id) {
        return turns.turnDocument(book(id), true, (handle, document) -> write(handle, id, document));
    }
}
