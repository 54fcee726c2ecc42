package hearthcloth.gather;

import hearthcloth.photo.LargestRectangle;

/**
 * How the grain runs, as she marked it, and the usable rectangle along it.
 *
 * @param angleRad on the floor; the rectangle's width lies along it
 */
public record Grain(double angleRad, LargestRectangle.Box usable) {}
