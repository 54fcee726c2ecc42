package hearthcloth.draw.letters;

/**
 * The letters of all pictures: Source Sans 3, and Noto Sans KR and JP for what it lacks (SIL Open Font License 1.1, beside
 * the font files), with the widths of words, by which labels are kept apart.
 */
public final class Typeface {

    /** Height of capitals and figures as a share of the em (from the font's OS/2 table: 660 of 1000). */
    public static final double CAPS = 0.66;

    /**
     * How far letters without accents reach above the baseline, as a share of the em; {@link #BELOW} is the share below
     * it.
     */
    public static final double ABOVE = 0.74;

    public static final double BELOW = 0.22;

    /** The width of every syllable in the Korean font as a share of the em; Japanese letters are as wide as the em. */
    private static final double HANGUL = 0.92;

    /**
     * The width assumed for a letter that the typeface lacks, as a share of the em; wider than in most other typefaces.
     */
    private static final double UNKNOWN = 1.2;

    private Typeface() {}

    /** The width of {@code text} set in {@code size} millimetres, in millimetres; no kerning. */
    public static double width(String text, double size, Weight weight) {
        return size
                * SafeText.onOneLine(text)
                        .codePoints()
                        .mapToDouble(letter -> advance(letter, weight))
                        .sum();
    }

    private static double advance(int letter, Weight weight) {
        int width = LetterWidths.of(letter, weight);
        if (width >= 0) {
            return width / 1000.0;
        }
        return switch (Script.of(letter)) {
            case KOREAN -> HANGUL;
            case JAPANESE -> 1;
            case WESTERN -> UNKNOWN;
        };
    }
}
