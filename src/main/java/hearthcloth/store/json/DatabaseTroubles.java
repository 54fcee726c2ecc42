package hearthcloth.store.json;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Optional;
import org.sqlite.SQLiteException;

/** Describes the faults of a database in words for the maker; nothing of its own wording is shown. */
public final class DatabaseTroubles {

    private static final String QUICKER = "Another window was quicker with something under the same number.";

    private static final String SILENT = "The studio's database does not answer.";

    private DatabaseTroubles() {}

    /** A sentence on what went wrong; empty where the fault is not the database's. */
    public static Optional<String> words(Throwable thrown) {
        return behind(thrown, FileGoneException.class)
                .map(e -> String.valueOf(e.getMessage()))
                .or(() -> behind(thrown, SQLiteException.class).map(DatabaseTroubles::file))
                .or(() -> behind(thrown, SQLException.class).map(DatabaseTroubles::studio));
    }

    /** Whether the work cannot be reached at the moment, so that the same may well do a little later. */
    static boolean isAway(Throwable thrown) {
        return behind(thrown, FileGoneException.class).isPresent()
                || behind(thrown, SQLException.class)
                        .filter(e ->
                                !(e instanceof SQLiteException) && studio(e).equals(SILENT))
                        .isPresent();
    }

    private static <E extends Throwable> Optional<E> behind(Throwable thrown, Class<E> kind) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (kind.isInstance(cause)) {
                return Optional.of(kind.cast(cause));
            }
        }
        return Optional.empty();
    }

    /** An exception whose sentence says what went wrong, as far as it is known, followed by {@code end}. */
    public static StoreException told(Throwable thrown, String end) {
        return new StoreException(words(thrown).map(words -> words + " ").orElse("") + end, thrown);
    }

    public static boolean isDamage(Throwable thrown) {
        return behind(thrown, SQLiteException.class)
                .filter(e -> primary(e) == 11)
                .isPresent();
    }

    private static int primary(SQLiteException e) {
        return e.getResultCode().code & 0xff;
    }

    /**
     * The fault by the primary result code of SQLite; the extended codes repeat it in their low byte
     * (docs/sources.md#database-codes).
     */
    private static String file(SQLiteException e) {
        return switch (primary(e)) {
            case 5, 6 -> "Another program has been holding the file for too long.";
            case 8, 3, 23 -> "The file, or the folder it lies in, cannot be written.";
            case 10 -> "The disk did not read or write as it should.";
            case 11 -> "The file is damaged.";
            case 13 -> "The disk is full.";
            case 14 -> "The file cannot be opened or made in its folder.";
            case 19 -> QUICKER;
            case 26 -> "The file was not written by Hearthcloth.";
            default -> "The file does not do what it should.";
        };
    }

    /** The fault by the class of PostgreSQL's error code (docs/sources.md#database-codes). */
    private static String studio(SQLException e) {
        String state = String.valueOf(e.getSQLState());
        boolean isPoolEmpty = e instanceof SQLTransientConnectionException;
        if (isPoolEmpty || state.startsWith("08") || state.startsWith("57P")) {
            return SILENT;
        }
        if (state.startsWith("28")) {
            return "The studio's database refuses this name or password.";
        }
        if (state.startsWith("23")) {
            return QUICKER;
        }
        if (state.equals("55P03")) {
            return "Another workroom has been holding this work for too long.";
        }
        if (state.equals("3D000")) {
            return "There is no database of this name.";
        }
        if (state.startsWith("53")) {
            return state.equals("53100")
                    ? "The disk of the studio's database is full."
                    : "The studio's database is busy.";
        }
        if (state.equals("25006") || state.equals("42501")) {
            return "The studio's database may not be written under this name.";
        }
        return "The studio's database does not do what it should.";
    }
}
