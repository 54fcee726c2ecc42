package hearthcloth.stash;

import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Pieces alike in fabric, size and washing, shown once with their number. Never empty. */
public record Lot(List<Piece> pieces) {

    /** What the pieces of a lot share. */
    private record Kind(Fabric fabric, Size size, Piece.Washed washed) {}

    public Lot {
        pieces = List.copyOf(pieces);
    }

    /** The lots of these pieces, in the order of their first pieces. */
    public static List<Lot> of(List<Piece> pieces) {
        Map<Kind, List<Piece>> found = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            found.computeIfAbsent(kind(piece), kind -> new ArrayList<>()).add(piece);
        }
        return found.values().stream().map(Lot::new).toList();
    }

    /** The lot that {@code piece} belongs to. */
    public static Lot around(Piece piece, Stash stash) {
        Kind kind = kind(piece);
        return new Lot(stash.pieces().stream()
                .filter(other -> kind(other).equals(kind))
                .toList());
    }

    private static Kind kind(Piece piece) {
        return new Kind(piece.fabric(), piece.size(), piece.washed());
    }

    public Piece first() {
        return pieces.get(0);
    }

    public int count() {
        return pieces.size();
    }

    public Size size() {
        return first().size();
    }

    /** The pieces' numbers as one pins them on: {@code 14}, {@code 14–25}, {@code 3, 7, 9 …}. */
    public String numbers() {
        if (count() == 1) {
            return first().id();
        }
        if (isOneRun()) {
            return first().id() + "–" + pieces.get(count() - 1).id();
        }
        String some = String.join(", ", pieces.stream().limit(3).map(Piece::id).toList());
        return count() > 3 ? some + " …" : some;
    }

    private boolean isOneRun() {
        return IntStream.range(0, count()).allMatch(i -> pieces.get(i).id().equals(String.valueOf(first().row() + i)));
    }
}
