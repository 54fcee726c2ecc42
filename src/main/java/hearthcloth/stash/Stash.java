package hearthcloth.stash;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Everything the maker laid out: each physical piece apart. Immutable. */
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
        return pieces.stream().mapToDouble(Piece::areaMm2).sum();
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
