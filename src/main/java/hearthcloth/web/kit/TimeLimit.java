package hearthcloth.web.kit;

import hearthcloth.cutstock.search.Budget;

/** The wall clock as a budget: the searches themselves read no clock. */
public final class TimeLimit {

    private TimeLimit() {}

    /** A budget that is spent so many milliseconds from now. */
    public static Budget within(long milliseconds) {
        long end = System.nanoTime() + milliseconds * 1_000_000;
        return () -> System.nanoTime() > end;
    }
}
