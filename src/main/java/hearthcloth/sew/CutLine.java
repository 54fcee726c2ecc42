package hearthcloth.sew;

import hearthcloth.cloth.Side;
import hearthcloth.measure.Length;
import hearthcloth.plan.model.CutTree;

/**
 * One straight cut: the node of the cutting plan, for drawings, and what to do.
 *
 * @param number from 1 within its piece, in the order of cutting
 * @param from the edge of what is cut that the ruler is laid to, the piece's length running from top to bottom
 * @param measure distance from that edge
 */
public record CutLine(int number, CutTree.Parted cut, Side from, Length measure, String sentence) {}
