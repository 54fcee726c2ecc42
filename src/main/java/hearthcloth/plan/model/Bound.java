package hearthcloth.plan.model;


/**
 * What no plan for this cloth from this stash can beat.
 *
 * @param joins fewest joins possible is at least this
 * @param lostMm2 the least fabric lost in slivers, square millimetres: what must lie beside its patches in
 *     a sliver on pieces too narrow to leave more; 0 where nothing better is proven
 * @param touchedMm2 the pieces cut into cover at least this, square millimetres: what its patches and fewest joins
 *     take of the pieces that yield most, brought up to what whole pieces can come to
 */
public record Bound(int joins, double lostMm2, double touchedMm2) {

    /** With nothing proven about the pieces cut into. */
    public Bound(int joins, double lostMm2) {
        this(joins, lostMm2, 0);
    }
}
