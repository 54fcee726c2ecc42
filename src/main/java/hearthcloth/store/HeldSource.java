package hearthcloth.store;

import hearthcloth.store.json.DatabaseTroubles;
import hearthcloth.store.json.FileGoneException;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.ConnectionFactory;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/**
 * Connections to the maker's file. While it is held, each is refused where the file is no longer the one that was opened, so
 * that no empty one comes up in its place; and one connection stays open, through which all her work can be written anew, as
 * it was at the last change, even where the file was deleted. Connections that were used while it is held are used again: opening one
 * reads the form of every table. Thread-safe.
 */
final class HeldSource extends SQLiteDataSource implements ConnectionFactory, AutoCloseable {

    /** Pages answer side by side, but seldom more at once. */
    private static final int MOST_FREE = 4;

    private final Path path;
    private final Deque<Connection> free = new ArrayDeque<>();
    /** Those in use that were opened since the file is held; one of before may lead to a file that lies here no more. */
    private final Set<Connection> used = Collections.newSetFromMap(new IdentityHashMap<>());

    private Optional<Object> mark = Optional.empty();
    private @Nullable Connection kept;

    HeldSource(Path path, SQLiteConfig config) {
        super(config);
        this.path = path.toAbsolutePath();
        setUrl("jdbc:sqlite:" + this.path);
    }

    @Override
    public SQLiteConnection getConnection(@Nullable String name, @Nullable String password) throws SQLException {
        if (isGone()) {
            throw new FileGoneException(path);
        }
        return super.getConnection(name, password);
    }

    @Override
    public Connection openConnection() throws SQLException {
        synchronized (this) {
            if (isGone()) {
                throw new FileGoneException(path);
            }
            Connection again = free.poll();
            if (again != null) {
                used.add(again);
                return again;
            }
        }
        Connection connection = getConnection();
        synchronized (this) {
            if (kept != null) {
                used.add(connection);
            }
        }
        return connection;
    }

    @Override
    public void closeConnection(Connection connection) throws SQLException {
        synchronized (this) {
            boolean isClear = !connection.isClosed() && connection.getAutoCommit();
            if (used.remove(connection) && isClear && free.size() < MOST_FREE) {
                free.push(connection);
                return;
            }
        }
        connection.close();
    }

    private synchronized boolean isGone() {
        return kept != null && !mark.equals(mark(path));
    }

    /** What tells this file from another under the same name; where the system knows no such thing, that there is one. */
    private static Optional<Object> mark(Path path) {
        try {
            Object key = Files.readAttributes(path, BasicFileAttributes.class).fileKey();
            return Optional.of(key == null ? "there" : key);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Holds the file from now on. */
    synchronized void hold() {
        try {
            close();
            getConfig().resetOpenMode(SQLiteOpenMode.CREATE);
            Connection connection = super.getConnection(null, null);
            // Only what was read from is kept: this opens the file, and what was changed last, which lies beside it.
            try (Statement statement = connection.createStatement()) {
                statement.execute("select count(*) from setting");
            }
            mark = mark(path);
            kept = connection;
        } catch (SQLException e) {
            throw DatabaseTroubles.told(e, StoringSentences.work(Argument.text(""), "OPEN"));
        }
    }

    /**
     * Writes the work anew where it used to lie.
     *
     * @throws StoreException with a sentence, where something lies there again or that cannot be written
     */
    synchronized void writeAnew() {
        Connection from = kept;
        if (from == null || !isGone()) {
            throw new StoreException(StoringSentences.work(Argument.text(""), "PLACE"));
        }
        if (Files.exists(path)) {
            throw new StoreException(
                    StoringSentences.work(Argument.text(path.toString()), "OTHER"), new FileGoneException(path));
        }
        Path part = path.resolveSibling(path.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            try (Statement statement = from.createStatement()) {
                statement.execute("vacuum into '" + part.toString().replace("'", "''") + "'");
            }
            SqliteFile.refuseDamaged(part);
            OwnerOnly.file(part);
            SafetyCopies.toDisk(part);
            for (String left : new String[] {"-wal", "-shm"}) {
                Files.deleteIfExists(path.resolveSibling(path.getFileName() + left));
            }
            Files.move(part, path);
        } catch (IOException | SQLException e) {
            throw DatabaseTroubles.told(e, StoringSentences.work(Argument.text(path.toString()), "WRITE"));
        }
        hold();
    }

    @Override
    public synchronized void close() throws SQLException {
        used.clear();
        for (Connection connection : free) {
            connection.close();
        }
        free.clear();
        if (kept != null) {
            kept.close();
            kept = null;
        }
    }
}
