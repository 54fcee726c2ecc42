package hearthcloth.store;

import hearthcloth.store.journal.ReadOnce;
import hearthcloth.store.journal.WholeChange;
import hearthcloth.store.json.DatabaseTroubles;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationVersion;
import org.jdbi.v3.core.ConnectionFactory;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/**
 * The maker's file. It is examined before anything is written to it, so that a file that is foreign, damaged or made by
 * a newer Hearthcloth stays unchanged byte by byte; then it is migrated to today's form, after a safety copy.
 *
 * @param refused why nothing may be changed in it, such as a journal that does not fit; empty while all may
 */
public record SqliteFile(Path path, HeldSource source, Jdbi jdbi, AtomicReference<Sentence> refused) {

    /** Today's form: the number of the last script of {@code db/migration}. */
    static final String FORM = "9";

    /** The application id in the header, "HCLT" (docs/sources.md#sqlite-header). */
    public static final int MARK = 0x48434c54;

    /** Where the library that changes forms notes to which one it brought the file. */
    private static final String HISTORY = "flyway_schema_history";

    private static final Set<String> OURS = Set.of("piece", "cloth", "setting", HISTORY);
    private static final int PATIENCE_MS = 10_000;

    /** What is found at a path before it is opened. */
    enum Found {
        /** Nothing is there yet. */
        NEW,
        /** Ours, of an older form. */
        OLDER,
        /** Ours, of today's form. */
        TODAY
    }

