package hearthcloth.plan;

/** A shape with its colours: one candidate that is tried against the stash. */
record Draft(Shape shape, Design design) {

    Scheme scheme() {
        return design.scheme();
    }
}
