package hearthcloth.cutstock.join;

import java.util.Arrays;

/**
 * Everything that a bar's next part could be cut from, sorted by length: remainders of open strips and strips still to
 * be opened, of very many places the last {@value #MOST_PLACES}, which are the longest. Each entry is packed into one
 * long, length above and number below, so that sorting is a plain array sort.
 */
final class StripCandidates {

    /** Bits of an entry's number. */
    private static final int BITS = 11;

    private static final int MOST = 1 << BITS;
    /** The most strips of one place that are offered. */
    private static final int MOST_COPIES = 6;

    private static final int MOST_PLACES = MOST / 2;

    private final long[] packed = new long[MOST];
    private final int[] source = new int[MOST];
    private int count;

    /** Collects everything that is at least {@code least} long. A source below 0 is a place, as its complement. */
    void gather(StripSource strips, long[] used, int kind, long least) {
        count = 0;
        int[] places = strips.places(kind);
        for (int i = Math.max(0, places.length - MOST_PLACES); i < places.length; i++) {
            offer(strips, used, kind, places[i], least);
        }
        for (int place = strips.firstPassing(), limit = strips.passingLimit(); place < limit; place++) {
            offer(strips, used, kind, place, least);
        }
        for (int slot = 0, limit = strips.openLimit(); slot < limit; slot++) {
            if (strips.isOpen(slot) && strips.serves(slot, kind)) {
                add(slot, strips.length(slot) - used[slot], least);
            }
        }
        sort();
    }

    private void offer(StripSource strips, long[] used, int kind, int place, long least) {
        long length = strips.offered(kind, place, used);
        if (length >= least) {
            for (int copy = Math.min(MOST_COPIES, strips.copies(kind, place, used)); copy > 0; copy--) {
                add(~place, length, least);
            }
        }
    }

    /** Insertion sort, since places come nearly in order; a plain sort if that takes too long. */
    private void sort() {
        int patience = 16 * count;
        for (int i = 1; i < count; i++) {
            long entry = packed[i];
            int j = i;
            while (j > 0 && packed[j - 1] > entry) {
                packed[j] = packed[--j];
            }
            packed[j] = entry;
            patience -= i - j;
            if (patience < 0) {
                Arrays.sort(packed, 0, count);
                return;
            }
        }
    }

    private void add(int from, long length, long least) {
        if (length >= least && length > 0 && count < MOST) {
            source[count] = from;
            packed[count] = length << BITS | count;
            count++;
        }
    }

    int count() {
        return count;
    }

    /** The length of the i-th shortest offer. */
    long length(int i) {
        return packed[i] >>> BITS;
    }

    /** The length of the longest, 0 if there is none. */
    long longest() {
        return count == 0 ? 0 : length(count - 1);
    }

    /** The source of the i-th shortest offer. */
    int source(int i) {
        return source[(int) (packed[i] & (MOST - 1))];
    }

    /** The first offer that is at least this long; count() if there is none. */
    int atLeast(long length) {
        int low = 0;
        int high = count;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (length(middle) < length) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The fewest of the longest offers that cover a bar; count() + 1 if all of them do not. */
    int fewest(long bar, long loss) {
        long covered = -1;
        for (int i = count - 1; i >= 0; i--) {
            covered = covered < 0 ? length(i) : covered + length(i) - loss;
            if (covered >= bar) {
                return count - i;
            }
            if (length(i) <= loss) {
                break;
            }
        }
        return count + 1;
    }
}
