package hearthcloth.plan;

/**
 * What no plan for this cloth from this stash can beat.
 *
 * @param joins fewest joins possible is at least this
 * @param lostMm2 the least fabric lost in slivers, square millimetres
 */
public record Bound(int joins, double lostMm2) {}
