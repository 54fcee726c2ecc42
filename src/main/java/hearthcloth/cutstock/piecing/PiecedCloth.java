package hearthcloth.cutstock.piecing;

import hearthcloth.cutstock.piecing.tree.Pieced;

/**
 * One cloth of a plan.
 *
 * @param cloth which of the job's cloths it is, from 0
 * @param made the finished size that comes out: the wished one, or smaller where the heap does not suffice
 * @param tree its patches at their cut sizes
 */
public record PiecedCloth(int cloth, WishedCloth made, Pieced tree) {}
