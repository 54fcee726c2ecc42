package hearthcloth.wrap.fold;

/**
 * A reef knot of two gathered ends.
 *
 * @param at its middle
 * @param along unit way from one standing end to the other; the free ends come out along it, flat
 * @param up unit way it stands off the gift
 * @param bunch diameter of a gathered end, millimetres
 * @param taken cloth each end gives to it, millimetres
 * @param over how many knots lie under this one
 */
public record Knot(Space at, Space along, Space up, double bunch, double taken, int over) {}
