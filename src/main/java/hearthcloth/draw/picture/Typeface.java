package hearthcloth.draw.picture;

/**
 * The letters of all pictures: Source Sans 3 (SIL Open Font License 1.1, beside the font files), with the widths of
 * words, by which labels are kept apart.
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

    /**
     * The width assumed for a letter that the typeface lacks, as a share of the em; wider than in most other typefaces.
     */
    private static final double UNKNOWN = 1.2;

    /** Stands for a letter that the typeface lacks where no other typeface can be used. */
    private static final String MISSING = "□";

    private Typeface() {}

    /** The width of {@code text} set in {@code size} millimetres, in millimetres; no kerning. */
    public static double width(String text, double size, Weight weight) {
        return size
                * SafeText.clean(text)
                        .codePoints()
                        .mapToDouble(letter -> advance(letter, weight))
                        .sum();
    }

    private static double advance(int letter, Weight weight) {
        int width = LetterWidths.of(letter, weight);
        return width < 0 ? UNKNOWN : width / 1000.0;
    }

    /** {@code text} with □ for each letter the typeface lacks: for PDF, where nothing else is embedded. */
    static String printable(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (has(c)) {
                out.appendCodePoint(c);
            } else if (!isJoining(c)) {
                out.append(MISSING);
            }
        });
        return out.toString();
    }

    static boolean has(int letter) {
        return LetterWidths.of(letter, Weight.REGULAR) >= 0;
    }

    /** Whether a character is a joiner or variation selector, which shows nothing by itself. */
    private static boolean isJoining(int c) {
        return c == 0x200c || c == 0x200d || (c >= 0xfe00 && c <= 0xfe0f);
    }
}
