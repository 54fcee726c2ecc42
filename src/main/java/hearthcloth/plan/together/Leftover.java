package hearthcloth.plan.together;

import hearthcloth.cloth.Rect;
import hearthcloth.stash.Piece;

/**
 * What one cloth leaves of a piece and another takes, so that the first is cut before it.
 *
 * @param part the leftover as a piece of its own
 * @param of the piece it is left of, itself a leftover where it was cut before
 * @param by which cloth leaves it, from 0
 * @param at where it lies on that piece
 */
public record Leftover(Piece part, Piece of, int by, Rect at) {}
