package hearthcloth.plan.fit;

import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;

/** A shape with its colours: one candidate to be tried against the stash. */
public record Draft(LayoutCandidate shape, Design design) {

    public Scheme scheme() {
        return design.scheme();
    }
}
