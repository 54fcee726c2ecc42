package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.search.Budget;
import java.util.List;
import org.junit.jupiter.api.Test;

class RecutTest {

    @Test
    void recut_plans_obey_every_rule_with_the_same_parts_and_less_lost() {
        int changed = 0;
        double before = 0;
        double after = 0;
        for (int seed = 0; seed < 100; seed++) {
            CutJoinJob job = RandomJobs.job(seed);
            if (new CutAndJoin(job).search(Budget.steps(60), seed, better -> {}) instanceof CutOutcome.Found found) {
                CutPlan again = Recut.of(job, found.plan());
                assertThat(PlanOracle.faults(job, again)).as("job %d", seed).isEmpty();
                assertThat(again.figures())
                        .as("job %d", seed)
                        .isLessThanOrEqualTo(found.plan().figures());
                changed += again.equals(found.plan()) ? 0 : 1;
                before += found.plan().figures().sliverArea();
                after += again.figures().sliverArea();
            }
        }
        assertThat(changed).isGreaterThan(10);
        assertThat(after).isLessThan(0.95 * before);
    }

    @Test
    void what_is_left_in_two_bits_becomes_one() {
        // 300 x 200; a 100 x 100 and a 200 x 100 apart from each other leave two bits, in one row a single one
        Cutting apart = cut(
                300,
                true,
                100,
                new Cutting.Cut(0, 0, 100, 200, false, 100, part(1, 0, 0, 100), rest(0, 100, 100, 100)),
                new Cutting.Cut(100, 0, 200, 200, false, 100, rest(100, 0, 200, 100), part(2, 100, 100, 200)));
        StockPiece piece = new StockPiece(1, 300, 200, 0, true);
        JobBlock one = new JobBlock(1, 100, 100, FabricSets.of(0), false);
        JobBlock two = new JobBlock(2, 200, 100, FabricSets.of(0), false);
        CutJoinJob job = new CutJoinJob(List.of(piece), List.of(one, two), List.of(), List.of(), 0, 0, 50);

        CutPlan plan = Recut.of(job, CutPlan.of(List.of(new CutPiece(piece, apart)), 2, 0, 50));

        assertThat(PlanOracle.faults(job, plan)).isEmpty();
        assertThat(plan.figures().cuts()).isEqualTo(2);
    }

    private static Cutting cut(long width, boolean lengthwise, long at, Cutting first, Cutting second) {
        return new Cutting.Cut(0, 0, width, 200, lengthwise, at, first, second);
    }

    private static Cutting part(int demand, long x, long y, long width) {
        return new Cutting.Part(demand, 0, x, y, width, 100, false);
    }

    private static Cutting rest(long x, long y, long width, long height) {
        return new Cutting.Offcut(x, y, width, height);
    }
}
