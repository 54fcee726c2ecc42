package hearthcloth.benchmarks.sheet;

import hearthcloth.cutstock.search.Budget;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Combines parts into larger ones, keeping only the most valuable few of every size: a beam search that is exact when
 * nothing had to be left out (docs/sources.md#guillotine).
 *
 * <p>A part of price p in a rectangle r can belong to a slicing worth at most p + around(r) + tolls; parts that cannot
 * beat the best are dropped for good. The most valuable part that was crowded out bounds what the pass can have missed.
 * Time: pairs of sizes × (breadth squared) at worst. The bound uses tolls instead of unlimited copies.
 */
final class Building {

    private final Grid grid;
    private final Copies copies;
    private final Best best;
    private final Budget budget;
    private final long[] price;
    private final long tolls;
    private final long[] around;
    private final int breadth;
    private final @Nullable Shelf[] shelves;
    private final boolean[] open;
    private long missed = Long.MIN_VALUE;
    private boolean stopped;

    Building(Grid grid, Prices prices, Best best, Budget budget, int breadth) {
        this.grid = grid;
        this.copies = new Copies(grid.copies());
        this.best = best;
        this.budget = budget;
        this.price = prices.price();
        this.tolls = prices.tolls();
        this.around = new Inside(grid, price).around();
        this.breadth = breadth;
        this.shelves = new Shelf[grid.cells()];
        this.open = new boolean[grid.cells()];
    }

    /** One pass; true if it left nothing out, so that the best is proven. */
    boolean run() {
        for (Grid.Laid laid : grid.laid()) {
            long worth = grid.job().wanted().get(laid.kind()).worth();
            int cell = grid.cell(laid.across(), laid.down());
            long own = price[laid.kind()];
            if (welcome(cell, own)) {
                put(cell, new Part(laid, own, worth, copies.one(laid.kind())));
            }
        }
        int columns = grid.across().size();
        int rows = grid.down().size();
        for (int diagonal = 2; diagonal <= columns + rows - 2 && !stopped; diagonal++) {
            for (int i = Math.max(1, diagonal - rows + 1); i < columns && i < diagonal; i++) {
                extend(i, diagonal - i);
            }
        }
        if (!stopped) {
            best.bound(missed == Long.MIN_VALUE ? best.worth() : Math.floorDiv(missed, Prices.FINE));
        }
        return !stopped && missed == Long.MIN_VALUE;
    }

    boolean stopped() {
        return stopped;
    }

    /** Joins everything of one size to everything of the sizes before it and to itself. */
    private void extend(int i, int j) {
        int cell = grid.cell(i, j);
        Shelf shelf = shelves[cell];
        if (shelf == null || around[cell] + tolls + shelf.get(0).price() <= best.worth() * Prices.FINE) {
            return;
        }
        open[cell] = true;
        int columns = grid.across().size();
        int rows = grid.down().size();
        int fitting = grid.across().rest(columns - 1, i);
        for (int k = 1; k < columns && !stopped; k++) {
            int wide = grid.across().sum(i, k);
            int most = k <= fitting && wide >= 0 ? rows - 1 : grid.down().rest(rows - 1, j);
            for (int l = 1; l <= most; l++) {
                int other = grid.cell(k, l);
                if (open[other]) {
                    int high = grid.down().sum(j, l);
                    join(shelf, other, wide < 0 ? -1 : grid.cell(wide, Math.max(j, l)), true);
                    join(shelf, other, high < 0 ? -1 : grid.cell(Math.max(i, k), high), false);
                }
            }
        }
    }

    private void join(Shelf shelf, int other, int cell, boolean beside) {
        if (cell < 0 || stopped) {
            return;
        }
        stopped = budget.spent();
        Shelf others = Objects.requireNonNull(shelves[other]);
        for (int a = 0;
                a < shelf.size()
                        && welcome(cell, shelf.get(a).price() + others.get(0).price());
                a++) {
            Part one = shelf.get(a);
            for (int b = 0; b < others.size(); b++) {
                Part two = others.get(b);
                if (!welcome(cell, one.price() + two.price())) {
                    break;
                }
                if (copies.fit(one.counts(), two.counts())) {
                    put(cell, one, two, beside);
                }
            }
        }
    }

    /** Whether a part of this price may be kept: it may beat the best, and the shelf has room for it. */
    private boolean welcome(int cell, long own) {
        long key = own + around[cell] + tolls;
        if (key < (best.worth() + 1) * Prices.FINE) {
            return false;
        }
        Shelf shelf = shelves[cell];
        if (shelf != null && shelf.size() == breadth && own <= shelf.least()) {
            missed = Math.max(missed, key);
            return false;
        }
        return true;
    }

    private void put(int cell, Part one, Part two, boolean beside) {
        long own = one.price() + two.price();
        long[] counts = copies.sum(one.counts(), two.counts());
        Shelf shelf = shelves[cell];
        if (shelf == null || !shelf.holds(own, counts)) {
            put(cell, new Part(one, two, beside, counts));
        }
    }

    private void put(int cell, Part part) {
        Shelf shelf = shelves[cell];
        if (shelf == null) {
            shelf = new Shelf();
            shelves[cell] = shelf;
        }
        if (shelf.size() == breadth) {
            missed = Math.max(missed, shelf.least() + around[cell] + tolls);
        }
        shelf.put(part, breadth);
        if (part.worth() > best.worth()) {
            best.offer(part.cuts(grid));
        }
    }
}
