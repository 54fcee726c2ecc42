package hearthcloth.store;

import hearthcloth.store.journal.ChangeJournal;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.journal.UndoRedo;
import hearthcloth.store.json.KeptPhoto;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Thing;
import hearthcloth.work.photo.PhotoSorting;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Photographs of scraps, what was read from them and what she made of that, with every change undoable. Thread-safe.
 */
public final class PhotoBook {

    /**
     * The most bytes of all photographs together; beyond that, photographs whose pieces are all in the stash are
     * removed.
     */
    public static final long MOST_BYTES = 160L << 20;

    private final Jdbi jdbi;
    private final Clock clock;

    PhotoBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** All photographs, the latest first. */
    public List<SavedPhoto> all() {
        return jdbi.withHandle(handle -> handle.createQuery("select * from photograph order by kept desc, id")
                .map((row, context) -> photo(row))
                .list());
    }

    public Optional<SavedPhoto> find(String id) {
        return jdbi.withHandle(handle -> found(handle, id));
    }

    private static Optional<SavedPhoto> found(Handle handle, String id) {
        return handle.createQuery("select * from photograph where id = :id")
                .bind("id", id)
                .map((row, context) -> photo(row))
                .findOne();
    }

    private static SavedPhoto photo(ResultSet row) throws SQLException {
        String document = row.getString("document");
        String scale = row.getString("scale");
        return new SavedPhoto(
                row.getString("id"),
                row.getString("sheet"),
                row.getString("kept"),
                row.getString("refused"),
                document.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new SavedPhoto.Read(KeptPhoto.scale(scale), KeptPhoto.sorting(document))),
                row.getLong("version"));
    }

    /**
     * Stores a photograph as it was sent.
     *
     * @throws StoreException where photographs that are still in use take up all the room
     */
    public void keep(String id, String sheet, byte[] picture) {
        jdbi.useTransaction(handle -> {
            makeRoom(handle, picture.length);
            handle.createUpdate("insert into photograph (id, sheet, kept, refused, scale, document, version)"
                            + " values (:id, :sheet, :now, '', '', '', 1)")
                    .bind("id", id)
                    .bind("sheet", sheet)
                    .bind("now", clock.instant().toString())
                    .execute();
            handle.createUpdate("insert into photograph_file (photograph, picture, size) values (:id, :picture, :size)")
                    .bind("id", id)
                    .bind("picture", picture)
                    .bind("size", (long) picture.length)
                    .execute();
        });
    }

    private void makeRoom(Handle handle, long more) {
        List<String> done = handle.createQuery("select id from photograph where refused <> '' or exists"
                        + " (select 1 from photograph_taken where photograph = photograph.id) order by kept, id")
                .mapTo(String.class)
                .list();
        for (String id : done) {
            if (room(handle) >= more) {
                return;
            }
            remove(handle, id);
        }
        if (room(handle) < more) {
            throw new StoreException(StoringSentences.photosFull());
        }
    }

    private static long room(Handle handle) {
        return MOST_BYTES
                - handle.createQuery("select coalesce(sum(size), 0) from photograph_file")
                        .mapTo(Long.class)
                        .one();
    }

    /** The bytes as they were sent; empty where the photograph was removed. */
    public Optional<byte[]> file(String id) {
        return picture("photograph_file", id);
    }

    /** The picture reduced for the screen, a JPEG; empty before it was read. */
    public Optional<byte[]> screen(String id) {
        return picture("photograph_screen", id);
    }

    private Optional<byte[]> picture(String table, String id) {
        return jdbi.withHandle(handle -> handle.createQuery("select picture from " + table + " where photograph = :id")
                .bind("id", id)
                .map((row, context) -> row.getBytes("picture"))
                .findOne());
    }

    /** Stores what was read from it. Nothing happens where it was removed or read in the meantime. */
    public void read(String id, SavedPhoto.Read read, byte[] screen) {
        jdbi.useTransaction(handle -> {
            int told = handle.createUpdate("update photograph set scale = :scale, document = :document, refused = '',"
                            + " version = version + 1 where id = :id and document = ''")
                    .bind("scale", KeptPhoto.text(read.scale()))
                    .bind("document", KeptPhoto.text(read.sorting()))
                    .bind("id", id)
                    .execute();
            if (told == 1) {
                handle.createUpdate("insert into photograph_screen (photograph, picture) values (:id, :picture)"
                                + " on conflict (photograph) do update set picture = excluded.picture")
                        .bind("id", id)
                        .bind("picture", screen)
                        .execute();
            }
        });
    }

    /** Stores that nothing could be read from it. */
    public void refuse(String id, String reason) {
        jdbi.useTransaction(handle -> handle.createUpdate(
                        "update photograph set refused = :reason, version = version + 1 where id = :id and document = ''")
                .bind("reason", reason)
                .bind("id", id)
                .execute());
    }

    /** Marks it to be read once more, with another sheet. Nothing happens where it was read. */
    public void again(String id, String sheet) {
        jdbi.useTransaction(handle -> handle.createUpdate(
                        "update photograph set sheet = :sheet, refused = '', version = version + 1"
                                + " where id = :id and document = ''")
                .bind("sheet", sheet)
                .bind("id", id)
                .execute());
    }

    /**
     * Saves a change and records how to undo it.
     *
     * @throws StoreException where it was changed elsewhere in the meantime; nothing is changed then
     */
    public void save(SavedPhoto was, String label, PhotoSorting sorting) {
        jdbi.useTransaction(handle -> {
            SavedPhoto now =
                    found(handle, was.id()).orElseThrow(() -> new StoreException(StoringSentences.gone("PHOTO")));
            if (now.version() != was.version()) {
                throw new StoreException(StoringSentences.changed(Argument.text(""), "PHOTO"));
            }
            DocumentEdit edit = DocumentEdit.of(text(handle, was.id()), KeptPhoto.text(sorting));
            replay(handle, was.id(), edit);
            Thing photograph = Thing.photograph(was.id());
            new ChangeJournal(handle, clock)
                    .add(new ChangeJournal.Fact(label, photograph.word(), edit.text()), Set.of(photograph));
        });
    }

    private static String text(Handle handle, String id) {
        return handle.createQuery("select document from photograph where id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .one();
    }

    void replay(Handle handle, String id, DocumentEdit edit) {
        handle.createUpdate("update photograph set document = :document, version = version + 1 where id = :id")
                .bind("document", edit.appliedTo(text(handle, id)))
                .bind("id", id)
                .execute();
    }

    /** The keys of its pieces that are in the stash. */
    public Set<String> taken(String id) {
        return Set.copyOf(new HashSet<>(jdbi.withHandle(
                handle -> handle.createQuery("select piece from photograph_taken where photograph = :id")
                        .bind("id", id)
                        .mapTo(String.class)
                        .list())));
    }

    /** Removes it with everything that was read from it; what is in the stash stays there. */
    public void remove(String id) {
        jdbi.useTransaction(handle -> remove(handle, id));
    }

    private void remove(Handle handle, String id) {
        for (String table : List.of("photograph_file", "photograph_screen", "photograph_taken")) {
            handle.createUpdate("delete from " + table + " where photograph = :id")
                    .bind("id", id)
                    .execute();
        }
        handle.createUpdate("delete from photograph where id = :id")
                .bind("id", id)
                .execute();
        new ChangeJournal(handle, clock).remove(Thing.photograph(id).word(), Thing.photograph(id));
    }

    /** The name of what undo would take back, with what rests on it. */
    public Optional<String> undoable(String id) {
        return turns().next(Thing.photograph(id), false);
    }

    /** The name of what redo would do again. */
    public Optional<String> redoable(String id) {
        return turns().next(Thing.photograph(id), true);
    }

    /** Undoes the last change with all that rests on it; its name, or empty where there is none. */
    public Optional<String> undo(String id) {
        return turns().turn(Thing.photograph(id), false);
    }

    /** Redoes what was undone last. */
    public Optional<String> redo(String id) {
        return turns().turn(Thing.photograph(id), true);
    }

    private UndoRedo turns() {
        return Store.turns(jdbi, clock);
    }
}
