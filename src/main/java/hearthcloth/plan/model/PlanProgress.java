package hearthcloth.plan.model;

import java.util.Optional;

/**
 * How far planning has come, reported now and then.
 *
 * @param tried drafts tried so far
 * @param of drafts to try
 * @param found how many of them the stash makes
 * @param best a complete plan that is better than every one reported before, to be shown while the search goes on;
 *     empty where nothing better was found. While the largest cloth is searched for, the one just found to be possible
 */
public record PlanProgress(int tried, int of, int found, Optional<Plan> best) {}
