package hearthcloth.store.journal;

import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.ColonPrefixSqlParser;
import org.jdbi.v3.core.statement.SqlParser;
import org.jdbi.v3.core.statement.SqlStatements;

/** Statements that say the same in every workroom are read once, not once for each that is opened. */
public final class ReadOnce {

    private static final SqlParser STATEMENTS = new ColonPrefixSqlParser();

    private ReadOnce() {}

    /** The same database, with statements that were read elsewhere known to it. */
    public static Jdbi of(Jdbi jdbi) {
        return jdbi.configure(SqlStatements.class, statements -> statements.setSqlParser(STATEMENTS));
    }
}
