package hearthcloth.measure;

import java.util.List;

/** A measure that cannot be read; the message is one sentence for the maker, with the mend. */
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
        this(Slip.OTHER, message, List.of());
    }

    MeasureException(Slip slip, String message, List<String> texts) {
        super(message);
        this.slip = slip;
        this.texts = List.copyOf(texts);
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
