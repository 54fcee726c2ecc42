package hearthcloth.stash;


/** What became of a line that was said: pieces, or what is unclear about it. */
public sealed interface SpokenLine permits SpokenPieces, SpokenLine.Unclear {

    /**
     * Not understood.
     *
     * @param sentence what is missing or cannot be read, and the mend; without a full stop
     */
    record Unclear(String sentence) implements SpokenLine {}
}
