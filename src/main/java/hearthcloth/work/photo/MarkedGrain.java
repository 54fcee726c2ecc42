package hearthcloth.work.photo;

import hearthcloth.photo.plane.LargestRectangle;

/**
 * The direction of the grain as she marked it, and the usable rectangle along it.
 *
 * @param angleRad angle on the floor, in radians; the rectangle's width lies along it
 */
public record MarkedGrain(double angleRad, LargestRectangle.Box usable) {}
