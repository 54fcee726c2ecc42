package hearthcloth.cutstock.join;

import java.util.SplittableRandom;

/**
 * Chooses the offers that a bar is pieced from: all but the last are used whole, and the last leaves the remainder.
 * Several ways of choosing are tried; which is best depends on what comes after, so the search picks one at random.
 */
final class CandidateSelection {

    /** The ways of choosing. */
    enum Way {
        /** The longest first, so that the rest is easy. */
        LONGEST,
        /** The shortest that still leaves a solution, so that small strips go first. */
        SHORTEST,
        /** Any that leaves a solution. */
        ANY,
        /** Any but the last two, which are the pair that exceeds the rest by least. */
        PAIR
    }

    private final StripCandidates offers;
    private final long loss;
    private final boolean[] taken;
    final int[] chosen;
    int count;

    CandidateSelection(StripCandidates offers, long loss, int most) {
        this.offers = offers;
        this.loss = loss;
        this.taken = new boolean[1 << 11];
        this.chosen = new int[most];
    }

    /** Chooses exactly {@code parts} offers that cover the bar; false if this way finds none. */
    boolean pick(long bar, int parts, long least, Way way, SplittableRandom chance) {
        count = 0;
        long rest = bar;
        boolean found = true;
        while (found && count < parts) {
            int left = parts - count;
            if (left == 2 && way == Way.PAIR) {
                found = pair(rest + loss);
            } else if (left == 1) {
                found = take(free(offers.atLeast(Math.max(rest, least))));
            } else {
                found = take(one(rest, left - 1, least, way, chance));
                if (found) {
                    rest -= offers.length(chosen[count - 1]) - loss;
                }
            }
        }
        for (int i = 0; i < count; i++) {
            taken[chosen[i]] = false;
        }
        return found;
    }

    private boolean take(int offer) {
        if (offer < 0) {
            return false;
        }
        taken[offer] = true;
        chosen[count++] = offer;
        return true;
    }

    /** The first offer from here on that is not chosen yet. */
    private int free(int from) {
        int i = from;
        while (i < offers.count() && taken[i]) {
            i++;
        }
        return i < offers.count() ? i : -1;
    }

    private int one(long rest, int others, long least, Way way, SplittableRandom chance) {
        long longestOthers = 0;
        int left = others;
        for (int i = offers.count() - 1; i >= 0 && left > 0; i--) {
            if (!taken[i]) {
                longestOthers += offers.length(i) - loss;
                left--;
            }
        }
        int low = offers.atLeast(Math.max(least, rest - longestOthers));
        int high = offers.atLeast(rest + others * (loss - least) + 1);
        if (high <= low) {
            return free(low);
        }
        return switch (way) {
            case LONGEST -> lastFree(high - 1, low);
            case SHORTEST -> free(low);
            case ANY, PAIR -> free(low + chance.nextInt(high - low));
        };
    }

    private int lastFree(int from, int low) {
        int i = from;
        while (i >= low && taken[i]) {
            i--;
        }
        return i >= low ? i : free(low);
    }

    /** The pair that together is at least this long with the least excess. */
    private boolean pair(long together) {
        int low = free(0);
        int high = offers.count() - 1;
        long excess = Long.MAX_VALUE;
        int bestLow = -1;
        int bestHigh = -1;
        while (low >= 0 && low < high) {
            if (taken[high]) {
                high--;
                continue;
            }
            long over = offers.length(low) + offers.length(high) - together;
            if (over < 0) {
                low = free(low + 1);
            } else {
                if (over < excess) {
                    excess = over;
                    bestLow = low;
                    bestHigh = high;
                }
                high--;
            }
        }
        return bestHigh >= 0 && take(bestLow) && take(bestHigh);
    }
}
