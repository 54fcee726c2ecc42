package hearthcloth.benchmarks.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Bars cut into parts, so that joining those parts is known to be possible. */
final class Parts {

    private Parts() {}

    /** For each bar its parts, together this many or as many as the bars hold, each at least {@code least} long. */
    static List<long[]> of(long[] bars, int parts, long loss, long least, SplittableRandom chance) {
        int[] counts = new int[bars.length];
        Arrays.fill(counts, 1);
        for (int left = parts - bars.length; left > 0; left--) {
            int[] open = IntStream.range(0, bars.length)
                    .filter(i -> bars[i] + loss * counts[i] >= 2 * least * (counts[i] + 1L))
                    .toArray();
            if (open.length == 0) {
                throw new IllegalArgumentException("too many parts for such bars");
            }
            counts[open[chance.nextInt(open.length)]]++;
        }
        List<long[]> all = new ArrayList<>();
        for (int i = 0; i < bars.length; i++) {
            all.add(split(bars[i] + loss * (counts[i] - 1L), counts[i], least, chance));
        }
        return all;
    }

    /** A sum as so many random terms, each at least {@code least}. */
    private static long[] split(long sum, int terms, long least, SplittableRandom chance) {
        long free = sum - least * terms;
        long[] marks = chance.longs(terms - 1L, 0, free + 1).sorted().toArray();
        long[] split = new long[terms];
        long before = 0;
        for (int i = 0; i < terms; i++) {
            long mark = i < marks.length ? marks[i] : free;
            split[i] = least + mark - before;
            before = mark;
        }
        return split;
    }
}
