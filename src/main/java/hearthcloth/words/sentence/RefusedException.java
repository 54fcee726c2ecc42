package hearthcloth.words.sentence;

import hearthcloth.measure.MeasureException;
import java.util.List;

/** Something a maker gave cannot be used; it carries the sentence that says why and the mend, to be said in her language. */
public final class RefusedException extends MeasureException implements Refusal {

    private static final long serialVersionUID = 1L;

    private final transient Sentence sentence;

    public RefusedException(Sentence sentence) {
        super("");
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

    /** What is refused, as a sentence; one that is not about a length says itself. */
    public static Sentence sentence(MeasureException refused) {
        return refused instanceof RefusedException own ? own.sentence : ofLength(refused);
    }

    private static Sentence ofLength(MeasureException refused) {
        List<Argument> texts = refused.texts().stream().map(Argument::text).toList();
        return switch (refused.slip()) {
            case OTHER -> Sentence.itself(String.valueOf(refused.getMessage()));
            case MISSING -> ReadingSentences.lengthMissing();
            case BELOW_ZERO -> ReadingSentences.lengthBelow(texts.get(0));
            case NO_UNIT -> ReadingSentences.lengthNoUnit(texts.get(0));
            case UNKNOWN_UNIT -> ReadingSentences.lengthUnit(texts.get(0), texts.get(1));
            case NUMBERS -> ReadingSentences.lengthNumbers(texts.get(1), texts.get(0));
            case UNREAD -> ReadingSentences.lengthUnread(texts.get(0));
            case BY_ZERO -> ReadingSentences.lengthByZero(texts.get(0));
            case TWO_WAYS -> ReadingSentences.lengthTwoWays(texts.get(1), texts.get(2), texts.get(0));
            case TOO_LONG -> ReadingSentences.lengthTooLong(texts.get(0));
        };
    }
}
