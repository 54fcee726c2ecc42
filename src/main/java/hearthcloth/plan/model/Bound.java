package hearthcloth.plan.model;

/**
 * Values that no plan for this cloth from this stash can beat.
 *
 * @param joins every plan has at least this many joins
 * @param lostMm2 the least fabric lost in slivers, in square millimetres: what must be left as a sliver beside its
 *     patches on pieces too narrow to leave more; 0 where nothing better is proven
 * @param touchedMm2 the pieces that are cut into cover at least this, in square millimetres: what its patches and
 *     fewest joins take of the pieces that yield most, increased to what whole pieces can add up to
 */
public record Bound(int joins, double lostMm2, double touchedMm2) {

    /** Bounds without one on the pieces cut into. */
    public Bound(int joins, double lostMm2) {
        this(joins, lostMm2, 0);
    }
}
