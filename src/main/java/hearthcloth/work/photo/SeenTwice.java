package hearthcloth.work.photo;

import hearthcloth.geometry.Polygons;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.photo.plane.MeasuredLength;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Pieces of one heap that two photographs show. Size, colour and figure say that two may be one piece; whether they are, only she
 * knows, so it is offered and never done.
 */
public final class SeenTwice {

    /** Areas of one piece in two photographs differ by no more than this share beyond what both ± allow. */
    private static final double AREA = 0.03;

    /** So much of a length, in millimetres, may be lost where a piece lies less flat the second time. */
    private static final double LAID_MM = 2;

    private SeenTwice() {}

    /**
     * For each piece of one photograph that may lie on another one too, the key of the piece there; each piece there is named once.
     *
     * @param here the pieces still to be taken in
     * @param there the pieces of the other photograph that are not left out
     */
    public static Map<String, String> of(List<SortedPiece> here, List<SortedPiece> there) {
        List<Pair> pairs = new ArrayList<>();
        for (SortedPiece one : here) {
            for (SortedPiece other : there) {
                if (isAlike(one, other)) {
                    pairs.add(new Pair(one.key(), other.key(), difference(one, other)));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::differs));
        Map<String, String> found = new LinkedHashMap<>();
        Set<String> named = new HashSet<>();
        for (Pair pair : pairs) {
            if (!found.containsKey(pair.here()) && named.add(pair.there())) {
                found.put(pair.here(), pair.there());
            }
        }
        return found;
    }

    private record Pair(String here, String there, double differs) {}

    private static boolean isAlike(SortedPiece one, SortedPiece other) {
        double[] own = usable(one);
        double[] its = usable(other);
        double give = Math.hypot(mm(widest(one)), mm(widest(other))) + LAID_MM;
        return one.look().isLike(other.look())
                && Math.abs(own[0] - its[0]) <= give
                && Math.abs(own[1] - its[1]) <= give
                && difference(one, other) <= AREA + give * perimeter(one) / area(one);
    }

    /** The usable rectangle's longer and shorter side, in millimetres. */
    private static double[] usable(SortedPiece piece) {
        double width = piece.piece().usable().width();
        double height = piece.piece().usable().height();
        return new double[] {Math.max(width, height), Math.min(width, height)};
    }

    private static double difference(SortedPiece one, SortedPiece other) {
        return Math.abs(Math.log(area(one) / Math.max(1e-9, area(other))));
    }

    private static double area(SortedPiece piece) {
        return piece.piece().outline().areaMm2();
    }

    private static double perimeter(SortedPiece piece) {
        return Polygons.perimeter(piece.piece().outline().floor());
    }

    private static Length widest(SortedPiece piece) {
        return piece.piece().outline().sides().stream()
                .map(MeasuredLength::giveOrTake)
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }
}
