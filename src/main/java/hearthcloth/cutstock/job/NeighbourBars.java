package hearthcloth.cutstock.job;

/**
 * Two bars whose joins must keep apart: |p + shift - q| is at least the clearance for every join position p of the first
 * and q of the second.
 *
 * @param first the id of a bar
 * @param second the id of another bar
 */
public record NeighbourBars(int first, int second, long shift, long clearance) {}
