package hearthcloth.benchmarks.sheet;

import java.util.Arrays;

/**
 * The best price of every rectangle between stops when copies are unlimited, by exact dynamic programming
 * (docs/sources.md#guillotine).
 *
 * <p>A rectangle is worth its best single piece or the best straight cut into two. Time: stops across × stops down ×
 * (stops across + stops down) / 2.
 */
final class Inside {

    private static final int NOTHING = 0;
    private static final int PIECE = 1;
    private static final int BESIDE = 2;
    private static final int ABOVE = 3;

    private final Grid grid;
    private final long[] best;
    private final int[] choice;

    /** Fills the table; {@code price} is of one copy of each kind, and a price below 0 is not cut. */
    Inside(Grid grid, long[] price) {
        this.grid = grid;
        this.best = new long[grid.cells()];
        this.choice = new int[grid.cells()];
        for (int index = 0; index < grid.laid().size(); index++) {
            Grid.Laid laid = grid.laid().get(index);
            offer(grid.cell(laid.across(), laid.down()), price[laid.kind()], index, PIECE);
        }
        for (int i = 1; i < grid.across().size(); i++) {
            for (int j = 1; j < grid.down().size(); j++) {
                fill(i, j);
            }
        }
    }

    private void offer(int cell, long price, int argument, int kind) {
        if (price > best[cell]) {
            best[cell] = price;
            choice[cell] = (argument << 2) | kind;
        }
    }

    private void fill(int i, int j) {
        int cell = grid.cell(i, j);
        offer(cell, best[grid.cell(i - 1, j)], i - 1, BESIDE);
        offer(cell, best[cell - 1], j - 1, ABOVE);
        Stops across = grid.across();
        for (int k = 1; k < i && across.at(k) <= across.at(i) / 2; k++) {
            offer(cell, best[grid.cell(k, j)] + best[grid.cell(across.rest(i, k), j)], k, BESIDE);
        }
        Stops down = grid.down();
        int row = grid.cell(i, 0);
        for (int k = 1; k < j && down.at(k) <= down.at(j) / 2; k++) {
            offer(cell, best[row + k] + best[row + down.rest(j, k)], k, ABOVE);
        }
    }

    /** The price of a rectangle. */
    long best(int i, int j) {
        return best[grid.cell(i, j)];
    }

    /** The price of the whole sheet. */
    long best() {
        return best[best.length - 1];
    }

    /** The cuts behind {@link #best()}. */
    Slicing cuts() {
        return cuts(grid.across().size() - 1, grid.down().size() - 1);
    }

    private Slicing cuts(int i, int j) {
        long width = grid.across().at(i);
        long height = grid.down().at(j);
        int chosen = choice[grid.cell(i, j)];
        int k = chosen >> 2;
        return switch (chosen & 3) {
            case NOTHING -> new Slicing.Rest(width, height);
            case PIECE -> grid.piece(grid.laid().get(k));
            case BESIDE -> beside(cuts(k, j), cuts(grid.across().rest(i, k), j), width);
            default -> above(cuts(i, k), cuts(i, grid.down().rest(j, k)), height);
        };
    }

    private static Slicing beside(Slicing left, Slicing right, long width) {
        long rest = width - left.width();
        return new Slicing.Beside(
                left,
                right.width() == 0
                        ? new Slicing.Rest(rest, left.height())
                        : Slicing.within(right, rest, left.height()));
    }

    private static Slicing above(Slicing upper, Slicing lower, long height) {
        long rest = height - upper.height();
        return new Slicing.Above(
                upper,
                lower.height() == 0
                        ? new Slicing.Rest(upper.width(), rest)
                        : Slicing.within(lower, upper.width(), rest));
    }

    /** The table around: what the rest of the sheet can add to a rectangle in its corner. */
    long[] around() {
        long[] around = new long[best.length];
        Arrays.fill(around, 0);
        for (int i = grid.across().size() - 1; i > 0; i--) {
            for (int j = grid.down().size() - 1; j > 0; j--) {
                around[grid.cell(i, j)] = around(around, i, j);
            }
        }
        return around;
    }

    /**
     * The best for a rectangle that grows by a neighbour as high or as wide as itself; a shorter neighbour is one with
     * a remainder.
     */
    private long around(long[] around, int i, int j) {
        long most = 0;
        for (int to = i + 1; to < grid.across().size(); to++) {
            most = Math.max(
                    most,
                    around[grid.cell(to, j)] + best[grid.cell(grid.across().rest(to, i), j)]);
        }
        int row = grid.cell(i, 0);
        for (int to = j + 1; to < grid.down().size(); to++) {
            most = Math.max(most, around[row + to] + best[row + grid.down().rest(to, j)]);
        }
        return most;
    }
}
