package hearthcloth.photo;

/**
 * How a piece looks.
 *
 * @param contrast CIELAB difference between its colours and the ground's round it
 */
public record Look(double l, double a, double b, boolean figured, double contrast) {}
