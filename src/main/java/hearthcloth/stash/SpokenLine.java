package hearthcloth.stash;

import hearthcloth.words.sentence.Sentence;

/** The result of reading a line: pieces, or what is unclear about it. */
public sealed interface SpokenLine permits SpokenPieces, SpokenLine.Unclear {

    /**
     * A line that was not understood.
     *
     * @param said what is missing or cannot be read, and the mend; without a full stop
     */
    record Unclear(Sentence said) implements SpokenLine {}
}
