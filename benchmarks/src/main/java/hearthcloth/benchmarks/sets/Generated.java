package hearthcloth.benchmarks.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Seeded instances of the kinds that the problem sets have, written in the sets' own formats. Lengths in millimetres. */
public enum Generated {
    /** Bars of 6 to 20 steps and strips in three grades of length, 5 to 50 % more than the bars need. */
    JOIN {
        @Override
        String text(SplittableRandom chance) {
            int bars = new int[] {6, 8, 10, 12, 16, 20}[chance.nextInt(6)];
            long first = new long[] {60, 100, 150}[chance.nextInt(3)];
            long step = new long[] {25, 35, 50}[chance.nextInt(3)];
            long[] lengths =
                    LongStream.range(0, bars).map(i -> first + step * i).toArray();
            long longest = Math.max(100, lengths[bars - 1] * new long[] {75, 110, 200}[chance.nextInt(3)] / 100);
            double wanted = LongStream.of(lengths).sum() * (1.05 + 0.4 * chance.nextDouble());
            List<Long> strips = new ArrayList<>();
            for (double sum = 0; sum < wanted; sum += strips.get(strips.size() - 1)) {
                strips.add(chance.nextLong(80, longest + 1));
            }
            return joinText(lengths, strips.stream().mapToLong(Long::longValue).toArray());
        }
    },
    /** 20 bars of 200 strips: 15 to 50 % more than the bars need. */
    LARGE {
        @Override
        String text(SplittableRandom chance) {
            long longest = new long[] {250, 400, 800}[chance.nextInt(3)];
            long[] strips = LongStream.range(0, 200)
                    .map(i -> chance.nextLong(80, longest + 1))
                    .toArray();
            double mean = LongStream.of(strips).sum() / (1.15 + 0.35 * chance.nextDouble()) / 20;
            return joinText(spread(mean), strips);
        }
    },
    /** 20 bars of 120 scraps that were cut from the bars, with nothing to spare. */
    TIGHT0 {
        @Override
        String text(SplittableRandom chance) {
            return tight(chance, 0);
        }
    },
    /** As TIGHT0, with 1 % to spare. */
    TIGHT1 {
        @Override
        String text(SplittableRandom chance) {
            return tight(chance, 0.01);
        }
    },
    /** As TIGHT0, with 2 % to spare. */
    TIGHT2 {
        @Override
        String text(SplittableRandom chance) {
            return tight(chance, 0.02);
        }
    },
    /** As TIGHT0, with 5 % to spare. */
    TIGHT5 {
        @Override
        String text(SplittableRandom chance) {
            return tight(chance, 0.05);
        }
    },
    /** Rectangles that hold exactly the lanes that the bars need, of two to four colours, and some that are useless. */
    CUT_AND_JOIN {
        @Override
        String text(SplittableRandom chance) {
            return Planted.text(chance);
        }
    },
    /** A sheet and 10 to 30 kinds with few copies each. */
    KNAPSACK {
        @Override
        String text(SplittableRandom chance) {
            StringBuilder text = new StringBuilder("100 100\n");
            int kinds = 10 + chance.nextInt(21);
            text.append(kinds).append('\n');
            for (int i = 0; i < kinds; i++) {
                text.append(rectangle(chance, 100))
                        .append(' ')
                        .append(1 + chance.nextInt(4))
                        .append('\n');
            }
            return text.toString();
        }
    },
    /** A sheet and 10 to 30 kinds with as many copies as fit. */
    UNCONSTRAINED {
        @Override
        String text(SplittableRandom chance) {
            int kinds = 10 + chance.nextInt(21);
            StringBuilder text = new StringBuilder(kinds + "\n250 250\n");
            for (int i = 0; i < kinds; i++) {
                text.append(rectangle(chance, 250)).append('\n');
            }
            return text.toString();
        }
    };

    private static final long LOSS = 15;
    private static final long LEAST = 60;

    /** One instance; the same seed gives the same text. */
    public final String text(long seed) {
        return text(new SplittableRandom(seed * 31 + name().hashCode()));
    }

    abstract String text(SplittableRandom chance);

    private static String rectangle(SplittableRandom chance, long sheet) {
        long length = chance.nextLong(sheet / 10, sheet * 7 / 10);
        long width = chance.nextLong(sheet / 10, sheet * 7 / 10);
        long profit = Math.max(1, Math.round(length * width * (0.8 + 0.4 * chance.nextDouble())));
        return length + " " + width + " " + profit;
    }

    /** 20 lengths around a mean, from 0.4 to 1.6 of it. */
    private static long[] spread(double mean) {
        return IntStream.range(0, 20)
                .mapToLong(i -> Math.round(mean * (0.4 + 1.2 * i / 19)))
                .toArray();
    }

    /**
     * Every bar is cut into parts; a scrap is one part, or two parts of different bars. What is to spare is spread
     * over the scraps by chance.
     */
    private static String tight(SplittableRandom chance, double spare) {
        int scraps = 120;
        int parts = scraps + chance.nextInt(31);
        long[] bars = spread(chance.nextInt(850, 1600));
        List<long[]> cut = Parts.of(bars, parts, LOSS, LEAST, chance);
        List<List<Long>> heaps = new ArrayList<>(IntStream.range(0, cut.size())
                .mapToObj(i -> Arrays.stream(cut.get(i)).boxed().collect(Collectors.toCollection(ArrayList::new)))
                .toList());
        List<Long> made = new ArrayList<>();
        for (int pair = 0; pair < parts - scraps; pair++) {
            List<List<Long>> full = new ArrayList<>(
                    heaps.stream().filter(heap -> !heap.isEmpty()).toList());
            List<Long> one = full.remove(chance.nextInt(full.size()));
            List<Long> other = full.get(chance.nextInt(full.size()));
            made.add(one.remove(one.size() - 1) + other.remove(other.size() - 1));
        }
        heaps.forEach(made::addAll);
        long total = made.stream().mapToLong(Long::longValue).sum();
        for (long left = Math.round((double) total * spare); left > 0; left--) {
            int at = chance.nextInt(made.size());
            made.set(at, made.get(at) + 1);
        }
        long[] strips = made.stream().mapToLong(Long::longValue).toArray();
        shuffle(strips, chance);
        return joinText(bars, strips);
    }

    private static void shuffle(long[] numbers, SplittableRandom chance) {
        for (int i = numbers.length - 1; i > 0; i--) {
            int j = chance.nextInt(i + 1);
            long swap = numbers[i];
            numbers[i] = numbers[j];
            numbers[j] = swap;
        }
    }

    private static String joinText(long[] bars, long[] strips) {
        return bars.length + " " + strips.length + " " + LOSS + " " + LEAST + " 50\n" + words(bars) + "\n"
                + words(strips) + "\n";
    }

    private static String words(long[] numbers) {
        return LongStream.of(numbers).mapToObj(Long::toString).collect(Collectors.joining(" "));
    }
}
