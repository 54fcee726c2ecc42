package hearthcloth.store;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Her fabric, piece by piece, with every change undoable. Thread-safe. */
public final class StashBook {

    private static final String BOOK = "stash";

    private final Jdbi jdbi;
    private final Clock clock;

    StashBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** All pieces, in the order they came. */
    public Stash whole() {
        return new Stash(jdbi.withHandle(handle -> handle.createQuery("select * from piece order by position, id")
                .map((row, context) -> piece(row))
                .list()));
    }

    private static Piece piece(ResultSet row) throws SQLException {
        Fabric fabric = new Fabric(
                row.getString("fabric"),
                Colour.parse(row.getString("colour")),
                Fabric.Faces.valueOf(row.getString("faces")),
                Fabric.Nap.valueOf(row.getString("nap")));
        Size size = new Size(new Length(row.getLong("width")), new Length(row.getLong("length")));
        return new Piece(row.getString("id"), fabric, size, Piece.Washed.valueOf(row.getString("washed")), (int)
                row.getLong("position"));
    }

    /** True while there is no piece. */
    public boolean isEmpty() {
        return jdbi.withHandle(handle -> handle.createQuery("select count(*) from piece")
                        .mapTo(Integer.class)
                        .one())
                == 0;
    }

    /** The next unused number for a piece. */
    public int nextPiece() {
        return jdbi.withHandle(handle -> handle.createQuery("select coalesce(max(position), 0) + 1 from piece")
                .mapTo(Integer.class)
                .one());
    }

    /**
     * Changes the stash and remembers how to undo it.
     *
     * @throws StoreException where a piece has meanwhile been changed in another window; nothing is changed then
     */
    public void edit(StashEdit edit) {
        jdbi.useTransaction(handle -> {
            apply(handle, edit);
            new Deeds(handle, clock).add(BOOK, edit.label(), edit.text());
        });
    }

    private static void apply(Handle handle, StashEdit edit) {
        PreparedBatch going = handle.prepareBatch(
                "delete from piece where id = :id and fabric = :fabric and width = :width and length = :length");
        edit.gone().forEach(piece -> bind(going, piece));
        if (!edit.gone().isEmpty()) {
            for (int deleted : going.execute()) {
                if (deleted != 1) {
                    throw new StoreException(
                            "A piece has meanwhile been changed in another window. Nothing was changed; look again.");
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
                .bind("faces", piece.fabric().faces().name())
                .bind("nap", piece.fabric().nap().name())
                .bind("width", piece.size().width().nm())
                .bind("length", piece.size().height().nm())
                .bind("washed", piece.washed().name())
                .bind("position", piece.row())
                .add();
    }

    /** What undo would take back, in words. */
    public Optional<String> undoable() {
        return jdbi.withHandle(
                handle -> new Deeds(handle, clock).last(BOOK, false).map(Deeds.Deed::label));
    }

    /** What redo would do again, in words. */
    public Optional<String> redoable() {
        return jdbi.withHandle(
                handle -> new Deeds(handle, clock).last(BOOK, true).map(Deeds.Deed::label));
    }

    /** Takes the last change back; the label of it, or empty where there is none. */
    public Optional<String> undo() {
        return turn(false);
    }

    /** Does again what was taken back. */
    public Optional<String> redo() {
        return turn(true);
    }

    private Optional<String> turn(boolean again) {
        return jdbi.inTransaction(handle -> new Deeds(handle, clock).turn(BOOK, again, deed -> {
            StashEdit edit = StashEdit.read(deed.label(), deed.change());
            apply(handle, again ? edit : edit.reversed());
        }));
    }
}
