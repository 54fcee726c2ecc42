package hearthcloth.draw;

import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.Sentence;

/** A picture cannot be taken; the message is a sentence for the maker. */
public final class RefusedPictureException extends RuntimeException implements Refusal {

    private static final long serialVersionUID = 1L;

    private final transient Sentence sentence;

    /** @param why as the message names it */
    RefusedPictureException(String why) {
        this.sentence = PhotographingSentences.kept(why);
    }

    RefusedPictureException(String why, Throwable cause) {
        super(cause);
        this.sentence = PhotographingSentences.kept(why);
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
}
