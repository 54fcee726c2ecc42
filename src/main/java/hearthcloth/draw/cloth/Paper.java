package hearthcloth.draw.cloth;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The paper a guide is printed on, upright. */
public enum Paper {
    /** A4, 210 × 297 mm. Source of both sizes: docs/sources.md#paper-a4, #paper-letter. */
    A4("a4", 210, 297),
    /** 8½ × 11 in. */
    LETTER("letter", 215.9, 279.4);

    /**
     * Where Letter is the usual paper; A4 is in all other places. Latin America as a whole (419) is counted here, since most
     * of its people print on Letter. Source: docs/sources.md#paper-places.
     */
    private static final Set<String> LETTER_PLACES =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE", "419");

    private final String word;
    private final double width;
    private final double height;

    Paper(String word, double width, double height) {
        this.word = word;
        this.width = width;
        this.height = height;
    }

    public static Optional<Paper> named(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        for (Paper paper : values()) {
            if (paper.word.equals(plain)) {
                return Optional.of(paper);
            }
        }
        return Optional.empty();
    }

    /** The paper in the printers of a place, which is named by its two letters in ISO 3166. */
    public static Paper usedIn(String region) {
        return LETTER_PLACES.contains(region) ? LETTER : A4;
    }

    /** The word in the shell: {@code a4}, {@code letter}. */
    public String word() {
        return word;
    }

    /** The width in millimetres. */
    public double width() {
        return width;
    }

    /** The height in millimetres. */
    public double height() {
        return height;
    }
}
