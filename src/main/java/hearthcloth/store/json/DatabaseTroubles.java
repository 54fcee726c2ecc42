package hearthcloth.store.json;

import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Optional;
import org.sqlite.SQLiteException;

/** Describes the faults of a database in words for the maker; nothing of its own wording is shown. */
public final class DatabaseTroubles {

    private static final String QUICKER = "QUICKER";

    private static final String SILENT = "SILENT";

    private DatabaseTroubles() {}

    /** A sentence on what went wrong; empty where the fault is not the database's. */
    public static Optional<Sentence> words(Throwable thrown) {
        return behind(thrown, FileGoneException.class)
                .map(FileGoneException::sentence)
                .or(() -> behind(thrown, SQLiteException.class).map(e -> StoringSentences.trouble(file(e))))
                .or(() -> behind(thrown, SQLException.class).map(e -> StoringSentences.trouble(studio(e))));
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
    public static StoreException told(Throwable thrown, Sentence end) {
        return new StoreException(words(thrown).orElseGet(Sentence::none).then(end), thrown);
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
            case 5, 6 -> "HELD";
            case 8, 3, 23 -> "UNWRITABLE";
            case 10 -> "DISK";
            case 11 -> "DAMAGED";
            case 13 -> "FULL";
            case 14 -> "UNOPENED";
            case 19 -> QUICKER;
            case 26 -> "FOREIGN";
            default -> "FILE";
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
            return "REFUSED";
        }
        if (state.startsWith("23")) {
            return QUICKER;
        }
        if (state.equals("55P03")) {
            return "WORK";
        }
        if (state.equals("3D000")) {
            return "NONE";
        }
        if (state.startsWith("53")) {
            return state.equals("53100") ? "STUDIO_FULL" : "STUDIO_BUSY";
        }
        if (state.equals("25006") || state.equals("42501")) {
            return "STUDIO_UNWRITABLE";
        }
        return "STUDIO";
    }
}
