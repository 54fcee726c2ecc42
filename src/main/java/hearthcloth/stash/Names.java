package hearthcloth.stash;

import java.util.Locale;

/** Prepares names as makers write them to be shown, compared and stored in any spreadsheet. */
final class Names {

    /** The longest name that still fits on a label. */
    static final int LONGEST = 80;

    /** The most characters of a name that a sentence quotes. */
    private static final int QUOTED = 40;

    private Names() {}

    /** The name on one line: runs of white space and of characters that no document may hold become one space. */
    static String plain(String text) {
        return text.replaceAll("[\\s\\p{Cntrl}\\uFFFE\\uFFFF]+", " ").strip();
    }

    /** A key that is equal for two spellings of one name. */
    static String key(String name) {
        return plain(name).toLowerCase(Locale.ROOT);
    }

    static String quoted(String text) {
        String plain = plain(text);
        return "\"" + (plain.length() > QUOTED ? plain.substring(0, QUOTED) + "…" : plain) + "\"";
    }

    /**
     * A cell for a CSV file: quoted where necessary, and with an apostrophe before anything that a spreadsheet would
     * run as a formula. {@link #unguarded} removes the apostrophe again.
     */
    static String cell(String text) {
        String safe = isFormula(text) ? "'" + text : text;
        boolean bare = safe.chars().noneMatch(c -> ",;\"\t\r\n".indexOf(c) >= 0);
        return bare ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }

    static String unguarded(String cell) {
        return cell.startsWith("'") && isFormula(cell) ? cell.substring(1) : cell;
    }

    private static boolean isFormula(String text) {
        int first = 0;
        while (first < text.length() && text.charAt(first) == '\'') {
            first++;
        }
        return first < text.length() && "=+-@\t\r".indexOf(text.charAt(first)) >= 0;
    }
}
