package hearthcloth.benchmarks;

import hearthcloth.cutstock.search.Budget;
import java.lang.management.ManagementFactory;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/** What one instance may cost, counting from the moment this is made. */
final class Pace {

    /** What time is. */
    enum Clock {
        /** Time on the wall, the contract. */
        WALL,
        /** Processor time of the thread that searches, for machines that do other work as well. */
        THREAD;

        long now() {
            return this == WALL
                    ? System.nanoTime()
                    : ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        }
    }

    private final Clock clock;
    private final long nanos;
    private final long seed;
    private final int threads;
    private final long begun = System.nanoTime();
    private final AtomicBoolean enough = new AtomicBoolean();
    private final AtomicLong longest = new AtomicLong();

    private Pace(Clock clock, long nanos, long seed, int threads) {
        this.clock = clock;
        this.nanos = nanos;
        this.seed = seed;
        this.threads = threads;
    }

    static Pace begin(Clock clock, long nanos, long seed, int threads) {
        return new Pace(clock, nanos, seed, threads);
    }

    long seed() {
        return seed;
    }

    /** How many searches may run at once. */
    int threads() {
        return threads;
    }

    /** Nothing better exists, the other searches may stop. */
    void enough() {
        enough.set(true);
    }

    /** A fresh budget for a search on this thread. */
    Budget budget() {
        long start = clock == Clock.WALL ? begun : clock.now();
        return Budget.until(() -> enough.get() || clock.now() - start >= nanos);
    }

    /** Does a search on this thread and takes its time. */
    <T> T timed(Supplier<T> search) {
        long start = clock.now();
        T answer = search.get();
        longest.accumulateAndGet(clock.now() - start, Math::max);
        return answer;
    }

    /** Since the beginning on the wall, or the longest of the threads. */
    long elapsed() {
        return clock == Clock.WALL ? System.nanoTime() - begun : longest.get();
    }
}
