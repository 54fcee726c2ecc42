package hearthcloth.web.kit;

import hearthcloth.cutstock.search.Budget;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** The clock as a budget: the searches themselves read none. */
public final class TimeLimit {

    /** On a busy machine a search may take so many times as long, so that it still does half the work it has time for. */
    private static final long PATIENCE = 4;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private TimeLimit() {}

    /**
     * A budget that is spent so many milliseconds from now; where the machine gave this thread less than half of them to
     * work in, once it has worked that long, and in any case after four times as many.
     */
    public static Budget within(long milliseconds) {
        long began = System.nanoTime();
        long limitNs = milliseconds * 1_000_000;
        Thread own = Thread.currentThread();
        long workedBeforeNs = workedNs();
        return () -> {
            long passedNs = System.nanoTime() - began;
            if (passedNs <= limitNs) {
                return false;
            }
            boolean isBusy = Thread.currentThread().equals(own) && workedNs() - workedBeforeNs < limitNs / 2;
            return !isBusy || passedNs > PATIENCE * limitNs;
        };
    }

    /** How long this thread has worked; where the system does not say, as long as time has passed. */
    private static long workedNs() {
        return THREADS.isCurrentThreadCpuTimeSupported() ? THREADS.getCurrentThreadCpuTime() : System.nanoTime();
    }
}
