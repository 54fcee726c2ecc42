package hearthcloth.work.photo;

import hearthcloth.photo.plane.LargestRectangle;


/**
 * How the grain runs, as she marked it, and the usable rectangle along it.
 *
 * @param angleRad on the floor; the rectangle's width lies along it
 */
public record MarkedGrain(double angleRad, LargestRectangle.Box usable) {}
