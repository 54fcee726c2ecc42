package hearthcloth.plan.together;

/**
 * How far planning together has come.
 *
 * @param tried divisions of the heap tried so far
 * @param of how many are to be tried
 * @param asked how many cloths are asked for
 * @param best the fairest division so far
 */
public record TogetherProgress(int tried, int of, int asked, Fairness best) {}
