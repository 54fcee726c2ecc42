package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.search.Budget;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Twenty bars out of strips of their own width: plans that are sound, and as few joins as the bound allows. */
class JoiningTest {

    @Test
    void tight_scraps_are_joined_although_hardly_anything_is_left_over() {
        for (int seed = 0; seed < 6; seed++) {
            JoinJob job = tight(seed);
            Answer<JoinPlan, Integer> answer = new Joining().run(job, Budget.steps(3_000), seed, better -> {});
            assertThat(answer.best()).as("%s", job).hasValueSatisfying(plan -> check(job, plan));
        }
    }

    @Test
    void scraps_cut_from_the_bars_with_nothing_to_spare_are_put_together_again() {
        for (int seed = 0; seed < 12; seed++) {
            JoinJob job = planted(seed);
            Answer<JoinPlan, Integer> answer = new Joining().run(job, Budget.steps(2_000), seed, better -> {});
            assertThat(answer.best()).as("%s", job).hasValueSatisfying(plan -> {
                check(job, plan);
                assertThat(plan.joins()).isLessThanOrEqualTo(job.strips().size() - 20);
            });
        }
    }

    @Test
    void twenty_bars_of_two_hundred_strips_reach_the_bound() {
        for (int seed = 0; seed < 12; seed++) {
            JoinJob job = many(seed);
            Answer<JoinPlan, Integer> answer = new Joining().run(job, Budget.steps(2_000), seed, better -> {});
            assertThat(answer.best()).as("%s", job).hasValueSatisfying(plan -> check(job, plan));
            assertThat(answer.proven()).as("%s", job).isTrue();
        }
    }

    /** Twenty bars cut into six parts each, which are the scraps. */
    private static JoinJob planted(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Long> strips = chance.longs(120, 60, 350).boxed().toList();
        List<Long> bars = LongStream.range(0, 20)
                .map(bar -> strips.subList((int) bar * 6, (int) bar * 6 + 6).stream()
                                .mapToLong(Long::longValue)
                                .sum()
                        - 5 * 15)
                .boxed()
                .toList();
        return new JoinJob(bars, strips, 15, 60);
    }

    /** Twenty bars, and strips for 1 to 50 hundredths more than they need. */
    private static JoinJob many(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Long> strips = chance.longs(200, 80, 250 + 40 * seed).boxed().toList();
        double gain = strips.stream().mapToLong(strip -> strip - 15).sum() / (1.01 + 0.49 * chance.nextDouble());
        List<Long> bars = LongStream.range(0, 20)
                .map(i -> Math.round(gain * (10 + i) / 390))
                .boxed()
                .toList();
        return new JoinJob(bars, strips, 15, 60);
    }

    /** Twenty bars planted in 120 scraps, joined end to end, with a few hundredths to spare. */
    private static JoinJob tight(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Long> strips = chance.longs(120, 70, 320).boxed().toList();
        long gain = strips.stream().mapToLong(strip -> strip - 15).sum();
        List<Long> bars = LongStream.range(0, 20)
                .map(i -> gain * 95 / 100 * (10 + i) / 390)
                .boxed()
                .toList();
        return new JoinJob(bars, strips, 15, 60);
    }

    private static void check(JoinJob job, JoinPlan plan) {
        long[] left = job.strips().stream().mapToLong(Long::longValue).toArray();
        for (int bar = 0; bar < job.bars().size(); bar++) {
            List<JoinPlan.Part> parts = plan.bars().get(bar);
            Set<Integer> from = new HashSet<>();
            long sum = -job.loss() * (parts.size() - 1);
            for (JoinPlan.Part part : parts) {
                assertThat(from.add(part.strip())).as("one part from a strip").isTrue();
                assertThat(part.cut()).isGreaterThanOrEqualTo(parts.size() == 1 ? 1 : job.leastPart());
                left[part.strip()] -= part.cut();
                sum += part.cut();
            }
            assertThat(sum).isEqualTo(job.bars().get(bar));
        }
        assertThat(LongStream.of(left)).allMatch(rest -> rest >= 0);
    }
}
