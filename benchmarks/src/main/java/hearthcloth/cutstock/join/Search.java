package hearthcloth.cutstock.join;

import hearthcloth.cutstock.search.Budget;
import java.util.function.Consumer;

/**
 * One way of answering a kind of problem. The same problem, step budget and seed give the same answers in the same
 * order; a search keeps no state between calls, so several may run at once on threads the caller supplies.
 *
 * @param <P> the problem
 * @param <A> an answer to it
 * @param <B> what bounds every answer
 */
@FunctionalInterface
public interface Search<P, A, B> {

    /**
     * Searches until the budget is spent or the bound is reached.
     *
     * @param improvements receives each better answer as it is found, on the calling thread
     * @return the last answer, with the bound beside it
     */
    Answer<A, B> run(P problem, Budget budget, long seed, Consumer<? super Answer<A, B>> improvements);
}
