package hearthcloth.cutstock.join;

import java.util.Optional;

/**
 * The present answer of a search: the best it has found, if anything, and what no answer can beat.
 *
 * @param best the best answer found, empty while there is none
 * @param bound a proven limit in the problem's own terms
 * @param proven whether the best answer reaches the bound, so that searching on is pointless
 */
public record Answer<A, B>(Optional<A> best, B bound, boolean proven) {}
