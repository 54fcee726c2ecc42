package hearthcloth.measure;

import java.util.List;

/**
 * A measure that cannot be read. What is wrong with a length is a {@link Slip}, which the room of words tells a maker with the
 * mend; its message is for programmers. Of any other measure the message is that sentence.
 */
public class MeasureException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** What is wrong with a length that was typed; {@code OTHER} where it is something else. */
    public enum Slip {
        MISSING,
        BELOW_ZERO,
        NO_UNIT,
        UNKNOWN_UNIT,
        NUMBERS,
        UNREAD,
        BY_ZERO,
        TWO_WAYS,
        TOO_LONG,
        OTHER
    }

    private final Slip slip;
    private final transient List<String> texts;

    public MeasureException(String message) {
        super(message);
        this.slip = Slip.OTHER;
        this.texts = List.of();
    }

    MeasureException(Slip slip, String... texts) {
        super(slip + " " + String.join(" ", texts));
        this.slip = slip;
        this.texts = List.of(texts);
    }

    /** What is wrong, to be said in another language. */
    public Slip slip() {
        return slip;
    }

    /** What was typed, and what the mend names. */
    public List<String> texts() {
        return texts;
    }
}
