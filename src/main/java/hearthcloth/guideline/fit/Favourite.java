package hearthcloth.guideline.fit;

import hearthcloth.guideline.ColourRule;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which fabric of a heap a rule wants in the middle, and how large a square the heap gives. */
record Favourite(Stash stash, ColourRule.Middle rule) {

    /**
     * The fabric.
     *
     * @param named her favourite, where she named one
     */
    Optional<Fabric> fabric(Optional<String> named) {
        return switch (rule) {
            case ANY -> Optional.empty();
            case FAVOURITE -> named.flatMap(stash::fabric);
            case LIGHTEST -> large().max(Comparator.comparingDouble(Favourite::lightness));
            case DARKEST -> large().min(Comparator.comparingDouble(Favourite::lightness));
        };
    }

    /** The fabrics with a piece whose square is at least half as wide as the largest of the heap; ours. */
    private java.util.stream.Stream<Fabric> large() {
        Length most = shorter(stash.pieces());
        return stash.fabrics().stream()
                .filter(fabric -> !shorter(stash.of(fabric)).times(2).isLessThan(most));
    }

    private static Length shorter(List<Piece> pieces) {
        return pieces.stream()
                .map(piece -> piece.size().width().min(piece.size().height()))
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private static double lightness(Fabric fabric) {
        return fabric.colour().lab().lightness();
    }

    /** All fabrics with this one first, so that the hearth is cut from it. */
    List<String> first(Fabric fabric) {
        List<String> names = new ArrayList<>(List.of(fabric.name()));
        stash.fabrics().stream()
                .map(Fabric::name)
                .filter(name -> !name.equals(fabric.name()))
                .forEach(names::add);
        return names;
    }

    /** The side of the largest square that one piece gives, of this fabric where one is meant, down to the ruler's marks. */
    Length largestSquare(Optional<Fabric> fabric, Ruler ruler) {
        List<Piece> pieces = fabric.map(stash::of).orElse(stash.pieces());
        return ruler.mark(shorter(pieces), Rounding.DOWN);
    }
}
