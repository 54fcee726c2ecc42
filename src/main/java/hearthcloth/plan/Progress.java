package hearthcloth.plan;

/**
 * How far planning has come, told now and then.
 *
 * @param tried drafts tried so far
 * @param of drafts to try
 * @param found how many of them the stash makes
 */
public record Progress(int tried, int of, int found) {}
