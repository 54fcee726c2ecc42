package hearthcloth.benchmarks.sheet;

import java.util.Arrays;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The places along one side where a cut can matter: sums of piece lengths ("normal patterns"), from 0 to the side
 * (docs/sources.md#guillotine).
 *
 * <p>Pushing every piece to the left and up leaves cuts at such places only. At most {@code copies} of a piece enter a
 * sum. Time and space: number of stops squared.
 */
final class Stops {

    /** More stops than this on one side are too many for a table. */
    static final int MOST = 1_200;

    private final long[] at;
    private final int[][] sum;
    private final int[][] rest;

    private Stops(long[] at) {
        this.at = at;
        this.sum = new int[at.length][at.length];
        this.rest = new int[at.length][];
        for (int i = 0; i < at.length; i++) {
            rest[i] = new int[i + 1];
            for (int k = 0; k <= i; k++) {
                rest[i][k] = floor(at[i] - at[k]);
                sum[i][k] = exact(at[i] + at[k]);
                sum[k][i] = sum[i][k];
            }
        }
    }

    /**
     * The stops of a side, or nothing if they are more than {@link #MOST}; {@code lengths[kind]} are the lengths that
     * a copy of that kind may take along it.
     */
    static Optional<Stops> of(long side, long[][] lengths, long[] copies) {
        TreeSet<Long> reached = new TreeSet<>();
        reached.add(0L);
        for (int kind = 0; kind < lengths.length; kind++) {
            boolean grew = true;
            for (long c = 0; c < copies[kind] && grew; c++) {
                grew = false;
                for (long from : reached.toArray(Long[]::new)) {
                    for (long length : lengths[kind]) {
                        grew |= from + length <= side && reached.add(from + length);
                    }
                }
                if (reached.size() > MOST) {
                    return Optional.empty();
                }
            }
        }
        reached.add(side);
        return Optional.of(new Stops(reached.stream().mapToLong(Long::longValue).toArray()));
    }

    int size() {
        return at.length;
    }

    long at(int stop) {
        return at[stop];
    }

    /** The last stop not beyond {@code length}, which is at least 0. */
    int floor(long length) {
        int found = Arrays.binarySearch(at, length);
        return found >= 0 ? found : -found - 2;
    }

    /** The stop at {@code length}, or −1. */
    int exact(long length) {
        return Math.max(-1, Arrays.binarySearch(at, length));
    }

    /** The stop where two lengths laid end to end finish, or −1 if there is none. */
    int sum(int one, int other) {
        return sum[one][other];
    }

    /** The last stop that fits into what is left of {@code whole} behind {@code part}. */
    int rest(int whole, int part) {
        return rest[whole][part];
    }
}
