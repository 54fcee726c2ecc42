package hearthcloth.photo.plane;

import hearthcloth.words.sentence.Sentence;

/**
 * A reason not to trust what was read about a piece, or to know before it is cut.
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

    /**
     * Whether the piece has to be looked at because of it. Threads only are told: a piece is measured without them, and where
     * they hide its edge farther than that is said by its ±, its sides are doubted as well.
     */
    public boolean isOpen() {
        return kind != Kind.FRAYED;
    }
}
