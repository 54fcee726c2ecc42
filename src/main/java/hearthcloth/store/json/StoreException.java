package hearthcloth.store.json;

import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.Sentence;
import java.util.Optional;

/** The store cannot do what was asked, and the sentence that says why. */
public final class StoreException extends RuntimeException implements Refusal {

    private static final long serialVersionUID = 1L;

    private final transient Sentence sentence;

    /** One that says itself: for what is said in the language of a page, or to the shell. */
    public StoreException(String message) {
        this(Sentence.itself(message));
    }

    public StoreException(Sentence sentence, Throwable cause) {
        super(cause);
        this.sentence = sentence;
    }

    public StoreException(Sentence sentence) {
        this.sentence = sentence;
    }

    @Override
    public Sentence sentence() {
        return sentence;
    }

    /** The sentence in English. */
    @Override
    public String getMessage() {
        return sentence.english();
    }

    /** A sentence for the fault of a database behind {@code thrown}; empty where it was something else. */
    public static Optional<Sentence> behind(Throwable thrown) {
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
