package hearthcloth.work;

import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.designing.DesigningWords;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which kept cloth that is not cut yet counts on which pieces of the stash. Immutable. */
public record Promises(List<Counting> cloths) {

    /**
     * A cloth and the pieces it is to be cut from, as they were when it was planned.
     *
     * @param name as the maker calls it
     */
    public record Counting(String cloth, String name, List<Piece> pieces) {
        public Counting {
            pieces = List.copyOf(pieces);
        }
    }

    public Promises {
        cloths = List.copyOf(cloths);
    }

    private Optional<Counting> of(String cloth) {
        return cloths.stream().filter(one -> one.cloth().equals(cloth)).findFirst();
    }

    /** The pieces the cloth counts on that are gone, or are no longer as they were when it was planned. */
    public List<Piece> missing(String cloth, Stash stash) {
        Set<Piece> there = new HashSet<>(stash.pieces());
        return of(cloth).stream()
                .flatMap(one -> one.pieces().stream())
                .filter(piece -> !there.contains(piece))
                .toList();
    }

    /** What the maker should know before she cuts this cloth, one sentence each; empty where all is well. */
    List<String> warnings(String cloth, Stash stash, List<Piece> aside, DesigningWords words) {
        List<String> said = new ArrayList<>();
        if (!aside.isEmpty()) {
            said.add(words.warnAside(aside.size(), named(aside, words)));
        }
        List<Piece> missing = missing(cloth, stash);
        if (!missing.isEmpty()) {
            said.add(words.warnMissing(missing.size(), named(missing, words)));
        }
        for (Counting other : cloths) {
            List<Piece> both = other.pieces().stream()
                    .filter(piece -> !other.cloth().equals(cloth) && !missing.contains(piece))
                    .filter(piece ->
                            of(cloth).stream().anyMatch(one -> one.pieces().contains(piece)))
                    .toList();
            if (!both.isEmpty()) {
                said.add(words.warnShared(other.name(), shared(both, words)));
            }
        }
        return List.copyOf(said);
    }

    /** Numbers say little of what she still has whole, and many of them nothing. */
    private static final int FEW = 4;

    private static String shared(List<Piece> pieces, DesigningWords words) {
        return pieces.size() <= FEW
                ? named(pieces, words)
                : words.warnMany(
                        pieces.stream()
                                .map(piece -> piece.fabric().name())
                                .distinct()
                                .collect(Collectors.joining(", ")),
                        pieces.size());
    }

    private static String named(List<Piece> pieces, DesigningWords words) {
        return words.warnPieces(
                pieces.size(),
                pieces.stream()
                        .map(piece -> words.warnPiece(piece.fabric().name(), piece.id()))
                        .collect(Collectors.joining(", ")));
    }
}
