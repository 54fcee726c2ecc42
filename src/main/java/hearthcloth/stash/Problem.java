package hearthcloth.stash;

import hearthcloth.measure.Ruler;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;

/**
 * One thing wrong with a stash file: where it is, what is wrong and how to mend it.
 *
 * @param line from 1, as an editor counts; 0 where the whole file is meant
 * @param column the header word; empty where the whole line is meant
 * @param sentence what is wrong, a semicolon, the mend; without a full stop
 */
public record Problem(int line, String column, Sentence sentence) {

    /** The most characters of a sentence that are shown. */
    private static final int SHOWN = 300;

    public Problem {
        column = Names.plain(column);
    }

    /** Where it is and what is wrong, in a sentence that begins small and has no full stop. */
    public Sentence said() {
        return at(sentence);
    }

    private Sentence at(Sentence what) {
        return line == 0
                ? what
                : RefusingSentences.fileAt(column.isEmpty() ? "none" : column, Argument.number(line), what);
    }

    /** The same to a reader; it may quote the file, so what is wrong is one line of limited length. */
    public String in(Voice voice) {
        String plain = Names.plain(sentence.in(voice));
        return at(Sentence.itself(plain.length() > SHOWN ? plain.substring(0, SHOWN) + "…" : plain))
                .in(voice);
    }

    /** {@code line 4, width: "wide" is not a length; write one such as "6 1/2 in" or "16.5 cm"}. */
    @Override
    public String toString() {
        return in(Voice.english(Ruler.EIGHTHS));
    }
}
