package hearthcloth.plan.model;

import java.util.Locale;
import java.util.Optional;

/** How much light and dark she wants beside each other: a dial from bars that stand apart to one quiet field. */
public enum Contrast {
    /** Neighbours as different as the heap allows. */
    MOST("most", "as contrasty as can be"),
    /** The log cabin reads: the hearth stands out and no fabric lies beside itself. */
    READS("reads", "the log cabin reads"),
    /** The hearth stands out; neighbours may be near each other in colour. */
    EASY("easy", "between the two"),
    /** Neighbours are near each other in colour. */
    QUIET("quiet", "as quiet as can be"),
    /** Hearth and bars melt into one field. */
    MELTS("melts", "it melts into one field");

    private final String word;
    private final String words;

    Contrast(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** The word in the shell: {@code reads}. */
    public String word() {
        return word;
    }

    /** Whether the hearth is to stand out. */
    public boolean isSeen() {
        return compareTo(EASY) <= 0;
    }

    public static Optional<Contrast> named(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        for (Contrast contrast : values()) {
            if (contrast.word.equals(plain) || contrast.words.equals(plain)) {
                return Optional.of(contrast);
            }
        }
        return Optional.empty();
    }
}
