package hearthcloth.store.journal;

import hearthcloth.store.json.DatabaseTroubles;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import java.sql.SQLException;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.DelegatingTransactionHandler;
import org.jdbi.v3.core.transaction.TransactionHandler;

/**
 * Runs one change as a transaction: wholly or not at all, after the changes that came before it, and with the reason in
 * a sentence where it cannot be stored.
 */
public final class WholeChange extends DelegatingTransactionHandler {

    private static final Sentence NOTHING = StoringSentences.again();

    /** The statement that makes a writer wait for those before it; SQLite needs none. */
    private final String turn;
    /** Why no change may be made; empty while all may. */
    private final Supplier<Sentence> refused;

    private WholeChange(TransactionHandler kept, String turn, Supplier<Sentence> refused) {
        super(kept);
        this.turn = turn;
        this.refused = refused;
    }

    /** For a file, where a transaction gets its lock as it begins. */
    public static WholeChange inFile(TransactionHandler kept, Supplier<Sentence> refused) {
        return new WholeChange(kept, "", refused);
    }

    /** For a schema of PostgreSQL: writers of the same schema wait for each other, others do not. */
    public static WholeChange inSchema(TransactionHandler kept) {
        return new WholeChange(kept, "select pg_advisory_xact_lock(hashtext(current_schema()))", Sentence::none);
    }

    @Override
    public TransactionHandler specialize(Handle handle) throws SQLException {
        return new WholeChange(getDelegate().specialize(handle), turn, refused);
    }

    @Override
    public void begin(Handle handle) {
        if (!refused.get().isEmpty()) {
            throw new StoreException(refused.get());
        }
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
