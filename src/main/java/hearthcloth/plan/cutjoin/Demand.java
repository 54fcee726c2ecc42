package hearthcloth.plan.cutjoin;

/** A rectangle that must come out of the stock, whole or joined. */
public sealed interface Demand permits Block, Bar {

    /** The caller's number, unique among all demands of a job. */
    int id();

    /** The fabrics it may be cut from. */
    Fabrics fabrics();
}
