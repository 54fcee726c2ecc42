package hearthcloth.benchmarks.sets;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.join.JoinJob;
import hearthcloth.cutstock.join.Joining;
import hearthcloth.cutstock.search.Budget;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class GeneratedTest {

    private static NumberFile file(Generated kind, long seed) {
        return NumberFile.of(kind.name(), kind.text(seed));
    }

    @Test
    void every_kind_can_be_read_again() {
        for (long seed = 1; seed <= 50; seed++) {
            Formats.join(file(Generated.JOIN, seed));
            Formats.join(file(Generated.LARGE, seed));
            Formats.cutAndJoin(file(Generated.CUT_AND_JOIN, seed));
            Formats.knapsack(file(Generated.KNAPSACK, seed));
            Formats.unconstrained(file(Generated.UNCONSTRAINED, seed), true);
        }
    }

    @Test
    void the_same_seed_gives_the_same_instance_and_another_one_another() {
        for (Generated kind : Generated.values()) {
            String again = kind.text(7);
            assertThat(kind.text(7)).isEqualTo(again).isNotEqualTo(kind.text(8));
        }
    }

    @Test
    void tight_scraps_have_nothing_beyond_what_their_bars_need() {
        for (long seed = 1; seed <= 20; seed++) {
            JoinJob job = Formats.join(file(Generated.TIGHT0, seed));
            long bars = job.bars().stream().mapToLong(Long::longValue).sum();
            long strips = job.strips().stream().mapToLong(Long::longValue).sum();

            assertThat(job.strips()).hasSize(120).allMatch(strip -> strip >= job.leastPart());
            // some number of joins, from one strip to two parts a strip, uses up everything
            assertThat((strips - bars) % job.loss()).isZero();
            assertThat((strips - bars) / job.loss()).isBetween(100L, 130L);
        }
    }

    @Test
    void parts_add_up_to_their_bars() {
        long[] bars = {500, 700, 900};
        for (long seed = 1; seed <= 200; seed++) {
            List<long[]> cut = Parts.of(bars, 9, 15, 60, new SplittableRandom(seed));

            assertThat(cut.stream().mapToInt(parts -> parts.length).sum()).isEqualTo(9);
            IntStream.range(0, bars.length)
                    .forEach(i -> assertThat(LongStream.of(cut.get(i)).sum() - 15L * (cut.get(i).length - 1))
                            .isEqualTo(bars[i]));
            assertThat(cut).allMatch(parts -> Arrays.stream(parts).allMatch(part -> part >= 60));
        }
    }

    @Test
    void planted_jobs_can_be_made_with_the_joins_they_were_built_with() {
        for (long seed = 1; seed <= 5; seed++) {
            CutOutcome outcome = new CutAndJoin(Formats.cutAndJoin(file(Generated.CUT_AND_JOIN, seed)))
                    .search(Budget.steps(3_000), 1, better -> {});

            assertThat(outcome)
                    .isInstanceOfSatisfying(
                            CutOutcome.Found.class,
                            found -> assertThat(found.plan().figures().joins())
                                    .isEqualTo(found.bounds().joins()));
        }
    }

    @Test
    void large_instances_are_not_short() {
        for (long seed = 1; seed <= 20; seed++) {
            assertThat(Joining.missing(Formats.join(file(Generated.LARGE, seed))))
                    .isZero();
        }
    }
}
