package hearthcloth.stash;

import hearthcloth.colour.Figure;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Everything the maker owns, each physical piece by itself. Immutable. */
public record Stash(List<Piece> pieces) {

    public Stash {
        pieces = List.copyOf(pieces);
    }

    /** The fabrics in the order they first appear. */
    public List<Fabric> fabrics() {
        Map<String, Fabric> found = new LinkedHashMap<>();
        pieces.forEach(piece -> found.putIfAbsent(piece.fabric().name(), piece.fabric()));
        return List.copyOf(found.values());
    }

    public Optional<Fabric> fabric(String name) {
        return fabrics().stream()
                .filter(fabric -> fabric.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    public List<Piece> of(Fabric fabric) {
        return pieces.stream()
                .filter(piece -> piece.fabric().name().equals(fabric.name()))
                .toList();
    }

    public double areaMm2() {
        return pieces.stream().mapToDouble(Piece::areaMm2).reduce(0, Double::sum);
    }

    /**
     * A caution where washed and unwashed pieces are together. The first washing shrinks cotton by 2 to 5 %, loose
     * weaves by up to 10 % along the warp (docs/sources.md#shrinkage); sewn together, the washed pieces would stay flat
     * and the others pucker them. For a plan, ask the stash of the pieces it uses.
     */
    public Optional<Sentence> washingCaution() {
        Map<Piece.Washed, Piece> first = new EnumMap<>(Piece.Washed.class);
        pieces.forEach(piece -> first.putIfAbsent(piece.washed(), piece));
        Piece washed = first.get(Piece.Washed.YES);
        Piece unwashed = first.get(Piece.Washed.NO);
        if (washed == null || unwashed == null) {
            return Optional.empty();
        }
        return Optional.of(PlanningSentences.washMixed(
                Argument.text(unwashed.id()),
                Argument.text(unwashed.fabric().name()),
                Argument.text(washed.id()),
                Argument.text(washed.fabric().name())));
    }

    /**
     * The same pieces of fabrics that look as her pictures show.
     *
     * @param figures by the fabric's name
     */
    public Stash pictured(Map<String, Figure> figures) {
        if (figures.isEmpty()) {
            return this;
        }
        Map<String, Fabric> seen = new HashMap<>();
        return new Stash(pieces.stream()
                .map(piece -> figures.containsKey(piece.fabric().name())
                        ? new Piece(
                                piece.id(),
                                seen.computeIfAbsent(
                                        piece.fabric().name(),
                                        name -> piece.fabric().pictured(Objects.requireNonNull(figures.get(name)))),
                                piece.size(),
                                piece.washed(),
                                piece.row())
                        : piece)
                .toList());
    }

    /** The stash with only these fabrics. */
    public Stash only(List<String> names) {
        List<Piece> kept = new ArrayList<>();
        for (Piece piece : pieces) {
            if (names.contains(piece.fabric().name())) {
                kept.add(piece);
            }
        }
        return new Stash(kept);
    }
}
