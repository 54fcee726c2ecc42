package hearthcloth.guideline;

import hearthcloth.cloth.Cloth;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.stash.Fabric;
import java.util.List;

/**
 * A cloth that somebody sent, without the heap it was made from.
 *
 * @param title of its plan
 * @param fabrics every fabric of the cloth, with its colour
 * @param rules by which its bars were joined
 */
public record SentCloth(String title, Cloth cloth, List<Fabric> fabrics, PiecingRules rules) {
    public SentCloth {
        fabrics = List.copyOf(fabrics);
    }
}
