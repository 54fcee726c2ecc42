package hearthcloth.cutstock.search;

import java.util.function.BooleanSupplier;

/**
 * How much work a search may do. The domain never reads a clock: the caller supplies one through {@link #until}, or
 * counts work through {@link #steps}, which makes a search end at the same place on every machine.
 *
 * <p>A budget belongs to one search at a time and is not thread-safe, except that the {@code stop} given to {@link
 * #until} may be flipped by another thread.
 */
public interface Budget {

    /** Counts one unit of work; true once the search must stop and hand over its best answer. */
    boolean spent();

    /** Exactly {@code steps} units of work, the deterministic mode. */
    static Budget steps(long steps) {
        return new Budget() {
            private long left = steps;

            @Override
            public boolean spent() {
                return left <= 0 || --left < 0;
            }
        };
    }

    /**
     * Work until {@code stop} returns true (a deadline, a cancel button); it is asked once every 64 units, for speed.
     */
    static Budget until(BooleanSupplier stop) {
        return new Budget() {
            private int count;
            private boolean over;

            @Override
            public boolean spent() {
                if (!over && (count++ & 63) == 0) {
                    over = stop.getAsBoolean();
                }
                return over;
            }
        };
    }

    /** Whichever of the two ends first. */
    static Budget either(Budget one, Budget other) {
        return () -> {
            boolean first = one.spent();
            return other.spent() || first;
        };
    }
}
