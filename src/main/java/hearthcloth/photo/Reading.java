package hearthcloth.photo;

import java.util.List;

/** What came of reading a photograph. */
public sealed interface Reading {

    /**
     * The sheet was found and everything apart from the ground measured by it.
     *
     * @param pieces top to bottom, left to right; each carries its own doubts
     * @param notes doubts about the picture as a whole, sentences for the maker
     */
    record Read(List<Piece> pieces, Scale scale, List<String> notes) implements Reading {
        public Read {
            pieces = List.copyOf(pieces);
            notes = List.copyOf(notes);
        }
    }

    /** Nothing could be measured; {@code reason} says why and what to do, in sentences for the maker. */
    record Refused(String reason) implements Reading {}
}
