package hearthcloth.stash;

/**
 * One thing wrong with a stash file: where it is, what is wrong and how to mend it.
 *
 * @param line from 1, as an editor counts; 0 where the whole file is meant
 * @param column the header word; empty where the whole line is meant
 * @param sentence what is wrong, a semicolon, the mend; without a full stop
 */
public record Problem(int line, String column, String sentence) {

    /** The most characters of a sentence that are shown. */
    private static final int SHOWN = 300;

    /**
     * Makes a problem. The sentence may quote the file, so control characters are blanked and its length is limited.
     */
    public Problem {
        String plain = Names.plain(sentence);
        sentence = plain.length() > SHOWN ? plain.substring(0, SHOWN) + "…" : plain;
        column = Names.plain(column);
    }

    /** {@code line 4, width: "wide" is not a length; write one such as "6 1/2 in" or "16.5 cm"}. */
    @Override
    public String toString() {
        String where = line == 0 ? "" : "line " + line + (column.isEmpty() ? ": " : ", " + column + ": ");
        return where + sentence;
    }
}
