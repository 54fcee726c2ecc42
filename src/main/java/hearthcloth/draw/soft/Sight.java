package hearthcloth.draw.soft;

import hearthcloth.geometry.Vector;

/**
 * A direction to look from; the eye is infinitely far away.
 *
 * @param towards unit vector towards the eye
 * @param right unit vector to the right on the picture, {@code up} to its top
 */
public record Sight(Vector towards, Vector right, Vector up) {}
