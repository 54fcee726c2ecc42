package hearthcloth.draw.letters;

/**
 * The writings that pictures are set in, each with the font files that hold its letters: Latin and all that Source Sans 3
 * has, Hangul, and what Japanese is written in. Which one a letter belongs to is read off its block in Unicode.
 */
public enum Script {
    WESTERN("SourceSans3-", "Source Sans 3"),
    KOREAN("NotoSansKR-", "Noto Sans KR"),
    JAPANESE("NotoSansJP-", "Noto Sans JP");

    private final String file;
    private final String family;

    Script(String file, String family) {
        this.file = file;
        this.family = family;
    }

    /** The writing of a letter; western where it is of none, as such letters are shown as □. */
    public static Script of(int letter) {
        if (LetterWidths.of(letter, Weight.REGULAR) >= 0) {
            return WESTERN;
        }
        if (isHangul(letter)) {
            return KOREAN;
        }
        return isJapanese(letter) ? JAPANESE : WESTERN;
    }

    static boolean isHangul(int letter) {
        return in(letter, 0xac00, 0xd7ff)
                || in(letter, 0x1100, 0x11ff)
                || in(letter, 0x3130, 0x318f)
                || in(letter, 0xa960, 0xa97f);
    }

    /** Kana, kanji and their punctuation, the wide forms, and the signs that Japanese text uses beside them. */
    private static boolean isJapanese(int letter) {
        return in(letter, 0x3000, 0x312f)
                || in(letter, 0x3190, 0x9fff)
                || in(letter, 0xf900, 0xfaff)
                || in(letter, 0xff01, 0xff60)
                || in(letter, 0xffe0, 0xffe6)
                || in(letter, 0x2000, 0x2bff)
                || in(letter, 0x20000, 0x3ffff);
    }

    private static boolean in(int letter, int first, int last) {
        return letter >= first && letter <= last;
    }

    /** The name of the family, as readers of pictures know it. */
    public String family() {
        return family;
    }

    /** The weight that a file is there for: the eastern fonts have no semibold, bold stands for it. */
    public Weight cut(Weight weight) {
        return this == WESTERN || weight == Weight.REGULAR ? weight : Weight.BOLD;
    }

    /** The name of the font file. */
    public String resource(Weight weight) {
        return file + cut(weight).word() + ".ttf";
    }
}
