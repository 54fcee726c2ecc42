package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** {@link CutAttempt}, and how {@link LaneLayout} writes its lanes out as cuts. */
class CutAttemptTest {

    private static final FabricSets RED = FabricSets.of(0);

    private static List<JobBar> bars(int count, long width, long length, BarTurn turn) {
        return IntStream.range(0, count)
                .mapToObj(i -> new JobBar(i, width, length, RED, false, 3, 10, turn, List.of()))
                .toList();
    }

    private static CutJoinJob job(StockPiece piece, List<JobBlock> blocks, List<JobBar> bars, long leastOffcut) {
        return new CutJoinJob(List.of(piece), blocks, bars, List.of(), 5, 0, leastOffcut);
    }

    private static CutAttempt built(CutJoinJob job, long seed) {
        CutAttempt attempt =
                new CutAttempt(job, FreePlots.bare(job.stock()), AskedBars.all(job), SearchParameters.standard());
        attempt.joinery().build(new SplittableRandom(seed));
        return attempt;
    }

    @Test
    void lanes_side_by_side_are_first_cut_to_length_where_that_leaves_a_larger_offcut() {
        CutJoinJob job = job(new StockPiece(0, 100, 100, 0, true), List.of(), bars(5, 20, 60, BarTurn.ALONG), 30);
        CutAttempt attempt = built(job, 1);

        assertThat(attempt.whole()).isTrue();
        CutPlan plan = attempt.plan();

        // one cut across leaves 100 x 40; without it there would be five strips of 20 x 40, all lost
        assertThat(PlanOracle.faults(job, plan)).isEmpty();
        assertThat(plan.figures().cuts()).isEqualTo(1 + 4);
        assertThat(plan.figures().offcutArea()).isEqualTo(4_000);
        assertThat(plan.figures().sliverArea()).isZero();
        assertThat(plan.pieces().get(0).cutting().leaves()).contains(new Cutting.Offcut(0, 60, 100, 40));
    }

    @Test
    void lanes_are_cut_from_the_whole_piece_where_that_leaves_the_larger_offcut() {
        CutJoinJob job = job(new StockPiece(0, 100, 100, 0, true), List.of(), bars(1, 20, 60, BarTurn.ALONG), 30);
        CutPlan plan = built(job, 1).plan();

        // 80 x 100 beside the lane, 20 x 40 below its part; a cut across first would leave 100 x 40 and 80 x 60
        assertThat(plan.pieces().get(0).cutting().leaves())
                .containsExactly(
                        new Cutting.Part(0, 0, 0, 0, 20, 60, false),
                        new Cutting.Offcut(0, 60, 20, 40),
                        new Cutting.Offcut(20, 0, 80, 100));
    }

    @Test
    void a_piece_that_is_used_up_exactly_needs_a_cut_less_than_parts() {
        CutJoinJob job = job(new StockPiece(0, 40, 60, 0, true), List.of(), bars(4, 20, 30, BarTurn.ALONG), 5);
        CutAttempt attempt = built(job, 1);

        assertThat(attempt.whole()).isTrue();
        assertThat(PlanOracle.faults(job, attempt.plan())).isEmpty();
        assertThat(attempt.plan().figures().cuts()).isEqualTo(3);
    }

    @Test
    void a_piece_from_which_nothing_is_cut_is_not_in_the_plan() {
        CutJoinJob job = new CutJoinJob(
                List.of(new StockPiece(0, 40, 60, 0, true), new StockPiece(1, 40, 60, 1, true)),
                List.of(),
                bars(1, 20, 60, BarTurn.ALONG),
                List.of(),
                5,
                0,
                5);

        assertThat(built(job, 1).plan().pieces())
                .extracting(used -> used.piece().id())
                .containsExactly(0);
    }

    @Test
    void what_has_no_room_is_told_by_number_and_size() {
        JobBlock block = new JobBlock(9, 70, 30, RED, false);
        CutJoinJob job = job(new StockPiece(0, 60, 60, 0, true), List.of(block), bars(1, 20, 60, BarTurn.ALONG), 5);
        CutAttempt attempt = built(job, 1);

        assertThat(attempt.whole()).isFalse();
        assertThat(attempt.leftOut()).containsExactly(new Shortage(List.of(9), RED, 70, 30));
        assertThat(CutAttempt.shortage(job.bars().get(0))).isEqualTo(new Shortage(List.of(0), RED, 20, 60));
    }

    @Test
    void the_best_look_is_remembered() {
        CutJoinJob job = job(new StockPiece(0, 100, 100, 0, true), List.of(), bars(2, 20, 60, BarTurn.ALONG), 30);
        CutAttempt attempt =
                new CutAttempt(job, FreePlots.bare(job.stock()), AskedBars.bars(job), SearchParameters.standard());
        assertThat(attempt.hasBars()).isTrue();
        assertThat(attempt.pieces()).isEqualTo(1);
        double nothing = attempt.look();
        attempt.joinery().save();
        attempt.joinery().build(new SplittableRandom(1));
        double built = attempt.look();
        attempt.joinery().restore();

        assertThat(built).isLessThan(nothing);
        assertThat(attempt.look()).isEqualTo(nothing);
        assertThat(attempt.merit()).isEqualTo(built);
    }

    @Test
    void every_state_a_search_passes_through_can_be_cut_or_tells_what_is_missing() {
        int whole = 0;
        for (int seed = 0; seed < 25; seed++) {
            CutJoinJob job = RandomJobs.job(seed);
            SplittableRandom chance = new SplittableRandom(seed);
            CutAttempt attempt = built(job, seed);
            for (int step = 0; step < 12; step++) {
                CutPlan plan = attempt.plan();
                List<Integer> missing = attempt.leftOut().stream()
                        .flatMap(left -> left.demands().stream())
                        .toList();
                if (attempt.whole()) {
                    whole++;
                    assertThat(PlanOracle.faults(job, plan))
                            .as("job %s, step %s", seed, step)
                            .isEmpty();
                }
                assertThat(missing.isEmpty()).isEqualTo(attempt.whole());
                for (JobBlock block : job.blocks()) {
                    assertThat(plan.partsOf(block.id()).isEmpty()).isEqualTo(missing.contains(block.id()));
                }
                attempt.joinery().rework(chance);
            }
        }
        assertThat(whole).isGreaterThan(100);
    }
}
