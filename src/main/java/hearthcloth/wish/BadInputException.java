package hearthcloth.wish;

import hearthcloth.measure.Ruler;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.stream.Collectors;

/** Something the maker gave cannot be used; ends the command with exit code 2. */
public final class BadInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Sentence> sentences;
    private final Ruler ruler;

    /**
     * Ends the command.
     *
     * @param sentences each says what is wrong, where, and the mend
     */
    public BadInputException(List<String> sentences) {
        this(sentences.stream().map(Sentence::itself).toArray(Sentence[]::new));
    }

    public BadInputException(String sentence) {
        this(List.of(sentence));
    }

    public BadInputException(Sentence... sentences) {
        this(Ruler.EIGHTHS, List.of(sentences));
    }

    /**
     * Ends the command.
     *
     * @param ruler on which lengths are told in English
     */
    BadInputException(Ruler ruler, List<Sentence> sentences) {
        super(
                sentences.stream().map(one -> one.in(Voice.english(ruler))).collect(Collectors.joining("\n")),
                null,
                false,
                false);
        this.sentences = List.copyOf(sentences);
        this.ruler = ruler;
    }

    /** What is wrong. */
    public List<Sentence> said() {
        return sentences;
    }

    /** The same to a reader of a language, lengths on the ruler they were wished by. */
    public List<String> in(Language language) {
        return in(Voice.of(language, ruler));
    }

    /** The same to a reader. */
    public List<String> in(Voice voice) {
        return sentences.stream().map(one -> ListWords.line(one.in(voice))).toList();
    }
}
