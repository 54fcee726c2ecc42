package hearthcloth.store.json;

import java.util.Optional;

/** The store cannot do what was asked; the message is a sentence for the maker. */
public final class StoreException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public StoreException(String message, Throwable cause) {
        super(message, cause);
    }

    public StoreException(String message) {
        super(message);
    }

    /** A sentence for the fault of a database behind {@code thrown}; empty where it was something else. */
    public static Optional<String> behind(Throwable thrown) {
        return DatabaseTroubles.words(thrown);
    }

    /** Whether the work cannot be reached at the moment: its file was moved, or a studio's database does not answer. */
    public static boolean isAway(Throwable thrown) {
        return DatabaseTroubles.isAway(thrown);
    }

    /** Whether it is her file that was moved or deleted. */
    public static boolean isGone(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof FileGoneException) {
                return true;
            }
        }
        return false;
    }
}
