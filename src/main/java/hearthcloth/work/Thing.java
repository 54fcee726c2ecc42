package hearthcloth.work;

/**
 * Something a change touches: one piece of fabric, one cloth, one photograph, or the stash or the shelf of cloths as a page that is looked at.
 *
 * @param id which of its kind; empty for stash and shelf
 */
public record Thing(Kind kind, String id) {

    /** What kinds of things there are. */
    public enum Kind {
        PIECE,
        CLOTH,
        PHOTOGRAPH,
        STASH,
        SHELF
    }

    /** The stash as a whole: every change of a piece is seen there. Changes do not rest on each other by it. */
    public static final Thing STASH = new Thing(Kind.STASH, "");

    /** All cloths together, as the page that shows them: it sees them come and go. Changes do not rest on each other by it. */
    public static final Thing SHELF = new Thing(Kind.SHELF, "");

    /** Any piece at all, for changes of earlier files, of which it was not recorded which pieces they touched. */
    public static final Thing ANY_PIECE = new Thing(Kind.PIECE, "*");

    public static Thing piece(String id) {
        return new Thing(Kind.PIECE, id);
    }

    public static Thing cloth(String id) {
        return new Thing(Kind.CLOTH, id);
    }

    public static Thing photograph(String id) {
        return new Thing(Kind.PHOTOGRAPH, id);
    }

    /** The word for it in the journal, such as {@code piece:30}. */
    public String word() {
        String name = kind.name().toLowerCase(java.util.Locale.ROOT);
        return id.isEmpty() ? name : name + ":" + id;
    }

    /**
     * Reads what {@link #word} wrote.
     *
     * @throws IllegalArgumentException where it is no word for a thing
     */
    public static Thing read(String word) {
        int colon = word.indexOf(':');
        String name = colon < 0 ? word : word.substring(0, colon);
        return new Thing(
                Kind.valueOf(name.toUpperCase(java.util.Locale.ROOT)), colon < 0 ? "" : word.substring(colon + 1));
    }
}
