package hearthcloth.store.journal;

import hearthcloth.store.json.DatabaseTroubles;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.DelegatingTransactionHandler;
import org.jdbi.v3.core.transaction.TransactionHandler;


/**
 * How one change is kept: whole or not at all, after those that came before it, and with the reason in words where it
 * cannot be kept.
 */
public final class WholeChange extends DelegatingTransactionHandler {

    private static final String NOTHING = "Nothing was changed; try again.";

    /** What makes a writer wait for those before it; SQLite does so by itself. */
    private final String turn;

    private WholeChange(TransactionHandler kept, String turn) {
        super(kept);
        this.turn = turn;
    }

    /** In a file, where a transaction takes its turn as it begins. */
    public static WholeChange inFile(TransactionHandler kept) {
        return new WholeChange(kept, "");
    }

    /** In a schema of PostgreSQL: writers of the same schema wait for each other, others do not. */
    public static WholeChange inSchema(TransactionHandler kept) {
        return new WholeChange(kept, "select pg_advisory_xact_lock(hashtext(current_schema()))");
    }

    @Override
    public TransactionHandler specialize(Handle handle) throws SQLException {
        return new WholeChange(getDelegate().specialize(handle), turn);
    }

    @Override
    public void begin(Handle handle) {
        super.begin(handle);
        if (!turn.isEmpty()) {
            handle.createQuery(turn).mapToMap().list();
        }
    }

    @Override
    public <R, X extends Exception> R inTransaction(Handle handle, HandleCallback<R, X> callback) throws X {
        try {
            return super.inTransaction(handle, callback);
        } catch (JdbiException e) {
            throw DatabaseTroubles.told(e, NOTHING);
        }
    }
}
