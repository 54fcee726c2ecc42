package hearthcloth.sew;

import hearthcloth.plan.CutTree;

/**
 * One straight cut: the node of the cutting plan, for whoever draws it, and what to do.
 *
 * @param number from 1 within its piece, in the order of cutting
 */
public record CutLine(int number, CutTree.Parted cut, String sentence) {}
