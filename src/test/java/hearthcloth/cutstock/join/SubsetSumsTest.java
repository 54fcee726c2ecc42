package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SubsetSumsTest {

    @Test
    void the_best_subset_is_the_one_that_trying_all_of_them_finds() {
        SplittableRandom chance = new SplittableRandom(7);
        SubsetSums split = new SubsetSums();
        for (int round = 0; round < 500; round++) {
            int count = 1 + chance.nextInt(12);
            long[] numbers = chance.longs(count, -300, 300).toArray();
            long limit = chance.nextLong(-500, 500);
            long[] sums = IntStream.range(1, (1 << count) - 1)
                    .mapToLong(mask -> sum(numbers, mask))
                    .filter(sum -> sum >= limit)
                    .sorted()
                    .toArray();
            int found = split.find(numbers, count, limit);
            assertThat(found > 0).isEqualTo(sums.length > 0);
            if (found > 0) {
                assertThat(split.sum(0)).isEqualTo(sums[0]);
            }
            for (int i = 0; i < found; i++) {
                assertThat(split.sum(i)).isGreaterThanOrEqualTo(limit).isEqualTo(sum(numbers, split.mask(i)));
            }
        }
    }

    private static long sum(long[] numbers, int mask) {
        return IntStream.range(0, numbers.length)
                .filter(i -> (mask >> i & 1) == 1)
                .mapToLong(i -> numbers[i])
                .sum();
    }
}
