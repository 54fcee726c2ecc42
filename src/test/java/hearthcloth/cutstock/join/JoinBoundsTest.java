package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.join.FewestJoins.Bars;
import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link JoinBounds} and {@link LeftoverBound} beside {@link FewestJoins}, which tries everything. */
class JoinBoundsTest {

    private static final int CASES = 400;

    @Test
    void no_bound_exceeds_the_fewest_joins() {
        int raised = 0;
        int reached = 0;
        int feasible = 0;
        for (int seed = 0; seed < CASES; seed++) {
            Bars job = tiny(seed);
            int fewest = FewestJoins.of(job);
            JoinBounds simple = bounds(job);
            int dual = new LeftoverBound(array(job.bars()), array(job.strips()), job.loss(), simple)
                    .joins(100, Budget.steps(1_000));
            raised += dual > simple.joins() ? 1 : 0;
            if (fewest < FewestJoins.NONE) {
                feasible++;
                reached += Math.max(dual, simple.joins()) == fewest ? 1 : 0;
                assertThat(dual).as("%s, seed %s", job, seed).isLessThanOrEqualTo(fewest);
                assertThat(simple.joins()).as("%s, seed %s", job, seed).isLessThanOrEqualTo(fewest);
                assertThat(simple.missing()).as("%s, seed %s", job, seed).isZero();
            }
        }
        assertThat(raised).as("the dearer bound must earn its keep").isPositive();
        assertThat(feasible).isGreaterThan(CASES / 3);
        assertThat(reached).isGreaterThan(feasible / 2);
    }

    @Test
    void what_is_missing_is_never_overstated() {
        int told = 0;
        for (int seed = 0; seed < CASES; seed++) {
            Bars job = tiny(seed);
            long missing = bounds(job).missing();
            if (missing > 1) {
                told++;
                List<Long> nearly = new ArrayList<>(job.strips());
                nearly.add(missing - 1);
                assertThat(FewestJoins.of(new Bars(job.bars(), nearly, job.loss(), job.leastPart())))
                        .as("%s, seed %s", job, seed)
                        .isEqualTo(FewestJoins.NONE);
            }
        }
        assertThat(told).isPositive();
    }

    private static JoinBounds bounds(Bars job) {
        return new JoinBounds(array(job.bars()), array(job.strips()), job.loss());
    }

    private static long[] array(List<Long> lengths) {
        return lengths.stream().mapToLong(Long::longValue).toArray();
    }

    private static Bars tiny(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Long> bars = chance.longs(1 + chance.nextInt(3), 2, 11).boxed().toList();
        List<Long> strips = chance.longs(1 + chance.nextInt(4), 2, 10).boxed().toList();
        return new Bars(bars, strips, chance.nextInt(2), 1 + chance.nextInt(3));
    }
}
