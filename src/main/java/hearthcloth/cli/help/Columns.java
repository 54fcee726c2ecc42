package hearthcloth.cli.help;

import hearthcloth.draw.letters.LineBreaks;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines of a terminal, whose letters all take one column but those of East Asian scripts, which take two
 * (docs/sources.md#wide-letters). Letters whose width the annex leaves open are counted as one.
 */
final class Columns {

    /** A last line shorter than this is a stub. */
    private static final int LEAST_LAST = 8;

    private static final int MOST_DRAWN_IN = 12;

    /** First and last of each run of wide letters. */
    private static final List<int[]> WIDE = List.of(
            new int[] {0x1100, 0x115f},
            new int[] {0x2e80, 0x303e},
            new int[] {0x3041, 0x4dbf},
            new int[] {0x4e00, 0xa4cf},
            new int[] {0xac00, 0xd7a3},
            new int[] {0xf900, 0xfaff},
            new int[] {0xfe30, 0xfe6f},
            new int[] {0xff01, 0xff60},
            new int[] {0xffe0, 0xffe6},
            new int[] {0x20000, 0x3fffd});

    private Columns() {}

    /** How many columns the words take. */
    static int of(String words) {
        return words.codePoints().map(letter -> isWide(letter) ? 2 : 1).sum();
    }

    private static boolean isWide(int letter) {
        return WIDE.stream().anyMatch(run -> letter >= run[0] && letter <= run[1]);
    }

    /** The words and blanks up to this column; where they reach it already, as they are. */
    static String padded(String words, int column) {
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
        for (LineBreaks.Part part : LineBreaks.parts(words)) {
            String next = (line.isEmpty() ? "" : part.before()) + part.text();
            if (!line.isEmpty() && of(line + next + part.ending()) > columns) {
                lines.add(line.toString());
                line.setLength(0);
                next = part.text();
            }
            line.append(next);
        }
        lines.add(line.toString());
        return List.copyOf(lines);
    }
}
