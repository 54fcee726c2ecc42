package hearthcloth.store;

import hearthcloth.store.journal.ChangeJournal;
import hearthcloth.store.journal.ClothFact;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.journal.UndoRedo;
import hearthcloth.store.json.BenchText;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
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
                KeptCloth.read(row.getString("document")),
                row.getString("changed"),
                row.getLong("version"));
    }

    /** Stores a new cloth under {@code id}; undone from the shelf. */
    public void keep(String id, String name, Project document) {
        jdbi.useTransaction(handle ->
                stands(handle, id, "kept " + name, new ClothFact.Stands(name, KeptCloth.text(document), 1, true)));
    }

    private void stands(Handle handle, String id, String label, ClothFact.Stands fact) {
        replay(handle, id, fact);
        Thing cloth = Thing.cloth(id);
        new ChangeJournal(handle, clock)
                .add(new ChangeJournal.Fact(label, cloth.word(), fact.text()), Set.of(cloth, Thing.SHELF));
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
            return Optional.of(new SavedCloth(id, now.name(), KeptCloth.read(document), now.changed(), version));
        }));
    }

    static Optional<Project> document(Handle handle, String id) {
        return handle.createQuery("select document from cloth where id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .findOne()
                .map(KeptCloth::read);
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
    public SavedCloth save(SavedCloth was, String label, Project document) {
        return jdbi.inTransaction(handle -> {
            String before = unchanged(handle, was);
            DocumentEdit edit = DocumentEdit.of(before, KeptCloth.text(document));
            return booked(handle, was, label, edit, edit.text());
        });
    }

    /**
     * Records what happened to a cloth on the bench.
     *
     * @throws StoreException as {@link #save}
     */
    public SavedCloth happened(SavedCloth was, String label, BenchFact fact) {
        return jdbi.inTransaction(handle -> {
            String before = unchanged(handle, was);
            // The text of an early Hearthcloth lacks fields; it is written anew once, which is an edit like any other.
            String plain = KeptCloth.text(was.document());
            ClothFact.Worked worked = new ClothFact.Worked(fact, false);
            DocumentEdit edit = DocumentEdit.of(before, worked(plain, worked));
            return booked(handle, was, label, edit, before.equals(plain) ? worked.text() : edit.text());
        });
    }

    private static String worked(String document, ClothFact.Worked fact) {
        BenchText bench = BenchText.of(document);
        fact.on(bench);
        return bench.text();
    }

    private record Kept(long version, String document) {}

    /** The cloth's text, which must still be that of the version at hand. */
    private static String unchanged(Handle handle, SavedCloth was) {
        Kept now = handle.createQuery("select version, document from cloth where id = :id")
                .bind("id", was.id())
                .map((row, context) -> new Kept(row.getLong(1), row.getString(2)))
                .findOne()
                .orElseThrow(() -> new StoreException(StoringSentences.gone("CLOTH")));
        if (now.version() != was.version()) {
            throw new StoreException(StoringSentences.changed(Argument.text(""), "CLOTH"));
        }
        return now.document();
    }

    private SavedCloth booked(Handle handle, SavedCloth was, String label, DocumentEdit edit, String what) {
        edited(handle, was.id(), edit);
        Thing cloth = Thing.cloth(was.id());
        new ChangeJournal(handle, clock).add(new ChangeJournal.Fact(label, cloth.word(), what), Set.of(cloth));
        return new SavedCloth(
                was.id(),
                was.name(),
                KeptCloth.read(text(handle, was.id())),
                clock.instant().toString(),
                was.version() + 1);
    }

    /** Does what a fact says, and keeps how a document was before. */
    void replay(Handle handle, String id, ClothFact fact) {
        if (fact instanceof ClothFact.Edited edited) {
            edited(handle, id, edited.edit());
        } else if (fact instanceof ClothFact.Worked worked) {
            String before = text(handle, id);
            edited(handle, id, DocumentEdit.of(before, worked(before, worked)));
        } else if (fact instanceof ClothFact.Renamed renamed) {
            handle.createUpdate("update cloth set name = :name where id = :id")
                    .bind("name", renamed.is())
                    .bind("id", id)
                    .execute();
        } else if (fact instanceof ClothFact.Stands stands && stands.comes()) {
            handle.createUpdate("insert into cloth (id, name, document, changed, version)"
                            + " values (:id, :name, :doc, :now, :version)")
                    .bind("id", id)
                    .bind("name", stands.name())
                    .bind("doc", stands.document())
                    .bind("now", clock.instant().toString())
                    .bind("version", stands.version())
                    .execute();
        } else {
            for (String rows : List.of("cloth where id", "past where cloth")) {
                handle.createUpdate("delete from " + rows + " = :id")
                        .bind("id", id)
                        .execute();
            }
        }
    }

    private void edited(Handle handle, String id, DocumentEdit edit) {
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

    /** Gives a cloth another name; undone from its page, by both names where no change of a page's own name is under way. */
    public void rename(String id, String name) {
        jdbi.useTransaction(handle -> find(id).filter(was -> !was.name().equals(name))
                .ifPresent(was -> {
                    ClothFact.Renamed fact = new ClothFact.Renamed(was.name(), name);
                    replay(handle, id, fact);
                    Thing cloth = Thing.cloth(id);
                    new ChangeJournal(handle, clock)
                            .add(
                                    new ChangeJournal.Fact(was.name() + " → " + name, cloth.word(), fact.text()),
                                    Set.of(cloth));
                }));
    }

    /** Takes a cloth off the shelf, from which that is undone. */
    public void remove(String id) {
        jdbi.useTransaction(handle -> find(id).ifPresent(was -> stands(
                handle,
                id,
                "removed " + was.name(),
                new ClothFact.Stands(was.name(), text(handle, id), was.version() + 1, false))));
    }

    /** The name of what undo on the shelf would take back: a cloth that came or went, with what rests on it. */
    public Optional<String> undoable() {
        return turns().next(Thing.SHELF, false);
    }

    /** The name of what redo on the shelf would do again. */
    public Optional<String> redoable() {
        return turns().next(Thing.SHELF, true);
    }

    /** Brings back the last cloth that went, or takes off the last that came; the change's name, empty without one. */
    public Optional<String> undo() {
        return turns().turn(Thing.SHELF, false);
    }

    /** Does again what was undone last on the shelf. */
    public Optional<String> redo() {
        return turns().turn(Thing.SHELF, true);
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
