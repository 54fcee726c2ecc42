package hearthcloth.stash;

/** The result of reading a line: pieces, or what is unclear about it. */
public sealed interface SpokenLine permits SpokenPieces, SpokenLine.Unclear {

    /**
     * A line that was not understood.
     *
     * @param sentence what is missing or cannot be read, and the mend; without a full stop
     */
    record Unclear(String sentence) implements SpokenLine {}
}
