package hearthcloth.wrap.fold;

import hearthcloth.wrap.Fit;
import java.util.List;

/**
 * A cloth tied round a gift: every piece of it once, as flat facets in order from the gift outwards.
 *
 * @param fit the tie, gift, cloth and placing
 * @param laying how the plan lies under the gift
 * @param facets their cloth outlines tile the cloth; within one plane later ones lie over earlier ones
 * @param knots in the order they are tied
 */
public record Fold(Fit fit, Laying laying, List<Facet> facets, List<ReefKnot> knots) {

    public Fold {
        facets = List.copyOf(facets);
        knots = List.copyOf(knots);
    }
}