    static SQLiteConfig usual() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(PATIENCE_MS);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config;
    }

    private static SqliteFile with(Path path, SQLiteConfig config) {
        HeldSource source = new HeldSource(path, config);
        Jdbi jdbi = ReadOnce.of(Jdbi.create((ConnectionFactory) source));
        AtomicReference<Sentence> refused = new AtomicReference<>(Sentence.none());
        jdbi.setTransactionHandler(WholeChange.inFile(jdbi.getTransactionHandler(), refused::get));
        return new SqliteFile(path, source, jdbi, refused);
    }

    /** Why nothing may be changed in it; empty while all is well. */
    Sentence why() {
        return Objects.requireNonNullElse(refused.get(), Sentence.none());
    }

    /** See {@link Store#open(Path, Clock)}. */
    static Store open(Path path, SQLiteConfig config, Clock clock) {
        Found found = look(path);
        closeToOthers(path);
        SqliteFile file = with(path, config);
        SafetyCopies copies = new SafetyCopies(file, clock);
        if (found == Found.OLDER) {
            try {
                copies.make(SafetyCopy.Reason.UPDATE);
            } catch (StoreException e) {
                throw new StoreException(StoringSentences.openedOlder(name(path), e.sentence()), e);
            }
        }
        if (found != Found.TODAY) {
            file.migrate();
        }
        file.holdToJournal(found);
        if (!file.why().isEmpty()) {
            return new Store(file.jdbi, clock, Optional.of(copies));
        }
        file.beginWriting();
        if (found == Found.NEW) {
            copies.beginEmpty();
        } else {
            copies.daily();
        }
        return new Store(file.jdbi, clock, Optional.of(copies));
    }

    /** Refuses every change where tables and journal do not fit. */
    private void holdToJournal(Found found) {
        if (found != Found.NEW) {
            refused.set(
                    new Store(jdbi, Clock.systemUTC(), Optional.empty()).fault().orElseGet(Sentence::none));
        }
    }

    /** Looks again, after a copy was put back. */
    void restored() {
        migrate();
        holdToJournal(Found.TODAY);
    }

    private static void closeToOthers(Path path) {
        try {
            OwnerOnly.file(path);
            for (String beside : new String[] {"-wal", "-shm"}) {
                Path there = path.resolveSibling(path.getFileName() + beside);
                if (Files.exists(there)) {
                    OwnerOnly.file(there);
                }
            }
            if (Files.isDirectory(SafetyCopies.folder(path))) {
                OwnerOnly.folder(SafetyCopies.folder(path));
            }
        } catch (IOException e) {
            // Where it cannot be made, opening it says so.
        }
    }

    /** What to do where the work used to lie at a path and is gone; empty where nothing shows that it did. */
    static Optional<Sentence> gone(Path path, boolean wasOpened) {
        List<SafetyCopy> copies = SafetyCopies.all(path);
        if ((!wasOpened && copies.isEmpty()) || Files.isDirectory(path) || look(path) != Found.NEW) {
            return Optional.empty();
        }
        return Optional.of(StoringSentences.openedGone(
                last(copies), Argument.text(path.toAbsolutePath().toString())));
    }

    private static Argument name(Path path) {
        return Argument.text(String.valueOf(path.getFileName()));
    }

    /** When the last copy was made, as the sentences about it take it. */
    private static String last(List<SafetyCopy> copies) {
        return copies.isEmpty() ? "none" : copies.get(0).made().toString();
    }

    /**
     * What lies at a path; nothing is written there.
     *
     * @throws StoreException with a sentence, where it cannot be a workroom's file, or not one of this Hearthcloth
     */
    static Found look(Path path) {
        if (Files.isDirectory(path)) {
            throw refused(path, "FOLDER");
        }
        try {
            if (!Files.exists(path) || Files.size(path) == 0) {
                return Found.NEW;
            }
        } catch (IOException e) {
            throw refused(path, "UNREAD");
        }
        try {
            return reading(path).withHandle(handle -> found(path, handle));
        } catch (JdbiException e) {
            if (DatabaseTroubles.isDamage(e)) {
                throw damaged(path);
            }
            throw DatabaseTroubles.told(e, ending(path));
        }
    }

    private static Jdbi reading(Path path) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        config.setBusyTimeout(PATIENCE_MS);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + path.toAbsolutePath());
        return ReadOnce.of(Jdbi.create(source));
    }

    private static Found found(Path path, Handle handle) {
        int mark = number(handle, "pragma application_id");
        List<String> names = handle.createQuery("select name from sqlite_master where type in ('table', 'view')")
                .mapTo(String.class)
                .list();
        if (names.isEmpty() && mark == 0 && number(handle, "pragma user_version") == 0) {
            return Found.NEW;
        }
        if (mark == 0 && names.equals(List.of(HISTORY)) && versions(handle).isEmpty()) {
            // A first start that was killed before it had made a table of its own.
            return Found.NEW;
        }
        if ((mark != 0 && mark != MARK) || !isOurs(names)) {
            throw refused(path, "FOREIGN");
        }
        if (!whole(handle)) {
            throw damaged(path);
        }
        MigrationVersion form = versions(handle).stream()
                .map(MigrationVersion::fromVersion)
                .max(MigrationVersion::compareTo)
                .orElseThrow(() -> refused(path, "FOREIGN"));
        int newer = form.compareTo(MigrationVersion.fromVersion(FORM));
        if (newer > 0) {
            throw refused(path, "NEWER");
        }
        return newer == 0 ? Found.TODAY : Found.OLDER;
    }

    /** The forms the file has been brought to. */
    private static List<String> versions(Handle handle) {
        return handle.createQuery("select version from " + HISTORY + " where success = 1 and version is not null")
                .mapTo(String.class)
                .list();
    }

    /** Up to form 4 changes were kept in the table "deed", since then in "change". */
    private static boolean isOurs(List<String> names) {
        return names.containsAll(OURS) && (names.contains("deed") || names.contains("change"));
    }

    private static int number(Handle handle, String pragma) {
        return handle.createQuery(pragma).mapTo(Integer.class).one();
    }

    private static boolean whole(Handle handle) {
        return handle.createQuery("pragma integrity_check(1)")
                .mapTo(String.class)
                .list()
                .equals(List.of("ok"));
    }

    /** Refuses a copy that is damaged. */
    static void refuseDamaged(Path path) {
        if (!reading(path).withHandle(SqliteFile::whole)) {
            throw new StoreException(StoringSentences.copyWhole());
        }
    }

    private static Sentence ending(Path path) {
        return StoringSentences.openedFile(name(path), "LEFT");
    }

    private static StoreException refused(Path path, String why) {
        return new StoreException(StoringSentences.openedFile(name(path), why));
    }

    private static StoreException damaged(Path path) {
        return new StoreException(StoringSentences.openedDamaged(last(SafetyCopies.all(path)), name(path)));
    }

    /** Migrates the file to today's form. */
    void migrate() {
        try {
            Flyway.configure().dataSource(source).load().migrate();
        } catch (FlywayException e) {
            throw DatabaseTroubles.told(e, ending(path));
        }
    }

    /** Marks the file as ours each time it is opened, since only a real write proves that it can be written. */
    private void beginWriting() {
        try {
            jdbi.useHandle(handle -> handle.execute("pragma application_id = " + MARK));
        } catch (JdbiException e) {
            throw DatabaseTroubles.told(e, ending(path));
        }
    }
}
