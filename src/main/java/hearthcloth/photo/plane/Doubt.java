package hearthcloth.photo.plane;


/**
 * A reason not to trust what was read about a piece.
 *
 * @param sentence for the maker: what is wrong and what to do
 */
public record Doubt(Kind kind, String sentence) {

    /** What can be wrong. */
    public enum Kind {
        TOUCHING,
        CUT_OFF,
        FAINT,
        FAR,
        FRAYED,
        UNEVEN,
        /** Something is wrong with the sheet that all sizes hang on: every piece is doubted. */
        SHEET
    }
}
