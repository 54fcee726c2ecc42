package hearthcloth.benchmarks.sheet;

import hearthcloth.cutstock.search.Budget;
import java.util.function.Consumer;

/**
 * The best value out of one sheet by straight edge-to-edge cuts, in any number of stages.
 *
 * <p>Without limits on copies one table gives the optimum. With limits, tolls on the copies give a bound and first
 * slicings; then passes of {@link Building}, each twice as broad as the one before, until one leaves nothing out or
 * the budget is spent. No chance is involved: the same job and step budget give the same plans.
 */
public final class SheetCutting {

    private SheetCutting() {}

    /**
     * The optimum if copies had no limits, which also bounds every job on the same sheet; with more stops than a table
     * holds, a plan and a bound.
     */
    public static SheetPlan unlimited(SheetJob job) {
        SheetJob free = new SheetJob(
                job.width(),
                job.height(),
                job.wanted().stream()
                        .map(w -> new Wanted(w.width(), w.height(), w.worth(), Wanted.UNLIMITED))
                        .toList(),
                job.turning());
        return Grid.of(free)
                .map(SheetCutting::unlimited)
                .orElseGet(() -> Coarse.plan(free, Budget.steps(0), better -> {}));
    }

    private static SheetPlan unlimited(Grid grid) {
        long[] worth = grid.job().wanted().stream().mapToLong(Wanted::worth).toArray();
        Inside inside = new Inside(grid, worth);
        return new SheetPlan(inside.best(), inside.best(), inside.cuts());
    }

    /**
     * The best slicing within the limits that the budget finds.
     *
     * @param improvements receives each better plan as it is found, on the calling thread
     */
    public static SheetPlan limited(SheetJob job, Budget budget, Consumer<? super SheetPlan> improvements) {
        return Grid.of(job)
                .map(grid -> limited(grid, budget, improvements))
                .orElseGet(() -> Coarse.plan(job, budget, improvements));
    }

    private static SheetPlan limited(Grid grid, Budget budget, Consumer<? super SheetPlan> improvements) {
        Best best = new Best(grid, improvements);
        Prices prices = new Prices(grid);
        prices.settle(best, budget);
        boolean over = budget.spent();
        for (int breadth = 1; !over && !best.proven(); breadth *= 2) {
            Building pass = new Building(grid, prices, best, budget, breadth);
            over = pass.run() || pass.stopped();
        }
        return best.plan();
    }
}
