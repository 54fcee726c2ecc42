package hearthcloth.store.json;

import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import java.nio.file.Path;
import java.sql.SQLException;

/** The maker's file was moved or deleted, or another put in its place, while the workroom is open on it. */
public final class FileGoneException extends SQLException implements Refusal {

    private static final long serialVersionUID = 1L;

    private final transient Sentence sentence;

    public FileGoneException(Path file) {
        super("");
        this.sentence = StoringSentences.troubleGone(Argument.text(file.toString()));
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
