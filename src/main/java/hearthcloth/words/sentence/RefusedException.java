package hearthcloth.words.sentence;

import hearthcloth.measure.MeasureException;
import java.util.List;

/** Something a maker gave cannot be used; it carries the sentence that says why and the mend, to be said in her language. */
public final class RefusedException extends MeasureException {

    private static final long serialVersionUID = 1L;

    private final transient Sentence sentence;

    public RefusedException(Sentence sentence) {
        super("");
        this.sentence = sentence;
    }

    /** The sentence in English. */
    @Override
    public String getMessage() {
        return sentence.english();
    }

    /** What is refused, as a sentence; a refusal that has none yet says its English. */
    public static Sentence sentence(MeasureException refused) {
        return refused instanceof RefusedException own ? own.sentence : ofLength(refused);
    }

    private static Sentence ofLength(MeasureException refused) {
        List<Argument> texts = refused.texts().stream().map(Argument::text).toList();
        return switch (refused.slip()) {
            case OTHER -> Sentence.itself(String.valueOf(refused.getMessage()));
            case MISSING -> Reading.lengthMissing();
            case BELOW_ZERO -> Reading.lengthBelow(texts.get(0));
            case NO_UNIT -> Reading.lengthNoUnit(texts.get(0));
            case UNKNOWN_UNIT -> Reading.lengthUnit(texts.get(0), texts.get(1));
            case NUMBERS -> Reading.lengthNumbers(texts.get(1), texts.get(0));
            case UNREAD -> Reading.lengthUnread(texts.get(0));
            case BY_ZERO -> Reading.lengthByZero(texts.get(0));
            case TWO_WAYS -> Reading.lengthTwoWays(texts.get(1), texts.get(2), texts.get(0));
            case TOO_LONG -> Reading.lengthTooLong(texts.get(0));
        };
    }
}
