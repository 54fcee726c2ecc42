package hearthcloth.store.studio;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool.PoolInitializationException;
import hearthcloth.store.Person;
import hearthcloth.store.SqliteFile;
import hearthcloth.store.Store;
import hearthcloth.store.journal.ReadOnce;
import hearthcloth.store.journal.WholeChange;
import hearthcloth.store.json.DatabaseTroubles;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import java.net.SocketTimeoutException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationState;
import org.jdbi.v3.core.Jdbi;

/**
 * A shared studio: one PostgreSQL database for a class or guild, used by several workrooms at once. What is common lies
 * in the schema {@code studio}; each person's own work in a schema of her own, in the same form as in a file, and every
 * statement about it runs as a role of her own ({@link OwnRole}), so that none can reach into another's. Thread-safe.
 */
public final class Studio implements AutoCloseable {

    private static final String COMMON = "studio";

    /** The most connections of one workroom; PostgreSQL usually allows a hundred in all. */
    private static final int MOST_CONNECTIONS = 8;

    /** At the start the database may take this long; a service that starts before it is begun again by its system. */
    private static final long PATIENCE_MS = 3_000;

    /** Later on a page is waiting: within three seconds it says that the database does not answer. */
    private static final int PAGE_MS = 2_000;

    /** Longer than a lock is waited for, so that only a line that was cut is given up. */
    private static final int LONGEST_MS = 25_000;

    private static final long ALIVE_MS = 30_000;

    /** The number of the lock under which workrooms that migrate a schema wait for each other, "HCLT". */
    private static final int TURN = SqliteFile.MARK;

    private final HikariDataSource pool;
    private final Clock clock;
    private final Jdbi jdbi;
    private final Map<Long, Store> stores = new ConcurrentHashMap<>();

    private Studio(HikariDataSource pool, Clock clock) {
        this.pool = pool;
        this.clock = clock;
        this.jdbi = in(COMMON, Optional.empty());
    }

    /**
     * Opens the studio, or sets it up in an empty database.
     *
     * @throws StoreException with a sentence, where the database does not answer, refuses, or was made by a newer
     *     Hearthcloth
     */
    public static Studio open(StudioAddress address, Clock clock) {
        HikariDataSource pool;
        try {
            pool = new HikariDataSource(config(address));
        } catch (PoolInitializationException e) {
            throw DatabaseTroubles.told(e, StoringSentences.studio(Argument.text(address.toString()), "OPEN"));
        }
        try {
            bring(pool, COMMON, Optional.empty());
            for (String schema : inTurn(pool, OwnRole::schemas)) {
                inTurn(pool, turn -> OwnRole.given(turn, schema));
            }
            return new Studio(pool, clock);
        } catch (StoreException e) {
            pool.close();
            throw e;
        }
    }

    private static HikariConfig config(StudioAddress address) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(address.jdbc());
        address.user().ifPresent(config::setUsername);
        address.password().ifPresent(config::setPassword);
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(1);
        config.setInitializationFailTimeout(PATIENCE_MS);
        config.setConnectionTimeout(PAGE_MS);
        config.setValidationTimeout(PAGE_MS / 2);
        config.setKeepaliveTime(ALIVE_MS);
        config.setConnectionInitSql("set lock_timeout = '20s'");
        config.addDataSourceProperty("tcpKeepAlive", "true");
        config.addDataSourceProperty("connectTimeout", "2");
        config.addDataSourceProperty("socketTimeout", String.valueOf(LONGEST_MS / 1_000));
        return config;
    }

    /** What is done with a connection while no other workroom does the like. */
    private interface Turn<T> {
        T taken(Connection turn) throws SQLException;
    }

    /**
     * Does something that only one workroom may do at a time, and in it one thread, since each takes connections; as the role
     * by which the workroom comes in.
     */
    private static synchronized <T> T inTurn(DataSource pool, Turn<T> what) {
        try (Connection turn = pool.getConnection()) {
            execute(turn, "set role none");
            execute(turn, "select pg_advisory_lock(" + TURN + ")");
            try {
                return what.taken(turn);
            } finally {
                execute(turn, "select pg_advisory_unlock(" + TURN + ")");
            }
        } catch (SQLException | FlywayException e) {
            throw DatabaseTroubles.told(e, StoringSentences.studio(Argument.text(""), "LEFT"));
        }
    }

    /** Creates a schema or migrates it to today's form. */
    private static void bring(DataSource pool, String schema, Optional<String> role) {
        inTurn(pool, turn -> {
            Flyway flyway = Flyway.configure()
                    .dataSource(pool)
                    .initSql(roleSet(role))
                    .schemas(schema)
                    .defaultSchema(schema)
                    .locations(schema.equals(COMMON) ? "classpath:db/studio" : "classpath:db/migration")
                    .load();
            boolean newer = Arrays.stream(flyway.info().all())
                    .anyMatch(each -> each.getState() == MigrationState.FUTURE_SUCCESS);
            if (newer) {
                throw new StoreException(StoringSentences.studio(Argument.text(""), "NEWER"));
            }
            return flyway.migrate();
        });
    }

    private static String roleSet(Optional<String> role) {
        return "set role " + role.map(name -> '"' + name + '"').orElse("none");
    }

    private static void execute(Connection connection, String statement) throws SQLException {
        try (var plain = connection.createStatement()) {
            plain.execute(statement);
        }
    }

    private Jdbi in(String schema, Optional<String> role) {
        String begins = roleSet(role) + "; set search_path to " + schema;
        Jdbi jdbi = ReadOnce.of(Jdbi.create(() -> connection(begins)));
        jdbi.setTransactionHandler(WholeChange.inSchema(jdbi.getTransactionHandler()));
        return jdbi;
    }

    /**
     * A connection that begins as said: whoever had it before left it with a role and a schema of her own. One that the server
     * has cut off is dropped and the next one is tried; where the line is dead without a word, nothing more is tried.
     */
    private Connection connection(String begins) throws SQLException {
        for (int tried = 0; ; tried++) {
            Connection connection = pool.getConnection();
            try {
                connection.setNetworkTimeout(Runnable::run, PAGE_MS);
                execute(connection, begins);
                connection.setNetworkTimeout(Runnable::run, LONGEST_MS);
                return connection;
            } catch (SQLException e) {
                connection.close();
                if (tried == MOST_CONNECTIONS || isSilent(e)) {
                    throw e;
                }
            }
        }
    }

    private static boolean isSilent(SQLException e) {
        return e.getCause() instanceof SocketTimeoutException;
    }

    public PeopleBook people() {
        return new PeopleBook(jdbi, clock);
    }

    public VisitBook visits() {
        return new VisitBook(jdbi, clock);
    }

    public GuidelineBook guidelines() {
        return new GuidelineBook(jdbi, clock);
    }

    /** Her own stash, cloths and settings. */
    public Store of(Person person) {
        return stores.computeIfAbsent(person.id(), id -> {
            Optional<String> role = inTurn(pool, turn -> OwnRole.given(turn, person.schema()));
            bring(pool, person.schema(), role);
            return new Store(in(person.schema(), role), clock, Optional.empty());
        });
    }

    @Override
    public void close() {
        pool.close();
    }
}
