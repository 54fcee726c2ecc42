package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CutAndJoinTest {

    private static final int CASES = 400;

    @Test
    void every_plan_on_the_way_obeys_every_rule() {
        int found = 0;
        for (int seed = 0; seed < CASES; seed++) {
            CutJoinJob job = RandomJobs.job(seed);
            List<CutPlan> plans = new ArrayList<>();
            CutOutcome outcome = new CutAndJoin(job).search(Budget.steps(300), seed, plans::add);
            for (CutPlan plan : plans) {
                assertThat(PlanOracle.faults(job, plan)).as("job %d", seed).isEmpty();
            }
            assertThat(plans).extracting(CutPlan::figures).isSortedAccordingTo(Comparator.reverseOrder());
            if (outcome instanceof CutOutcome.Found answer) {
                found++;
                assertThat(answer.bounds().joins())
                        .as("bound of job %d", seed)
                        .isLessThanOrEqualTo(answer.plan().figures().joins());
                assertThat(answer.bounds().usedArea())
                        .isLessThanOrEqualTo(answer.plan().figures().usedArea() * (1 + 1e-12));
            } else {
                assertThat(plans).isEmpty();
            }
        }
        assertThat(found).isGreaterThan(CASES / 4);
    }

    @Test
    void the_same_seed_and_steps_give_the_same_plans() {
        CutJoinJob job = BenchJobs.cutAndJoin(BenchJobs.lines("/bench/planted02.txt"));
        List<CutPlan> once = new ArrayList<>();
        List<CutPlan> again = new ArrayList<>();

        new CutAndJoin(job).search(Budget.steps(2_000), 7, once::add);
        new CutAndJoin(job).search(Budget.steps(2_000), 7, again::add);

        assertThat(once).isNotEmpty().isEqualTo(again);
    }

    @Test
    void what_is_short_is_said_with_a_proof() {
        StockPiece piece = new StockPiece(1, 60, 500, 0, true);
        JobBar bar = bar(7, 600);

        CutOutcome outcome =
                new CutAndJoin(job(List.of(piece), List.of(), List.of(bar))).search(Budget.steps(100), 1, better -> {});

        assertThat(outcome)
                .isEqualTo(new CutOutcome.Impossible(List.of(new Shortage(List.of(7), FabricSets.of(0), 60, 100))));
    }

    @Test
    void a_block_that_no_piece_holds_is_impossible() {
        StockPiece piece = new StockPiece(1, 60, 500, 0, true);
        JobBlock block = new JobBlock(3, 100, 60, FabricSets.of(0), true);

        CutOutcome outcome = new CutAndJoin(job(List.of(piece), List.of(block), List.of()))
                .search(Budget.steps(100), 1, better -> {});

        assertThat(outcome).isInstanceOf(CutOutcome.Impossible.class);
    }

    @Test
    void what_only_seems_short_is_not_called_impossible() {
        // 2 x 500 covers 2 x 450 by length, but least parts of 200 leave no way to make 3 bars of 330 from 500s
        List<StockPiece> stock = List.of(new StockPiece(1, 60, 500, 0, true), new StockPiece(2, 60, 500, 0, true));
        List<JobBar> bars = List.of(bar(1, 330), bar(2, 330), bar(3, 330));

        CutOutcome outcome = new CutAndJoin(job(stock, List.of(), bars)).search(Budget.steps(100), 1, better -> {});

        assertThat(outcome).isInstanceOf(CutOutcome.NotFound.class);
    }

    @Test
    void a_join_is_moved_out_of_a_forbidden_stretch_when_a_strip_has_length_to_spare() {
        // 500 + 500 - 10 would join at 500; the stretch forbids 450 to 550, the third strip lets the join move
        List<StockPiece> stock = List.of(
                new StockPiece(1, 60, 500, 0, true),
                new StockPiece(2, 60, 500, 0, true),
                new StockPiece(3, 60, 600, 0, true));
        JobBar bar =
                new JobBar(1, 60, 990, FabricSets.of(0), false, 1, 200, BarTurn.ALONG, List.of(new Span(450, 550)));
        CutJoinJob job = job(stock, List.of(), List.of(bar));

        CutOutcome outcome = new CutAndJoin(job).search(Budget.steps(200), 1, better -> {});

        assertThat(outcome).isInstanceOfSatisfying(CutOutcome.Found.class, found -> {
            assertThat(PlanOracle.faults(job, found.plan())).isEmpty();
            assertThat(found.plan().figures().joins()).isEqualTo(1);
        });
    }

    @Test
    void joins_of_neighbours_keep_their_clearance() {
        List<StockPiece> stock = IntStream.range(0, 6)
                .mapToObj(i -> new StockPiece(i, 60, 400 + 30L * i, 0, true))
                .toList();
        List<JobBar> bars = List.of(bar(1, 800), bar(2, 800), bar(3, 800));
        List<NeighbourBars> pairs = List.of(new NeighbourBars(1, 2, 0, 25), new NeighbourBars(2, 3, 0, 25));
        CutJoinJob job = new CutJoinJob(stock, List.of(), bars, pairs, 10, 0, 50);

        CutOutcome outcome = new CutAndJoin(job).search(Budget.steps(500), 1, better -> {});

        assertThat(outcome).isInstanceOfSatisfying(CutOutcome.Found.class, found -> {
            assertThat(PlanOracle.faults(job, found.plan())).isEmpty();
            assertThat(found.plan().figures().joins()).isEqualTo(3);
        });
    }

    @Test
    void a_scrap_that_has_the_width_already_is_not_ripped_from_a_wider_one() {
        List<StockPiece> stock = List.of(new StockPiece(1, 300, 600, 0, false), new StockPiece(2, 60, 500, 0, false));

        CutOutcome outcome =
                new CutAndJoin(job(stock, List.of(), List.of(bar(1, 500)))).search(Budget.steps(200), 1, better -> {});

        assertThat(outcome).isInstanceOfSatisfying(CutOutcome.Found.class, found -> {
            assertThat(found.plan().pieces())
                    .extracting(used -> used.piece().id())
                    .containsExactly(2);
            assertThat(found.plan().figures().cuts()).isZero();
        });
    }

    @Test
    void lanes_lie_both_ways_on_one_piece_where_only_that_works() {
        // 100 x 300 along, then 100 x 200 across in what is left of 300 x 300
        List<StockPiece> stock = List.of(new StockPiece(1, 300, 300, 0, false));
        List<JobBar> bars = List.of(
                new JobBar(1, 100, 300, FabricSets.of(0), false, 0, 50, BarTurn.ALONG, List.of()),
                new JobBar(2, 100, 200, FabricSets.of(0), false, 0, 50, BarTurn.ACROSS, List.of()),
                new JobBar(3, 100, 200, FabricSets.of(0), false, 0, 50, BarTurn.ACROSS, List.of()),
                new JobBar(4, 100, 200, FabricSets.of(0), false, 0, 50, BarTurn.ACROSS, List.of()));
        CutJoinJob job = job(stock, List.of(), bars);

        CutOutcome outcome = new CutAndJoin(job).search(Budget.steps(500), 1, better -> {});

        assertThat(outcome).isInstanceOfSatisfying(CutOutcome.Found.class, found -> {
            assertThat(PlanOracle.faults(job, found.plan())).isEmpty();
            assertThat(found.plan().figures().touchedArea())
                    .isEqualTo(found.plan().figures().usedArea());
        });
    }

    @Test
    void what_wide_bars_leave_of_their_lanes_gives_narrow_ones() {
        // two lanes of 100 side by side, 200 and 250 of 300 used; 100 x 100 and 50 x 100 are left, of which none is
        // lost
        List<StockPiece> stock = List.of(new StockPiece(1, 200, 300, 0, false));
        List<JobBar> bars = List.of(
                whole(1, 100, 200, BarTurn.ALONG),
                whole(2, 100, 250, BarTurn.ALONG),
                whole(3, 50, 100, BarTurn.ANY),
                whole(4, 50, 100, BarTurn.ANY),
                whole(5, 50, 100, BarTurn.ANY));

        assertThat(usedUp(job(stock, List.of(), bars))).isTrue();
    }

    @Test
    void a_block_lies_behind_lanes_where_only_that_works() {
        // round and round: a column, a row beside it, a column below that, a row beside that, then the block
        List<StockPiece> stock = List.of(new StockPiece(1, 300, 300, 0, false));
        JobBlock block = new JobBlock(9, 200, 200, FabricSets.of(0), false);
        List<JobBar> bars = List.of(
                whole(1, 50, 300, BarTurn.ALONG),
                whole(2, 50, 250, BarTurn.ACROSS),
                whole(3, 50, 250, BarTurn.ALONG),
                whole(4, 50, 200, BarTurn.ACROSS));

        assertThat(usedUp(job(stock, List.of(block), bars))).isTrue();
    }

    private static JobBar whole(int id, long width, long length, BarTurn turn) {
        return new JobBar(id, width, length, FabricSets.of(0), false, 0, length, turn, List.of());
    }

    /** Whether a plan is found that is right and leaves nothing. */
    private static boolean usedUp(CutJoinJob job) {
        return new CutAndJoin(job).search(Budget.steps(2_000), 1, better -> {}) instanceof CutOutcome.Found found
                && PlanOracle.faults(job, found.plan()).isEmpty()
                && found.plan().figures().touchedArea()
                        == found.plan().figures().usedArea();
    }

    private static JobBar bar(int id, long length) {
        return new JobBar(id, 60, length, FabricSets.of(0), false, 4, 200, BarTurn.ANY, List.of());
    }

    private static CutJoinJob job(List<StockPiece> stock, List<JobBlock> blocks, List<JobBar> bars) {
        return new CutJoinJob(stock, blocks, bars, List.of(), 10, 0, 50);
    }
}
