package hearthcloth.photo.plane;

import hearthcloth.words.sentence.Sentence;

/**
 * A reason not to trust what was read about a piece.
 *
 * @param sentence what is wrong and what to do, for the maker
 */
public record Doubt(Kind kind, Sentence sentence) {

    /** The kinds of doubt. */
    public enum Kind {
        TOUCHING,
        CUT_OFF,
        FAINT,
        FAR,
        FRAYED,
        UNEVEN,
        /** Something is wrong with the sheet that all sizes depend on, so every piece is doubted. */
        SHEET
    }
}
