package hearthcloth.store;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.journal.ChangeJournal;
import hearthcloth.store.journal.UndoRedo;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Thing;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Her fabric, piece by piece, with every change undoable. Thread-safe. */
public final class StashBook {

    /** The setting that holds the next number for a piece. */
    private static final String NEXT = "stash.next";

    private final Jdbi jdbi;
    private final Clock clock;

    StashBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** All pieces, in the order they came. */
    public Stash whole() {
        Map<Fabric, Fabric> fabrics = new HashMap<>();
        Map<String, Colour> colours = new HashMap<>();
        return new Stash(jdbi.withHandle(handle -> handle.createQuery("select id, fabric, colour, faces, nap, width,"
                        + " length, washed, position from piece order by position, id")
                .map((row, context) -> piece(row, fabrics, colours))
                .list()));
    }

    /**
     * A piece from a row. Pieces of one fabric share it, and columns are read by place, so that ten thousand are read
     * quickly.
     */
    private static Piece piece(ResultSet row, Map<Fabric, Fabric> fabrics, Map<String, Colour> colours)
            throws SQLException {
        Fabric read = new Fabric(
                row.getString(2),
                colours.computeIfAbsent(row.getString(3), Colour::parse),
                Fabric.Faces.valueOf(row.getString(4).split(" ", -1)[0]),
                Fabric.Nap.valueOf(row.getString(5)),
                wrong(row.getString(4), colours));
        Fabric fabric = fabrics.computeIfAbsent(read, same -> same);
        Size size = new Size(new Length(row.getLong(6)), new Length(row.getLong(7)));
        return new Piece(row.getString(1), fabric, size, Piece.Washed.valueOf(row.getString(8)), (int) row.getLong(9));
    }

    /** The faces of a fabric in a row: {@code RIGHT}, and the colour of the wrong side after it where she said one. */
    private static String faces(Fabric fabric) {
        return fabric.faces().name()
                + fabric.wrong().map(colour -> " " + colour.hex()).orElse("");
    }

    private static Optional<Colour> wrong(String faces, Map<String, Colour> colours) {
        int at = faces.indexOf(' ');
        return at < 0 ? Optional.empty() : Optional.of(colours.computeIfAbsent(faces.substring(at + 1), Colour::parse));
    }

    /** Ids of pieces that are set aside. The mark outlives its piece, so that undo brings both back; ids are not used again. */
    public Set<String> aside() {
        return Set.copyOf(jdbi.withHandle(handle -> handle.createQuery("select piece from aside")
                .mapTo(String.class)
                .list()));
    }

    /** True while there is no piece. */
    public boolean isEmpty() {
        return jdbi.withHandle(handle -> handle.createQuery("select count(*) from piece")
                        .mapTo(Integer.class)
                        .one())
                == 0;
    }

    /**
     * The next number for a piece that no piece has ever had, not even one used up long ago, since a plan or a label
     * pinned to cloth may still bear it.
     */
    public int nextPiece() {
        return jdbi.withHandle(StashBook::next);
    }

    private static int next(Handle handle) {
        int kept = handle.createQuery("select text from setting where name = :name")
                .bind("name", NEXT)
                .mapTo(String.class)
                .findOne()
                .map(Integer::parseInt)
                .orElse(1);
        int free = handle.createQuery("select coalesce(max(position), 0) + 1 from piece")
                .mapTo(Integer.class)
                .one();
        return Math.max(kept, free);
    }

    /**
     * Changes the stash and records how to undo it.
     *
     * @throws StoreException where a piece was changed in another window in the meantime; nothing is changed then
     */
    public void edit(StashEdit edit) {
        jdbi.useTransaction(handle -> {
            apply(handle, edit);
            asides(handle, edit);
            number(handle, edit.come());
            new ChangeJournal(handle, clock)
                    .add(new ChangeJournal.Fact(edit.label(), Thing.STASH.word(), edit.text()), edit.touched());
        });
    }

