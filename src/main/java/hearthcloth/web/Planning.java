package hearthcloth.web;

import hearthcloth.plan.Outcome;
import hearthcloth.plan.Planner;
import hearthcloth.plan.Progress;
import hearthcloth.plan.Wish;
import hearthcloth.plan.search.Budget;
import hearthcloth.stash.Stash;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/**
 * One search for proposals going on beside the pages. Started once, watched by asking, stopped on wish; what it found
 * stays until the next one. Thread-safe.
 */
final class Planning {

    private static final int EFFORT = 4;

    private final Stash stash;
    private final Wish wish;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private volatile Progress progress = new Progress(0, 0, 0);

    @Nullable
    private volatile Outcome outcome;

    private volatile boolean failed;

    private Planning(Stash stash, Wish wish) {
        this.stash = stash;
        this.wish = wish;
    }

    static Planning begin(Stash stash, Wish wish) {
        Planning planning = new Planning(stash, wish);
        Thread thread = new Thread(planning::run, "planning");
        thread.setDaemon(true);
        thread.start();
        return planning;
    }

    private void run() {
        Budget budget = stopped::get;
        try {
            outcome = Planner.plan(stash, wish, EFFORT, budget, seen -> progress = seen);
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            failed = true;
        }
    }

    void stop() {
        stopped.set(true);
    }

    boolean isStopped() {
        return stopped.get();
    }

    boolean isRunning() {
        return outcome == null && !failed;
    }

    boolean isFailed() {
        return failed;
    }

    Progress progress() {
        return progress;
    }

    Optional<Outcome> outcome() {
        return Optional.ofNullable(outcome);
    }

    Wish wish() {
        return wish;
    }

    /** True when it answers this question already. */
    boolean isFor(Stash other, Wish asked) {
        return wish.equals(asked) && stash.equals(other);
    }
}
