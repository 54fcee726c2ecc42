package hearthcloth.store;

import hearthcloth.store.journal.ChangeJournal;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.journal.UndoRedo;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.Promises;
import hearthcloth.work.Thing;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The cloths she designed and made, with every change undoable. Thread-safe. */
public final class ClothBook {

    /** Past states of a cloth that are kept for pages that are out of date. */
    private static final int PAST = 20;

    private final Jdbi jdbi;
    private final Clock clock;
    private final CountedPieces counted;

    ClothBook(Jdbi jdbi, Clock clock, CountedPieces counted) {
        this.jdbi = jdbi;
        this.clock = clock;
        this.counted = counted;
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

    /** What the cloths that are planned and not cut yet count on. */
    public Promises promises() {
        return jdbi.withHandle(counted::promises);
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
        jdbi.useTransaction(handle -> handle.createUpdate(
                        "insert into cloth (id, name, document, changed, version) values (:id, :name, :doc, :now, 1)")
                .bind("id", id)
                .bind("name", name)
                .bind("doc", document.text())
                .bind("now", clock.instant().toString())
                .execute());
    }

    /** The cloth as it was at a version; empty where that version is no longer kept. */
    public Optional<SavedCloth> as(String id, long version) {
        return jdbi.inTransaction(handle -> find(id).flatMap(now -> {
            List<DocumentEdit> back = handle.createQuery("select document from past where cloth = :id"
                            + " and version >= :version and version < :now order by version desc")
                    .bind("id", id)
                    .bind("version", version)
                    .bind("now", now.version())
                    .map((row, context) -> DocumentEdit.read(row.getString("document")))
                    .list();
            if (back.size() != now.version() - version) {
                return Optional.empty();
            }
            String document = text(handle, id);
            for (DocumentEdit edit : back) {
                document = edit.appliedTo(document);
            }
            return Optional.of(new SavedCloth(id, now.name(), ClothDocument.read(document), now.changed(), version));
        }));
    }

    static Optional<ClothDocument> document(Handle handle, String id) {
        return handle.createQuery("select document from cloth where id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .findOne()
                .map(ClothDocument::read);
    }

    private static String text(Handle handle, String id) {
        return handle.createQuery("select document from cloth where id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .one();
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
            DocumentEdit edit = DocumentEdit.of(text(handle, was.id()), document.text());
            replay(handle, was.id(), edit);
            Thing cloth = Thing.cloth(was.id());
            new ChangeJournal(handle, clock)
                    .add(new ChangeJournal.Fact(label, cloth.word(), edit.text()), Set.of(cloth));
            return new SavedCloth(
                    was.id(), was.name(), document, clock.instant().toString(), was.version() + 1);
        });
    }

    /** Changes the document, and keeps how it was before. */
    void replay(Handle handle, String id, DocumentEdit edit) {
        handle.createUpdate("insert into past (cloth, version, document)"
                        + " select id, version, :edit from cloth where id = :id")
                .bind("id", id)
                .bind("edit", edit.reversed().text())
                .execute();
        handle.createUpdate("update cloth set document = :doc, changed = :now, version = version + 1 where id = :id")
                .bind("doc", edit.appliedTo(text(handle, id)))
                .bind("now", clock.instant().toString())
                .bind("id", id)
                .execute();
        handle.createUpdate("delete from past where cloth = :id and version <="
                        + " (select version from cloth where id = :id) - :most")
                .bind("id", id)
                .bind("most", PAST)
                .execute();
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
            new ChangeJournal(handle, clock).remove(Thing.cloth(id).word(), Thing.cloth(id));
        });
    }

    /** The name of what undo would take back, with what rests on it. */
    public Optional<String> undoable(String id) {
        return turns().next(Thing.cloth(id), false);
    }

    /** The name of what redo would do again. */
    public Optional<String> redoable(String id) {
        return turns().next(Thing.cloth(id), true);
    }

    /** Undoes the last change with all that rests on it; its name, or empty where there is none. */
    public Optional<String> undo(String id) {
        return turns().turn(Thing.cloth(id), false);
    }

    /** Redoes what was undone last. */
    public Optional<String> redo(String id) {
        return turns().turn(Thing.cloth(id), true);
    }

    private UndoRedo turns() {
        return Store.turns(jdbi, clock);
    }
}
