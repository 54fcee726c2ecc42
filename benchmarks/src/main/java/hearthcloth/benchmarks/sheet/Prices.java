package hearthcloth.benchmarks.sheet;

import hearthcloth.cutstock.search.Budget;

/**
 * Prices of the kinds that make limited copies come out nearly right by themselves, and the bound they prove
 * (docs/sources.md#guillotine).
 *
 * <p>A kind with a limit of c copies pays a toll λ ≥ 0 on every copy; no slicing within the limits is worth more than
 * the best one at worth − λ with unlimited copies, plus Σ λ·c (Lagrangian relaxation). The tolls follow the copies used
 * too many or too few (subgradient). Everything is counted in {@link #FINE} parts of one unit of worth, so the
 * arithmetic stays in whole numbers. Cost: one {@link Inside} for each round.
 */
final class Prices {

    /** Parts of one unit of worth. */
    static final long FINE = 64;

    /** The most rounds of moving the tolls. */
    private static final int ROUNDS = 120;
    /** Rounds without a better bound after which the step is halved. */
    private static final int PATIENCE = 6;
    /** The first step, in the units in which the step is counted. */
    private static final int FULL_STEP = 128;

    private final Grid grid;
    private final long[] toll;
    private long[] bestToll;
    private long bestBound = Long.MAX_VALUE;
    private int step = FULL_STEP;
    private int idle;

    Prices(Grid grid) {
        this.grid = grid;
        this.toll = new long[grid.copies().length];
        this.bestToll = toll.clone();
    }

    /** Improves the tolls; every slicing on the way, cut down to its limits, is offered to {@code best}. */
    void settle(Best best, Budget budget) {
        for (int round = 0; round < ROUNDS && step > 0 && !best.proven(); round++) {
            Inside inside = new Inside(grid, price(toll));
            Slicing cuts = inside.cuts();
            long bound = inside.best() + tolls(toll);
            best.offer(Slicing.keeping(cuts, grid.copies().clone()));
            best.bound(bound / FINE);
            note(bound);
            if (spent(budget) || !move(cuts, bound - best.worth() * FINE)) {
                return;
            }
        }
    }

    /** The same prices as {@link #settle} found best. */
    long[] price() {
        return price(bestToll);
    }

    /** What the tolls on all copies come to. */
    long tolls() {
        return tolls(bestToll);
    }

    private void note(long bound) {
        if (bound < bestBound) {
            bestBound = bound;
            bestToll = toll.clone();
            idle = 0;
        } else if (++idle == PATIENCE) {
            step /= 2;
            idle = 0;
            System.arraycopy(bestToll, 0, toll, 0, toll.length);
        }
    }

    /** Moves the tolls against the copies that are wrong in number; false if none is. */
    private boolean move(Slicing cuts, long gap) {
        long[] excess = new long[toll.length];
        Slicing.count(cuts, excess);
        long squares = 0;
        for (int kind = 0; kind < toll.length; kind++) {
            excess[kind] -= grid.copies()[kind];
            if (excess[kind] < 0 && toll[kind] == 0) {
                excess[kind] = 0;
            }
            squares += excess[kind] * excess[kind];
        }
        for (int kind = 0; kind < toll.length && squares > 0; kind++) {
            long change = gap / squares * step / FULL_STEP * excess[kind];
            toll[kind] = Math.max(0, toll[kind] + change);
        }
        return squares > 0;
    }

    private long[] price(long[] tolls) {
        long[] price = new long[tolls.length];
        for (int kind = 0; kind < price.length; kind++) {
            price[kind] = grid.job().wanted().get(kind).worth() * FINE - tolls[kind];
        }
        return price;
    }

    private long tolls(long[] tolls) {
        long sum = 0;
        for (int kind = 0; kind < tolls.length; kind++) {
            sum += tolls[kind] * grid.copies()[kind];
        }
        return sum;
    }

    private boolean spent(Budget budget) {
        boolean over = false;
        for (int unit = 0; unit <= grid.cells() && !over; unit += 64) {
            over = budget.spent();
        }
        return over;
    }
}
