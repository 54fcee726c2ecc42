package hearthcloth.benchmarks;

import hearthcloth.plan.search.Budget;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

/**
 * What one instance may cost, counting from the moment this is made.
 *
 * @param end when to stop, as {@link System#nanoTime}
 * @param seed of every chance
 * @param threads how many searches may run at once
 * @param enough set by one of them when nothing better exists
 */
record Pace(long end, long seed, int threads, AtomicBoolean enough) {

    static Pace begin(long nanos, long seed, int threads) {
        return new Pace(System.nanoTime() + nanos, seed, threads, new AtomicBoolean());
    }

    /** A fresh budget for one search. */
    Budget budget() {
        BooleanSupplier over = () -> enough.get() || System.nanoTime() - end >= 0;
        return Budget.until(over);
    }
}
