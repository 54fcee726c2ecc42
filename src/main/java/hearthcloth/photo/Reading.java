package hearthcloth.photo;

import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.scale.FloorScale;
import java.util.List;


/** What came of reading a photograph. */
public sealed interface Reading {

    /**
     * The sheet was found and everything apart from the ground measured by it.
     *
     * @param pieces top to bottom, left to right; each carries its own doubts
     */
    record Read(List<ReadPiece> pieces, FloorScale scale) implements Reading {
        public Read {
            pieces = List.copyOf(pieces);
        }

        /** What every piece is doubted for. */
        public List<Doubt> sharedDoubts() {
            return pieces.stream()
                    .flatMap(piece -> piece.doubts().stream())
                    .filter(doubt -> doubt.kind() == Doubt.Kind.SHEET)
                    .distinct()
                    .toList();
        }
    }

    /** Nothing could be measured; {@code reason} says why and what to do, in sentences for the maker. */
    record Refused(String reason) implements Reading {}
}
