package hearthcloth.colour;

import java.util.Collection;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.Function;

/**
 * A thread picked from the maker's own, with how it shows on the fabrics it crosses.
 *
 * @param difference CIEDE2000 between thread and fabric where the choice is weakest: on the fabric where a thread meant
 *     to hide shows most, or one meant to show shows least
 */
public record ThreadChoice<T>(T thread, double difference) {

    /**
     * The thread that shows least: its greatest difference from any of the fabrics is smallest; the earlier of equals.
     *
     * @throws IllegalArgumentException if there are no threads or no fabrics
     */
    public static <T> ThreadChoice<T> showingLeast(
            List<T> threads, Function<? super T, Colour> colour, Collection<Colour> fabrics) {
        Comparator<ThreadChoice<T>> byDifference = Comparator.comparingDouble(ThreadChoice::difference);
        return threads.stream()
                .map(t -> new ThreadChoice<>(
                        t, differences(colour.apply(t), fabrics).getMax()))
                .min(byDifference)
                .orElseThrow(ThreadChoice::noThreads);
    }

    /**
     * The thread that shows most: its least difference from any of the fabrics is greatest; the earlier of equals.
     *
     * @throws IllegalArgumentException if there are no threads or no fabrics
     */
    public static <T> ThreadChoice<T> showingMost(
            List<T> threads, Function<? super T, Colour> colour, Collection<Colour> fabrics) {
        Comparator<ThreadChoice<T>> byDifference = Comparator.comparingDouble(ThreadChoice::difference);
        return threads.stream()
                .map(t -> new ThreadChoice<>(
                        t, differences(colour.apply(t), fabrics).getMin()))
                .min(byDifference.reversed()) // min keeps the earlier of equals, max the later
                .orElseThrow(ThreadChoice::noThreads);
    }

    private static DoubleSummaryStatistics differences(Colour thread, Collection<Colour> fabrics) {
        if (fabrics.isEmpty()) {
            throw new IllegalArgumentException("a thread is chosen for at least one fabric");
        }
        Lab lab = thread.lab();
        return fabrics.stream()
                .mapToDouble(fabric -> lab.difference(fabric.lab()))
                .summaryStatistics();
    }

    private static IllegalArgumentException noThreads() {
        return new IllegalArgumentException("a thread is chosen from at least one");
    }
}
