package hearthcloth.store.journal;

import hearthcloth.work.Thing;
import hearthcloth.work.Turn;
import java.time.Clock;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Undo and redo for someone who looks at one thing, each as one transaction over everything it touches. */
public record UndoRedo(Jdbi jdbi, Clock clock, Replay replay) {

    /** The name of what undo would take back or, where {@code again}, redo would do again. */
    public Optional<String> next(Thing seen, boolean again) {
        return jdbi.withHandle(handle -> journal(handle).next(seen, again).map(Turn::label));
    }

    /** Undoes the last change with all that rests on it, or redoes it; its name, or empty where there is none. */
    public Optional<String> turn(Thing seen, boolean again) {
        return jdbi.inTransaction(handle -> {
            Optional<Turn> turn = journal(handle).next(seen, again);
            turn.ifPresent(all -> journal(handle).turn(all, again, replay));
            return turn.map(Turn::label);
        });
    }

    private ChangeJournal journal(Handle handle) {
        return new ChangeJournal(handle, clock);
    }
}
