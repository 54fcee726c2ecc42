package hearthcloth.cli;

import java.util.List;

/** Something the maker gave cannot be used; ends the command with exit code 2. */
final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> sentences;

    /**
     * @param sentences each says what is wrong, where, and the mend
     */
    BadInput(List<String> sentences) {
        super(String.join("\n", sentences), null, false, false);
        this.sentences = List.copyOf(sentences);
    }

    BadInput(String sentence) {
        this(List.of(sentence));
    }

    List<String> sentences() {
        return sentences;
    }
}
