package hearthcloth.plan.together;

import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Deals pieces out to cloths as cards are dealt: the large ones first, each to the cloth that has least for its size so far,
 * lights and darks by themselves, so that every hand has its share of both.
 */
final class Hands {

    /** How far a piece may leave its place in the row, as a share of its area, so that each deal is another; ours. */
    private static final double SHUFFLED = 0.3;

    private final double middle;
    private final Map<Integer, Double> needs;

    /**
     * Hands for some cloths.
     *
     * @param middle the lightness, in L*, that parts darks from lights
     * @param needs by the cloth's number, how much it needs compared with the others
     */
    Hands(double middle, Map<Integer, Double> needs) {
        this.middle = middle;
        this.needs = new LinkedHashMap<>(needs);
    }

    /** The hands by the cloth's number. */
    Map<Integer, List<Piece>> dealt(List<Piece> pieces, SplittableRandom chance) {
        Map<Integer, List<Piece>> hands = new LinkedHashMap<>();
        needs.keySet().forEach(cloth -> hands.put(cloth, new ArrayList<>()));
        List<Piece> dark = new ArrayList<>();
        List<Piece> light = new ArrayList<>();
        for (Piece piece : pieces) {
            boolean isDark = piece.fabric().colour().lab().lightness() < middle;
            (isDark ? dark : light).add(piece);
        }
        deal(dark, hands, chance);
        deal(light, hands, chance);
        return hands;
    }

    private void deal(List<Piece> pieces, Map<Integer, List<Piece>> hands, SplittableRandom chance) {
        Map<Piece, Double> places = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            places.put(piece, piece.areaMm2() * (1 + SHUFFLED * (chance.nextDouble() - 0.5)));
        }
        List<Piece> row = new ArrayList<>(pieces);
        row.sort(Comparator.comparingDouble((Piece piece) -> places.getOrDefault(piece, 0.0))
                .reversed());
        Map<Integer, Double> filled = new LinkedHashMap<>();
        for (Piece piece : row) {
            int poorest = -1;
            double least = Double.MAX_VALUE;
            for (Map.Entry<Integer, Double> need : needs.entrySet()) {
                double share = filled.getOrDefault(need.getKey(), 0.0) / need.getValue();
                if (share < least) {
                    least = share;
                    poorest = need.getKey();
                }
            }
            filled.merge(poorest, piece.areaMm2(), Double::sum);
            hands.getOrDefault(poorest, new ArrayList<>()).add(piece);
        }
    }
}
