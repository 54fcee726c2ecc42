package hearthcloth.cutstock.join;

import java.util.Arrays;

/**
 * Lower bounds on the number of joins, by two relaxations that each take microseconds. Bars and strips are plain
 * lengths; all strips are of the bars' width, and all bars may be pieced from all strips.
 *
 * <p><i>Length</i>: a bar by itself needs the fewest of the longest strips that cover it. <i>Segments</i>: a plan with
 * J joins has n + J parts, hence uses at most n + J strips, and those hold no more than the n + J longest; this is
 * applied to the h longest bars for every h, with the others counted by length. O(n log n + m log m).
 */
public final class JoinBounds {

    private final long[] bars;
    private final long loss;
    /** Prefix sums of the strips, longest first. */
    private final long[] sums;

    private final long[] effective;

    /** The relaxation of a job; the arrays are not changed. */
    public JoinBounds(long[] bars, long[] strips, long loss) {
        this.bars = descending(bars);
        this.loss = loss;
        long[] sorted = descending(strips);
        this.sums = new long[sorted.length + 1];
        this.effective = new long[sorted.length + 1];
        for (int i = 0; i < sorted.length; i++) {
            sums[i + 1] = sums[i] + sorted[i];
            effective[i + 1] = effective[i] + Math.max(0, sorted[i] - loss);
        }
    }

    private static long[] descending(long[] lengths) {
        long[] sorted = lengths.clone();
        Arrays.sort(sorted);
        for (int i = 0, j = sorted.length - 1; i < j; i++, j--) {
            long swap = sorted[i];
            sorted[i] = sorted[j];
            sorted[j] = swap;
        }
        return sorted;
    }

    /** The fewest strips that cover a bar; more than there are strips if all of them do not cover it. */
    int fewestParts(long bar) {
        for (int k = 1; k < sums.length; k++) {
            if (sums[k] - loss * (k - 1) >= bar) {
                return k;
            }
        }
        return sums.length;
    }

    /** The longest bar that this many parts could make. */
    public long reach(int parts) {
        long longest = 0;
        for (int k = 1; k <= Math.min(parts, sums.length - 1); k++) {
            longest = Math.max(longest, sums[k] - loss * (k - 1));
        }
        return longest;
    }

    /** Every plan has at least this many joins. */
    public int joins() {
        int best = 0;
        int alone = 0;
        for (long bar : bars) {
            alone += fewestParts(bar) - 1;
        }
        long need = 0;
        int rest = alone;
        for (int h = 1; h <= bars.length; h++) {
            need += bars[h - 1];
            rest -= fewestParts(bars[h - 1]) - 1;
            best = Math.max(best, rest + segments(h, need));
        }
        return Math.max(best, alone);
    }

    private int segments(int h, long need) {
        int joins = 0;
        while (h + joins < sums.length - 1 && sums[h + joins] < need + loss * joins) {
            joins++;
        }
        return joins;
    }

    /**
     * A length that is missing at least; 0 if this relaxation cannot tell. When everything is joined end to end, a
     * strip adds at most its length less one loss, and each bar gets one loss back.
     */
    public long missing() {
        long worst = 0;
        long need = 0;
        for (int h = 1; h <= bars.length; h++) {
            need += bars[h - 1];
            worst = Math.max(worst, need - sumsAfterLosses(h));
        }
        return worst;
    }

    /**
     * The most that h bars can be covered by all strips: with h + J parts and J losses, where J is as small as the
     * parts allow.
     */
    private long sumsAfterLosses(int h) {
        int whole = Math.min(h, sums.length - 1);
        return sums[whole] + effective[sums.length - 1] - effective[whole];
    }
}
