package hearthcloth.web.stash;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.SpokenLine;
import hearthcloth.stash.SpokenPieces;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.stashing.StashingWords;

/** Fields about fabric, held to the same rules as a line that is typed. */
public final class StashFields {

    private static final int LONGEST_NAME = 80;

    private StashFields() {}

    /** A fabric's name she wrote, on one line. */
    public static String name(String written, Language language) {
        StashingWords words = StashingWords.in(language);
        String name = written.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
        if (name.isEmpty()) {
            throw new MeasureException(words.wrongNoName());
        }
        if (name.codePointCount(0, name.length()) > LONGEST_NAME) {
            throw new MeasureException(words.wrongLongName(String.valueOf(LONGEST_NAME)));
        }
        return name;
    }

    static void checked(Size size) {
        checked(size, "1");
    }

    /** Said as a line, so that fields keep the same rules as lines. */
    static SpokenPieces checked(Size size, String count) {
        SpokenLine said = SpokenPieces.hear(size + ", " + count + " of them, cloth", Unit.MILLIMETRE);
        if (said instanceof SpokenLine.Unclear unclear) {
            throw new RefusedException(unclear.said());
        }
        return (SpokenPieces) said;
    }
}
