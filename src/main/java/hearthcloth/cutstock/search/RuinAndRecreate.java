package hearthcloth.cutstock.search;

import hearthcloth.number.Elementary;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Ruin and recreate: part of an attempt is undone and rebuilt, and kept when it is not much worse
 * (docs/sources.md#ruin-recreate).
 *
 * <p>The rule of acceptance is that of simulated annealing with its own schedule: how long the caller lets the search
 * run is unknown, so the tolerance falls geometrically over a round of steps and starts again, each round twice as long
 * as the one before. A step costs one save, one rework and at most one restore.
 */
public final class RuinAndRecreate {

    /** Steps of the first round. */
    private static final int FIRST_ROUND = 256;
    /** The most steps of a round. */
    private static final int LONGEST_ROUND = 1 << 15;

    private final double warmest;
    private final double coolest;

    /** Tolerances at the start and at the end of each round, in units of cost. */
    public RuinAndRecreate(double warmest, double coolest) {
        this.warmest = warmest;
        this.coolest = coolest;
    }

    /**
     * Searches until the budget is spent or {@code enough} says that nothing better exists.
     *
     * @param seen called after every accepted step, so that the caller can keep a copy
     */
    public void walk(Reworkable state, Budget budget, SplittableRandom chance, Runnable seen, BooleanSupplier enough) {
        double cost = state.cost();
        for (int round = FIRST_ROUND; ; round = Math.min(2 * round, LONGEST_ROUND)) {
            double cooling = Elementary.pow(coolest / warmest, 1.0 / round);
            double tolerance = warmest;
            for (int step = 0; step < round; step++, tolerance *= cooling) {
                if (enough.getAsBoolean() || budget.spent()) {
                    return;
                }
                state.save();
                state.rework(chance);
                double next = state.cost();
                if (next <= cost - tolerance * Elementary.log(1 - chance.nextDouble())) {
                    cost = next;
                    seen.run();
                } else {
                    state.restore();
                }
            }
        }
    }
}
