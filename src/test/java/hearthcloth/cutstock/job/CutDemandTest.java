package hearthcloth.cutstock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is asked of a stock: a {@link CutDemand} has a number of its own, a {@link LaneKind} says which pieces suit it. */
class CutDemandTest {

    private static final FabricSets RED = FabricSets.of(3);

    private static final JobBlock BLOCK = new JobBlock(7, 10, 20, RED, true);

    private static JobBar bar(int id) {
        return new JobBar(id, 5, 40, FabricSets.of(1, 2), false, 0, 1, BarTurn.ANY, List.of());
    }

    private static CutJoinJob job(List<JobBar> bars) {
        return new CutJoinJob(List.of(), List.of(BLOCK), bars, List.of(), 0, 0, 0);
    }

    @Test
    void blocks_and_bars_are_numbered_together() {
        assertThatThrownBy(() -> job(List.of(bar(7))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("demand 7");
        assertThatThrownBy(() -> job(List.of(bar(8), bar(8))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("demand 8");
        assertThat(job(List.of(bar(8), bar(9))).bars()).hasSize(2);
    }

    @Test
    void a_demand_of_either_sort_tells_its_number_and_fabrics() {
        List<CutDemand> demands = List.of(BLOCK, bar(8));

        assertThat(demands).extracting(CutDemand::id).containsExactly(7, 8);
        assertThat(demands).extracting(CutDemand::fabrics).containsExactly(RED, FabricSets.of(1, 2));
    }

    /** Which of: straight, turned, straight on a piece with a nap, turned on one; by hand. */
    private static List<Boolean> ways(BarTurn turn) {
        return switch (turn) {
            case ANY -> List.of(true, true, true, true);
            case ALONG -> List.of(true, false, true, false);
            case ACROSS -> List.of(false, true, false, true);
            case NAP -> List.of(true, true, true, false);
            case NAP_ACROSS -> List.of(true, true, false, true);
        };
    }

    @Test
    void a_lane_is_cut_only_the_ways_its_bar_may_lie() {
        StockPiece plain = new StockPiece(0, 50, 50, 3, false);
        StockPiece napped = new StockPiece(1, 50, 50, 3, true);
        for (BarTurn turn : BarTurn.values()) {
            LaneKind kind = new LaneKind(5, turn, RED);

            assertThat(List.of(
                            kind.suits(plain, false),
                            kind.suits(plain, true),
                            kind.suits(napped, false),
                            kind.suits(napped, true)))
                    .as("%s", turn)
                    .isEqualTo(ways(turn));
        }
    }

    @Test
    void a_lane_is_cut_only_from_its_fabrics() {
        LaneKind kind = new LaneKind(5, BarTurn.ANY, RED);

        assertThat(kind.suits(new StockPiece(0, 50, 50, 2, false), false)).isFalse();
        assertThat(kind.suits(new StockPiece(0, 50, 50, 3, false), false)).isTrue();
    }
}
