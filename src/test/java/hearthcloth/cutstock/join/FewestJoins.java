package hearthcloth.cutstock.join;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The fewest joins of a tiny job by trying everything. Whole cut lengths are enough: for a given choice of strips for
 * each bar the cuts are a transport problem, which has whole solutions for whole lengths.
 */
final class FewestJoins {

    static final int NONE = 1_000;

    /**
     * Bars, and strips of their width.
     *
     * @param leastPart the shortest part a joined bar may have
     */
    record Bars(List<Long> bars, List<Long> strips, long loss, long leastPart) {}

    private final Bars job;
    private final Map<List<Long>, Integer> known = new HashMap<>();

    private FewestJoins(Bars job) {
        this.job = job;
    }

    /** The fewest joins, {@link #NONE} if the job cannot be done. */
    static int of(Bars job) {
        long[] left = job.strips().stream().mapToLong(Long::longValue).toArray();
        return new FewestJoins(job).from(0, left);
    }

    private int from(int bar, long[] left) {
        if (bar == job.bars().size()) {
            return 0;
        }
        Long[] boxed = new Long[left.length + 1];
        Arrays.setAll(boxed, i -> i == left.length ? (long) bar : left[i]);
        List<Long> key = List.of(boxed);
        Integer before = known.get(key);
        if (before == null) {
            before = cut(bar, left, 0, 0, 0);
            known.put(key, before);
        }
        return before;
    }

    /** Cuts this bar's parts from the strips from {@code strip} on. */
    private int cut(int bar, long[] left, int strip, int parts, long sum) {
        long length = job.bars().get(bar);
        if (parts > 0 && sum - job.loss() * (parts - 1) == length) {
            int rest = from(bar + 1, left);
            int whole = strip == left.length ? NONE : more(bar, left, strip, parts, sum);
            return Math.min(NONE, Math.min(parts - 1 + rest, whole));
        }
        return strip == left.length ? NONE : more(bar, left, strip, parts, sum);
    }

    private int more(int bar, long[] left, int strip, int parts, long sum) {
        int best = cut(bar, left, strip + 1, parts, sum);
        long whole = job.bars().get(bar);
        for (long part = 1; part <= left[strip]; part++) {
            if (part >= job.leastPart() || (parts == 0 && part == whole)) {
                left[strip] -= part;
                best = Math.min(best, cut(bar, left, strip + 1, parts + 1, sum + part));
                left[strip] += part;
            }
        }
        return best;
    }
}
