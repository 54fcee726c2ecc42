package hearthcloth.wrap.fold;

import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import java.util.List;

/**
 * A cloth tied round a gift: every piece of it once, as flat facets in order from the gift outwards.
 *
 * @param fit the tie, gift, cloth and placing
 * @param laying how the plan lies under the gift
 * @param facets their cloth outlines tile the cloth; within one plane later ones lie over earlier ones
 * @param knots first tied first
 */
public record Fold(Fit fit, Laying laying, List<Facet> facets, List<Knot> knots) {

    public Fold {
        facets = List.copyOf(facets);
        knots = List.copyOf(knots);
    }

    /**
     * Ties the cloth.
     *
     * @throws ShortClothException when it does not hold; says which size would do
     */
    public static Fold of(Fit fit) {
        if (!fit.holds()) {
            throw new ShortClothException(fit);
        }
        return switch (fit.tie()) {
            case FOUR_CORNER, ERRAND, FLAT -> BoxFold.of(fit);
            case TWO_KNOT -> fit.gift() instanceof Gift.Box ? BoxFold.of(fit) : RollFold.of(fit);
            case EDGE_ALONG_EDGE -> EdgeFold.of(fit);
            case ONE_BOTTLE -> BottleFold.of(fit);
            case ROUND -> TurnedFold.of(fit);
            case TWO_BOTTLES -> PairFold.of(fit);
            case BOOKS -> BooksFold.of(fit);
            case ROLL -> RollFold.of(fit);
        };
    }

    /** Square millimetres of cloth in all facets; equals the cloth's own. */
    public double area() {
        return facets.stream().mapToDouble(facet -> facet.cloth().area()).sum();
    }
}
