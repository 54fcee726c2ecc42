package hearthcloth.plan.model;

import java.util.Optional;


/**
 * How far planning has come, told now and then.
 *
 * @param tried drafts tried so far
 * @param of drafts to try
 * @param found how many of them the stash makes
 * @param best a plan better than every one told before, as soon as it is found: complete, to be shown while the search
 *     goes on; empty where nothing better was found. While the largest cloth is looked for, the one just found to be
 *     possible
 */
public record PlanProgress(int tried, int of, int found, Optional<Plan> best) {}
