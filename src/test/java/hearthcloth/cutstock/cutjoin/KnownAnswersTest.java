package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.search.Budget;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Instances whose fewest joins an exact solver or their construction has proved. */
class KnownAnswersTest {

    private static final long STEPS = 8_000;

    @ParameterizedTest
    @CsvSource({
        "join002, 0",
        "join003, 2",
        "join025, 4",
        "join032, 1",
        "join084, 5",
        "join095, 6",
        // proved by reaching the lower bound that the exact solver left open
        "join048, 6"
    })
    void strips_of_the_bars_width_are_joined_with_the_fewest_joins(String name, int joins) {
        CutJoinJob job = BenchJobs.join(BenchJobs.lines("/bench/" + name + ".txt"));

        CutPlan plan = plan(job);

        assertThat(PlanOracle.faults(job, plan)).isEmpty();
        assertThat(plan.figures().joins()).isEqualTo(joins);
    }

    @ParameterizedTest
    @CsvSource({"join050, 7", "join059, 4"})
    void open_cases_are_no_worse_than_the_best_known(String name, int joins) {
        CutJoinJob job = BenchJobs.join(BenchJobs.lines("/bench/" + name + ".txt"));

        CutPlan plan = plan(job);

        assertThat(PlanOracle.faults(job, plan)).isEmpty();
        assertThat(plan.figures().joins()).isLessThanOrEqualTo(joins);
    }

    @ParameterizedTest
    @CsvSource({
        "planted01, 21, 705600",
        "planted02, 15, 691680",
        "planted04, 1, 241020",
        "planted13, 16, 1082640",
        "planted15, 23, 961800"
    })
    void certified_joins_and_area_are_reached_and_proved(String name, int joins, double area) {
        CutJoinJob job = BenchJobs.cutAndJoin(BenchJobs.lines("/bench/" + name + ".txt"));

        CutOutcome outcome = new CutAndJoin(job).search(Budget.steps(STEPS), 1, better -> {});

        assertThat(outcome).isInstanceOfSatisfying(CutOutcome.Found.class, found -> {
            assertThat(PlanOracle.faults(job, found.plan())).isEmpty();
            assertThat(found.plan().figures().joins()).isEqualTo(joins);
            assertThat(found.plan().figures().usedArea()).isEqualTo(area);
            assertThat(found.bounds().joins()).isEqualTo(joins);
            assertThat(found.bounds().usedArea()).isEqualTo(area);
        });
    }

    private static CutPlan plan(CutJoinJob job) {
        return ((CutOutcome.Found) new CutAndJoin(job).search(Budget.steps(STEPS), 1, better -> {})).plan();
    }
}
