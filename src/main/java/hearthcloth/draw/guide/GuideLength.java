package hearthcloth.draw.guide;

import java.util.Locale;
import java.util.Optional;

/** How much a printed guide tells. */
public enum GuideLength {
    /** Everything, for one maker alone: each piece, each seam, each corner of the hem. */
    FULL,
    /** Four to six pages for a class, where a teacher shows the seam. */
    CLASS;

    /** The length with this word. */
    public static Optional<GuideLength> named(String text) {
        String plain = text.strip().toUpperCase(Locale.ROOT);
        return Optional.of(plain)
                .filter(word -> word.equals(FULL.name()) || word.equals(CLASS.name()))
                .map(GuideLength::valueOf);
    }
}
