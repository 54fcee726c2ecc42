package hearthcloth.stash;


/**
 * One thing wrong with a stash file: where it is, what is wrong and how to mend it.
 *
 * @param line from 1, as an editor counts; 0 where the whole file is meant
 * @param column the header word; empty where the whole line is meant
 * @param sentence what is wrong, a semicolon, the mend; without a full stop
 */
public record Problem(int line, String column, String sentence) {

    private static final int SHOWN = 300;

    /** What a file says is quoted in the sentence, so that control characters are blanked and length is kept in check. */
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
