package hearthcloth.cutstock.piecing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heaps that were cut from cloths, so that a full cloth exists; of the small ones an exhaustive search knows the least loss. */
class KnownPiecingTest {

    private static final long STEPS = 30_000;

    private static PiecingPlan plan(PiecingJob job) {
        long[] left = {STEPS};
        return new FreePiecing(job).search(() -> left[0]-- <= 0, 1, better -> {});
    }

    @ParameterizedTest
    @CsvSource({
        "exact-n020-s1, 0",
        "exact-n030-s2, 0",
        "decoy-n020-s1, 0",
        "several-exact-k03-s1, 0",
        "wild-c030-p60-s2, 0.3",
        "half-n030-s1, 0.5",
        "grown-n010-s1, 5",
        "grown-n015-s2, 5"
    })
    void a_heap_that_was_cut_from_cloths_makes_them_again(String name, double most) {
        PiecingJob job = PiecingSets.read(name);

        PiecingPlan plan = plan(job);

        assertThat(PlanCheck.faults(job, plan)).isEmpty();
        assertThat(plan.figures().full()).isTrue();
        assertThat(plan.figures().lostPercent()).isLessThanOrEqualTo(most);
        assertThat(plan.figures().lostPercent())
                .isGreaterThanOrEqualTo(PiecingBounds.of(job).lostPercent());
    }

    @ParameterizedTest
    @CsvSource({"small-n4-s1, 839", "small-n5-s2, 769", "small-n6-s3, 727", "small-n7-s4, 867", "small-n7-s7, 1329"})
    void a_small_heap_loses_no_more_than_the_exact_least(String name, long least) {
        PiecingJob job = PiecingSets.read(name);

        PiecingPlan plan = plan(job);

        assertThat(PlanCheck.faults(job, plan)).isEmpty();
        assertThat(plan.figures().full()).isTrue();
        assertThat(plan.figures().lost()).isEqualTo(least);
    }
}