    private static void number(Handle handle, List<Piece> come) {
        int next =
                Math.max(next(handle), come.stream().mapToInt(Piece::row).max().orElse(0) + 1);
        handle.createUpdate("insert into setting (name, text) values (:name, :text)"
                        + " on conflict (name) do update set text = excluded.text")
                .bind("name", NEXT)
                .bind("text", String.valueOf(next))
                .execute();
    }

    private static void apply(Handle handle, StashEdit edit) {
        PreparedBatch going = handle.prepareBatch("delete from piece where id = :id and fabric = :fabric and"
                + " colour = :colour and faces = :faces and nap = :nap and width = :width and length = :length and"
                + " washed = :washed and position = :position");
        edit.gone().forEach(piece -> bind(going, piece));
        if (!edit.gone().isEmpty()) {
            int[] deleted = going.execute();
            for (int i = 0; i < deleted.length; i++) {
                if (deleted[i] != 1) {
                    Piece piece = edit.gone().get(i);
                    throw new StoreException(StoringSentences.changed(
                            StoringSentences.piece(Argument.text(piece.fabric().name()), Argument.text(piece.id())),
                            "PIECE"));
                }
            }
        }
        PreparedBatch coming = handle.prepareBatch(
                "insert into piece (id, fabric, colour, faces, nap, width, length, washed, position) values"
                        + " (:id, :fabric, :colour, :faces, :nap, :width, :length, :washed, :position)");
        edit.come().forEach(piece -> bind(coming, piece));
        if (!edit.come().isEmpty()) {
            coming.execute();
        }
    }

    private static void bind(PreparedBatch batch, Piece piece) {
        batch.bind("id", piece.id())
                .bind("fabric", piece.fabric().name())
                .bind("colour", piece.fabric().colour().hex())
                .bind("faces", faces(piece.fabric()))
                .bind("nap", piece.fabric().nap().name())
                .bind("width", piece.size().width().nm())
                .bind("length", piece.size().height().nm())
                .bind("washed", piece.washed().name())
                .bind("position", piece.row())
                .add();
    }

    /** The name of what undo would take back, with what rests on it. */
    public Optional<String> undoable() {
        return turns().next(Thing.STASH, false);
    }

    /** The name of what redo would do again. */
    public Optional<String> redoable() {
        return turns().next(Thing.STASH, true);
    }

    /** Undoes the last change of the stash with all that rests on it; its name, or empty where there is none. */
    public Optional<String> undo() {
        return turns().turn(Thing.STASH, false);
    }

    /** Redoes what was undone last. */
    public Optional<String> redo() {
        return turns().turn(Thing.STASH, true);
    }

    private UndoRedo turns() {
        return Store.turns(jdbi, clock);
    }

    void replay(Handle handle, ChangeJournal.Fact fact, boolean again) {
        StashEdit edit = StashEdit.read(fact.label(), fact.what());
        StashEdit turned = again ? edit : edit.reversed();
        apply(handle, turned);
        asides(handle, turned);
    }

    /** Applies what comes and goes with the pieces. A picture she has changed since stays hers. */
    private void asides(Handle handle, StashEdit edit) {
        SwatchBook swatches = new SwatchBook(jdbi);
        for (StashEdit.Pictured one : edit.pictured()) {
            if (swatches.find(one.fabric()).equals(one.was())) {
                one.is()
                        .ifPresentOrElse(
                                swatch -> swatches.keep(one.fabric(), swatch), () -> swatches.remove(one.fabric()));
            }
        }
        edit.along()
                .aside()
                .ifPresent(one -> one.pieces()
                        .forEach(id -> handle.createUpdate(
                                        one.on()
                                                ? "insert into aside (piece) values (:piece) on conflict (piece) do nothing"
                                                : "delete from aside where piece = :piece")
                                .bind("piece", id)
                                .execute()));
        edit.photo()
                .ifPresent(from -> from.keys()
                        .forEach(key -> handle.createUpdate(
                                        from.in()
                                                ? "insert into photograph_taken (photograph, piece) values (:photograph, :piece)"
                                                        + " on conflict (photograph, piece) do nothing"
                                                : "delete from photograph_taken where photograph = :photograph and piece = :piece")
                                .bind("photograph", from.photograph())
                                .bind("piece", key)
                                .execute()));
    }
}
