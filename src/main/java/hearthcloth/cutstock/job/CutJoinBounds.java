package hearthcloth.cutstock.job;

/**
 * What no plan of a job can beat. Areas are in square units.
 *
 * @param joins every plan has at least this many
 * @param usedArea every plan's parts cover at least this
 * @param touchedArea the pieces every plan cuts into cover at least this together
 * @param lostArea every plan loses at least this in slivers
 */
public record CutJoinBounds(int joins, double usedArea, double touchedArea, double lostArea) {}
