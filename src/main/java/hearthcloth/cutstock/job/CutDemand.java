package hearthcloth.cutstock.job;

/** A rectangle that must come out of the stock, whole or joined. */
public sealed interface CutDemand permits JobBlock, JobBar {

    /** The caller's number, unique among all demands of a job. */
    int id();

    /** The fabrics it may be cut from. */
    FabricSets fabrics();
}
