package hearthcloth.wish;

import java.util.List;

/** Something the maker gave cannot be used; ends the command with exit code 2. */
public final class BadInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> sentences;

    /**
     * Ends the command.
     *
     * @param sentences each says what is wrong, where, and the mend
     */
    public BadInputException(List<String> sentences) {
        super(String.join("\n", sentences), null, false, false);
        this.sentences = List.copyOf(sentences);
    }

    public BadInputException(String sentence) {
        this(List.of(sentence));
    }

    public List<String> sentences() {
        return sentences;
    }
}
