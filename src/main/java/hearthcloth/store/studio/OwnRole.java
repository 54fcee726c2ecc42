package hearthcloth.store.studio;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The role in the database as which each statement about one person's work runs. It owns her schema and has no right to
 * anything else; nobody else has a right to hers. The role by which the workroom comes in may become it, and otherwise reads
 * nothing of hers.
 *
 * <p>Roles belong to the whole server, so that the name says which database it is of. Source for how roles are given:
 * PostgreSQL's manual, chapters <em>Database Roles</em> and <em>GRANT</em>.
 */
final class OwnRole {

    /** From this version on one membership can say that it only allows to become the other role. */
    private static final int SET_ONLY = 16;

    private final Connection connection;
    private final String schema;
    private final String role;

    private OwnRole(Connection connection, String schema) throws SQLException {
        this.connection = connection;
        this.schema = schema;
        this.role = schema + "_of_" + text("select oid from pg_database where datname = current_database()");
    }

    /**
     * Sees that a person's schema is there and belongs to a role of its own; one made before there were such roles is
     * handed over.
     *
     * @param connection as the role by which the workroom comes in; nobody else may be doing the same
     * @return the role; empty where the workroom's own may not make any, so that the program alone keeps people apart
     */
    static Optional<String> given(Connection connection, String schema) throws SQLException {
        OwnRole own = new OwnRole(connection, schema);
        if (!own.isThere() && !own.mayBeMade()) {
            return Optional.empty();
        }
        connection.setAutoCommit(false);
        try {
            own.make();
            own.join();
            own.handOver();
            connection.commit();
        } catch (SQLException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
        return Optional.of(own.role);
    }

    /** The schemas that hold a person's work. */
    static List<String> schemas(Connection connection) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "select nspname from pg_namespace where nspname ~ '^person_[0-9]+$' order by oid")) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }

    private boolean isThere() throws SQLException {
        return !text("select count(*) from pg_roles where rolname = ?", role).equals("0");
    }

    private boolean mayBeMade() throws SQLException {
        return text("select rolcreaterole or rolsuper from pg_roles where rolname = current_user")
                .equals("t");
    }

    private void make() throws SQLException {
        if (!isThere()) {
            execute("create role \"" + role + "\" nologin");
        }
    }

    private void join() throws SQLException {
        if (connection.getMetaData().getDatabaseMajorVersion() >= SET_ONLY) {
            if (text("select pg_has_role(current_user, ?, 'SET')", role).equals("f")) {
                execute("grant \"" + role + "\" to current_user with inherit false, set true");
            }
            return;
        }
        if (text("select pg_has_role(current_user, ?, 'MEMBER')", role).equals("f")) {
            execute("grant \"" + role + "\" to current_user");
        }
        if (text("select rolinherit and not rolsuper from pg_roles where rolname = current_user")
                .equals("t")) {
            execute("alter role current_user noinherit");
        }
    }

    private void handOver() throws SQLException {
        if (text("select count(*) from pg_namespace where nspname = ?", schema).equals("0")) {
            execute("create schema \"" + schema + "\" authorization \"" + role + "\"");
            return;
        }
        if (text("select pg_get_userbyid(nspowner) from pg_namespace where nspname = ?", schema)
                .equals(role)) {
            return;
        }
        // The tables first: once the schema is hers, the role that hands over no longer sees them.
        execute("grant usage, create on schema \"" + schema + "\" to \"" + role + "\"");
        for (String table : tables()) {
            execute("alter table \"" + schema + "\".\"" + table + "\" owner to \"" + role + "\"");
        }
        execute("alter schema \"" + schema + "\" owner to \"" + role + "\"");
    }

    private List<String> tables() throws SQLException {
        List<String> tables = new ArrayList<>();
        try (PreparedStatement statement = connection.prepareStatement(
                "select tablename from pg_tables where schemaname = ? order by tablename")) {
            statement.setString(1, schema);
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    tables.add(rows.getString(1));
                }
            }
        }
        return tables;
    }

    private String text(String query, String... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            for (int i = 0; i < values.length; i++) {
                statement.setString(i + 1, values[i]);
            }
            try (ResultSet row = statement.executeQuery()) {
                row.next();
                return row.getString(1);
            }
        }
    }

    private void execute(String statement) throws SQLException {
        try (Statement plain = connection.createStatement()) {
            plain.execute(statement);
        }
    }
}
