package hearthcloth.plan;

import java.util.Optional;

/**
 * How far planning has come, told now and then.
 *
 * @param tried drafts tried so far
 * @param of drafts to try
 * @param found how many of them the stash makes
 * @param best the best plan so far
 */
public record Progress(int tried, int of, int found, Optional<Plan> best) {}
