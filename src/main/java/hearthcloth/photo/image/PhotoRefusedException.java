package hearthcloth.photo.image;

import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.Sentence;

/** A photograph that cannot be read, and the sentence that says why and what to do. It never leaves {@link PhotoReader}. */
public class PhotoRefusedException extends RuntimeException implements Refusal {

    private static final long serialVersionUID = 1L;

    private final transient Sentence sentence;

    public PhotoRefusedException(Sentence sentence) {
        this.sentence = sentence;
    }

    public PhotoRefusedException(Sentence sentence, Throwable cause) {
        super(cause);
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
}
