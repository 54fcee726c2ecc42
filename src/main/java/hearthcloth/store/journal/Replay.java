package hearthcloth.store.journal;

import org.jdbi.v3.core.Handle;

/** Does again, or takes back, what a change did to one book. */
public interface Replay {

    /**
     * Does it.
     *
     * @throws hearthcloth.store.json.StoreException where what is kept is not as the change left it
     */
    void replay(Handle handle, ChangeJournal.Fact fact, boolean again);
}
