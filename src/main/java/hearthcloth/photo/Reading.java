package hearthcloth.photo;

import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.words.sentence.Sentence;
import java.util.List;

/** The result of reading a photograph. */
public sealed interface Reading {

    /**
     * The sheet was found, and everything that stands out from the ground was measured by it.
     *
     * @param pieces from top to bottom and left to right; each carries its own doubts
     */
    record Read(List<ReadPiece> pieces, FloorScale scale) implements Reading {
        public Read {
            pieces = List.copyOf(pieces);
        }

        /** The same reading of the same photograph at {@code times} the size. */
        Read enlarged(double times) {
            return new Read(pieces.stream().map(piece -> piece.enlarged(times)).toList(), scale.enlarged(times));
        }

        /** The doubts that every piece shares. */
        public List<Doubt> sharedDoubts() {
            return pieces.stream()
                    .flatMap(piece -> piece.doubts().stream())
                    .filter(doubt -> doubt.kind() == Doubt.Kind.SHEET)
                    .distinct()
                    .toList();
        }
    }

    /** Nothing could be measured; {@code reason} says why and what to do, in sentences for the maker. */
    record Refused(Sentence reason) implements Reading {}
}
