package hearthcloth.cli.help;

import hearthcloth.draw.letters.LineBreaks;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines of a terminal, whose letters all take one column but those of East Asian scripts, which take two
 * (docs/sources.md#wide-letters). Letters whose width the annex leaves open are counted as one.
 */
public final class Columns {

    /** A last line shorter than this is a stub. */
    private static final int LEAST_LAST = 8;

    private static final int MOST_DRAWN_IN = 12;

    /** First and last of each run of wide letters, in their order. */
    private static final int[] WIDE = {
        0x1100, 0x115f, 0x2e80, 0x303e, 0x3041, 0x4dbf, 0x4e00, 0xa4cf, 0xac00, 0xd7a3, 0xf900, 0xfaff, 0xfe30, 0xfe6f,
        0xff01, 0xff60, 0xffe0, 0xffe6, 0x20000, 0x3fffd
    };

    private Columns() {}

    /** How many columns the words take. */
    public static int of(String words) {
        int columns = 0;
        for (int at = 0; at < words.length(); at += Character.charCount(words.codePointAt(at))) {
            columns += isWide(words.codePointAt(at)) ? 2 : 1;
        }
        return columns;
    }

    private static boolean isWide(int letter) {
        for (int i = 0; i < WIDE.length && letter >= WIDE[i]; i += 2) {
            if (letter <= WIDE[i + 1]) {
                return true;
            }
        }
        return false;
    }

    /** The words and blanks up to this column; where they reach it already, as they are. */
    public static String padded(String words, int column) {
        return words + " ".repeat(Math.max(0, column - of(words)));
    }

    /**
     * The words on lines of at most so many columns, parted as their language allows; a longer word stands alone. A last line
     * of a letter or two is lengthened by drawing the lines before it in, where that takes no further line.
     */
    static List<String> lines(String words, int columns) {
        List<String> usual = wrapped(words, columns);
        for (int less = 1; less <= MOST_DRAWN_IN && isStub(usual); less++) {
            List<String> narrower = wrapped(words, columns - less);
            if (narrower.size() == usual.size() && !isStub(narrower)) {
                return narrower;
            }
        }
        return usual;
    }

    private static boolean isStub(List<String> lines) {
        return lines.size() > 1 && of(lines.get(lines.size() - 1)) < LEAST_LAST;
    }

    private static List<String> wrapped(String words, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int reached = 0;
        for (LineBreaks.Part part : LineBreaks.parts(words)) {
            int width = of(part.text());
            int blank = line.isEmpty() ? 0 : part.before().length();
            if (!line.isEmpty() && reached + blank + width + part.ending().length() > columns) {
                lines.add(line.toString());
                line.setLength(0);
                reached = 0;
                blank = 0;
            }
            line.append(part.before(), 0, blank).append(part.text());
            reached += blank + width;
        }
        lines.add(line.toString());
        return List.copyOf(lines);
    }
}
