package hearthcloth.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The maker's work in one SQLite file. Every change is one transaction and is on the disk before the call returns, so
 * that what was acknowledged survives a crash. Thread-safe: writers wait for each other.
 */
public final class Store {

    private final Jdbi jdbi;
    private final Clock clock;

    Store(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /**
     * Opens the file, or makes it.
     *
     * @throws StoreException in words, where the file is not ours, damaged or cannot be written; it is never overwritten
     */
    public static Store open(Path file, Clock clock) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(10_000);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        Jdbi jdbi = Jdbi.create(source);
        try {
            refuseForeign(file, jdbi);
            Flyway.configure().dataSource(source).load().migrate();
        } catch (FlywayException | JdbiException e) {
            throw new StoreException(
                    "The file " + file.getFileName() + " cannot be opened as a workroom. It is left as it is; choose"
                            + " another with --data, or put back a copy of it.",
                    e);
        }
        return new Store(jdbi, clock);
    }

    /** Does several changes as one: all of them are kept or, where {@code work} throws, none. */
    public <T> T atOnce(Supplier<T> work) {
        return jdbi.inTransaction(handle -> work.get());
    }

    /** The time now, as everything that is kept is dated. */
    public Instant now() {
        return clock.instant();
    }

    /** Her fabric. */
    public StashBook stash() {
        return new StashBook(jdbi, clock);
    }

    /** What she designed and made. */
    public ClothBook cloths() {
        return new ClothBook(jdbi, clock);
    }

    /** Pictures of her fabrics. */
    public SwatchBook swatches() {
        return new SwatchBook(jdbi);
    }

    private static void refuseForeign(Path file, Jdbi jdbi) {
        if (!Files.exists(file)) {
            return;
        }
        boolean foreign = jdbi.withHandle(handle -> {
            int tables = handle.createQuery("select count(*) from sqlite_master where type = 'table'")
                    .mapTo(Integer.class)
                    .one();
            int ours = handle.createQuery("select count(*) from sqlite_master where name in ('piece', 'cloth', 'deed')")
                    .mapTo(Integer.class)
                    .one();
            return tables > 0 && ours < 3;
        });
        if (foreign) {
            throw new StoreException("The file " + file.getFileName()
                    + " belongs to another program. It is left as it is; choose another with --data.");
        }
    }

    public Optional<String> setting(String name) {
        return jdbi.withHandle(handle -> handle.createQuery("select text from setting where name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne());
    }

    public void set(String name, String text) {
        jdbi.useTransaction(handle -> handle.createUpdate("insert into setting (name, text) values (:name, :text)"
                        + " on conflict (name) do update set text = excluded.text")
                .bind("name", name)
                .bind("text", text)
                .execute());
    }

    /** Forgets a setting. */
    public void unset(String name) {
        jdbi.useTransaction(handle -> handle.createUpdate("delete from setting where name = :name")
                .bind("name", name)
                .execute());
    }
}
