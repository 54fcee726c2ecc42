package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.bound.CutBounds;
import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinBounds;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Tiny jobs against the best of every plan there is. */
class EveryPlanTest {

    private static final int CASES = 300;

    @Test
    void no_bound_exceeds_the_best_of_all_plans_and_whatever_can_be_made_is_found() {
        int possible = 0;
        int provesLoss = 0;
        int moreJoins = 0;
        for (int seed = 0; seed < CASES; seed++) {
            CutJoinJob job = tiny(seed);
            EveryPlan.Optimum best = EveryPlan.of(job);
            CutOutcome outcome = new CutAndJoin(job).search(Budget.steps(2_000), 1, better -> {});
            if (best.joins() == Integer.MAX_VALUE) {
                assertThat(outcome).as("job %d", seed).isNotInstanceOf(CutOutcome.Found.class);
                continue;
            }
            possible++;
            CutJoinBounds bounds = new CutBounds(job).bounds();
            assertThat(bounds.joins()).as("job %d", seed).isLessThanOrEqualTo(best.joins());
            assertThat(bounds.touchedArea()).as("job %d", seed).isLessThanOrEqualTo(best.touched() + 1e-6);
            assertThat(bounds.lostArea()).as("job %d", seed).isLessThanOrEqualTo(best.lost() + 1e-6);
            provesLoss += bounds.lostArea() > 0 ? 1 : 0;
            assertThat(outcome).as("job %d", seed).isInstanceOf(CutOutcome.Found.class);
            CutPlan plan = ((CutOutcome.Found) outcome).plan();
            assertThat(PlanOracle.faults(job, plan)).as("job %d", seed).isEmpty();
            moreJoins += plan.figures().joins() > best.joins() ? 1 : 0;
        }
        assertThat(possible).isGreaterThan(CASES / 3);
        assertThat(provesLoss).isGreaterThan(5);
        assertThat(moreJoins).isLessThanOrEqualTo(possible / 50);
    }

    private static CutJoinJob tiny(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        boolean narrow = chance.nextInt(3) == 0;
        List<StockPiece> stock = new ArrayList<>();
        for (int i = 0, count = 2 + chance.nextInt(2); i < count; i++) {
            long width = narrow ? 3 : 2 + chance.nextInt(6);
            stock.add(new StockPiece(i, width, 4 + chance.nextInt(6), chance.nextInt(2), chance.nextInt(3) == 0));
        }
        List<JobBlock> blocks = chance.nextInt(2) == 0 || narrow
                ? List.of()
                : List.of(new JobBlock(9, 2 + chance.nextInt(3), 2 + chance.nextInt(3), some(chance), true));
        List<JobBar> bars = new ArrayList<>();
        for (int i = 0, count = 2 + chance.nextInt(2); i < count; i++) {
            long width = narrow ? 2 : 1 + chance.nextInt(3);
            BarTurn turn = List.of(BarTurn.values()).get(chance.nextInt(BarTurn.values().length));
            int joins = i < 2 ? chance.nextInt(2) : 0;
            long length = (narrow ? 4L : 3L) + chance.nextInt(6);
            long least = narrow ? 4 : 2;
            bars.add(new JobBar(20 + i, width, length, some(chance), false, joins, least, turn, List.of()));
        }
        return new CutJoinJob(stock, blocks, bars, List.of(), 1, 0, 3);
    }

    private static FabricSets some(SplittableRandom chance) {
        return chance.nextInt(3) == 0 ? FabricSets.of(0, 1) : FabricSets.of(chance.nextInt(2));
    }
}
