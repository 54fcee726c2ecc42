package hearthcloth.photo.heldaside;

/**
 * A flat thing on the floor.
 *
 * @param thick how high its face is over the floor, mm
 */
record Lying(Rim rim, double thick, Surface face) {}
