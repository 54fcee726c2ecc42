package hearthcloth.benchmarks.cpsat;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.benchmarks.cpsat.ExactJoins.Solved;
import hearthcloth.benchmarks.sets.Formats;
import hearthcloth.benchmarks.sets.NumberFile;
import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.search.Budget;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExactJoinsTest {

    private static CutJoinJob job(StockPiece piece, long length) {
        JobBar bar = new JobBar(1, 40, length, FabricSets.of(0), false, 6, 30, BarTurn.ANY, List.of());
        return new CutJoinJob(
                List.of(piece),
                List.of(new JobBlock(0, 50, 50, FabricSets.of(0), true)),
                List.of(bar),
                List.of(),
                10,
                0,
                30);
    }

    @Test
    void the_ways_of_cutting_a_piece_into_lanes_are_those_found_by_hand() {
        StockPiece piece = new StockPiece(0, 90, 100, 0, false);

        List<List<Lane>> ways = new LanePatterns(job(piece, 200), piece).whole();

        Lane along = new Lane(40, 100, false);
        Lane across = new Lane(40, 90, true);
        Lane shortAlong = new Lane(40, 60, false);
        Lane shortAcross = new Lane(40, 50, true);
        assertThat(ways)
                .containsExactlyInAnyOrder(
                        List.of(along, along),
                        List.of(across, across),
                        List.of(along, shortAcross, shortAcross),
                        List.of(along, shortAlong, shortAcross),
                        List.of(shortAlong, shortAlong, across),
                        List.of(shortAlong, across, shortAcross));
    }

    @Test
    void a_hearth_takes_a_corner_and_leaves_two_rectangles() {
        StockPiece piece = new StockPiece(0, 90, 100, 0, false);
        CutJoinJob job = job(piece, 140);

        List<List<Lane>> beside =
                new LanePatterns(job, piece).beside(job.blocks().get(0));

        // 50 x 50 out of 90 x 100: 40 x 100 and 50 x 50, or 40 x 50 and 90 x 50
        assertThat(beside)
                .contains(List.of(new Lane(40, 100, false), new Lane(40, 50, true)))
                .contains(List.of(new Lane(40, 50, false), new Lane(40, 90, true)));
        Solved solved = ExactJoins.solve(job, 5, 1, 1);
        // 100 + 50 - 10 is the bar's 140
        assertThat(solved.joins()).hasValue(1);
        assertThat(solved.bound()).isEqualTo(1);
        assertThat(ExactJoins.solve(job(piece, 141), 5, 1, 1).impossible()).isTrue();
    }

    @Test
    void both_solvers_agree_where_the_answer_is_certain() {
        CutJoinJob job = Formats.cutAndJoin(NumberFile.of("planted", """
                40 10 40
                6
                80 200 0
                40 200 0
                120 180 1
                40 180 1
                30 150 0
                80 80 2
                6
                390 40 0
                200 40 0
                350 40 1
                180 40 1
                170 40 1
                80 80 2
                """));

        Solved exact = ExactJoins.solve(job, 10, 1, 1);
        CutOutcome ours = new CutAndJoin(job).search(Budget.steps(2_000), 1, better -> {});

        // 390 = 2 x 200 - 10 and 350 = 2 x 180 - 10 need two lanes each, the others one
        assertThat(exact.joins()).hasValue(2);
        assertThat(exact.bound()).isEqualTo(2);
        assertThat(ours)
                .isInstanceOfSatisfying(
                        CutOutcome.Found.class,
                        found -> assertThat(found.plan().figures().joins()).isEqualTo(2));
    }
}
