package hearthcloth.cutstock.search;

import java.util.Optional;


/**
 * What a search can say so far: the best it holds, if anything, and what no answer can beat.
 *
 * @param best the best answer found, empty while there is none
 * @param bound a proven limit in the problem's own terms
 * @param proven whether the best answer reaches the bound, so that looking on is pointless
 */
public record Answer<A, B>(Optional<A> best, B bound, boolean proven) {}
