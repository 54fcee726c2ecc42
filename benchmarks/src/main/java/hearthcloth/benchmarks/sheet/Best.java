package hearthcloth.benchmarks.sheet;

import java.util.function.Consumer;

/** The best slicing and the least bound so far, and who receives them. */
final class Best {

    private final Grid grid;
    private final Consumer<? super SheetPlan> improvements;
    private Slicing cuts;
    private long worth;
    private long bound = Long.MAX_VALUE;

    Best(Grid grid, Consumer<? super SheetPlan> improvements) {
        this.grid = grid;
        this.improvements = improvements;
        this.cuts = new Slicing.Rest(grid.job().width(), grid.job().height());
    }

    long worth() {
        return worth;
    }

    boolean proven() {
        return worth >= bound;
    }

    /** A slicing of some corner of the sheet. */
    void offer(Slicing corner) {
        long offered = grid.worth(corner);
        if (offered > worth) {
            worth = offered;
            cuts = Slicing.within(corner, grid.job().width(), grid.job().height());
            improvements.accept(plan());
        }
    }

    /** A proof that nothing is worth more than the larger of {@code proven} and the best so far. */
    void bound(long proven) {
        bound = Math.min(bound, Math.max(proven, worth));
    }

    SheetPlan plan() {
        return new SheetPlan(worth, Math.max(bound, worth), cuts);
    }
}
