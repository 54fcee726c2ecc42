package hearthcloth.benchmarks.sheet;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Pieces already put together into one rectangle: a single piece, or two parts along one cut. */
final class Part {

    private final long price;
    private final long worth;
    private final long[] counts;
    private final Grid.@Nullable Laid piece;
    private final @Nullable Part first;
    private final @Nullable Part second;
    private final boolean beside;

    /** A single piece. */
    Part(Grid.Laid piece, long price, long worth, long[] counts) {
        this.price = price;
        this.worth = worth;
        this.counts = counts;
        this.piece = piece;
        this.first = null;
        this.second = null;
        this.beside = false;
    }

    /** Two parts beside each other, or one above the other. */
    Part(Part first, Part second, boolean beside, long[] counts) {
        this.price = first.price + second.price;
        this.worth = first.worth + second.worth;
        this.counts = counts;
        this.piece = null;
        this.first = first;
        this.second = second;
        this.beside = beside;
    }

    /** After tolls, in fine parts. */
    long price() {
        return price;
    }

    long worth() {
        return worth;
    }

    /** Copies of each kind as {@link Copies} packs them; not to be written to. */
    long[] counts() {
        return counts;
    }

    boolean sameCopies(long[] other) {
        return Arrays.equals(counts, other);
    }

    /** The cuts that make it. */
    Slicing cuts(Grid grid) {
        if (first == null || second == null) {
            return grid.piece(Objects.requireNonNull(piece));
        }
        Slicing one = first.cuts(grid);
        Slicing two = second.cuts(grid);
        if (beside) {
            long height = Math.max(one.height(), two.height());
            return new Slicing.Beside(
                    Slicing.within(one, one.width(), height), Slicing.within(two, two.width(), height));
        }
        long width = Math.max(one.width(), two.width());
        return new Slicing.Above(Slicing.within(one, width, one.height()), Slicing.within(two, width, two.height()));
    }
}
