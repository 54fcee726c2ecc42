package hearthcloth.cutstock.piecing.compose;

/**
 * Two seams that end too near each other on the two sides of a third.
 *
 * @param x where, from the cloth's left edge, net, to within what a seam's wide side is wider than its narrow one
 * @param y the same from its top
 */
public record Crossing(long x, long y) {}
