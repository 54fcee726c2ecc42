package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.LaneKind;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.join.WantedBar;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link AskedBars}: a job's demands as {@link WantedBar}s of numbered kinds. */
class AskedBarsTest {

    private static final FabricSets RED = FabricSets.of(1);
    private static final FabricSets BOTH = FabricSets.of(1, 2);

    private static JobBar bar(int id, long width, FabricSets fabrics, boolean oneFabric) {
        return new JobBar(id, width, 100, fabrics, oneFabric, 3, 30, BarTurn.NAP, List.of());
    }

    private static CutJoinJob job(List<JobBlock> blocks, List<JobBar> bars) {
        return new CutJoinJob(List.of(), blocks, bars, List.of(), 10, 0, 0);
    }

    @Test
    void bars_that_need_the_same_lanes_share_a_kind() {
        AskedBars asked = AskedBars.bars(
                job(List.of(), List.of(bar(7, 20, BOTH, false), bar(8, 30, BOTH, false), bar(9, 20, BOTH, false))));

        assertThat(asked.kinds())
                .containsExactly(new LaneKind(20, BarTurn.NAP, BOTH), new LaneKind(30, BarTurn.NAP, BOTH));
        assertThat(asked.wanted())
                .containsExactly(
                        new WantedBar(100, List.of(0), 3, 30),
                        new WantedBar(100, List.of(1), 3, 30),
                        new WantedBar(100, List.of(0), 3, 30));
    }

    @Test
    void a_bar_of_one_fabric_has_a_kind_for_each() {
        AskedBars asked = AskedBars.bars(job(List.of(), List.of(bar(7, 20, RED, false), bar(8, 20, BOTH, true))));

        assertThat(asked.kinds())
                .containsExactly(new LaneKind(20, BarTurn.NAP, RED), new LaneKind(20, BarTurn.NAP, FabricSets.of(2)));
        assertThat(asked.wanted().get(1).kinds()).containsExactly(0, 1);
    }

    @Test
    void blocks_are_asked_only_among_all_and_then_like_bars_that_are_never_joined() {
        CutJoinJob job = job(
                List.of(
                        new JobBlock(1, 40, 60, RED, true),
                        new JobBlock(2, 40, 60, RED, false),
                        new JobBlock(3, 40, 40, RED, false)),
                List.of(bar(7, 20, RED, false)));

        assertThat(AskedBars.bars(job).demands()).hasSize(1);
        AskedBars all = AskedBars.all(job);
        assertThat(all.demands()).hasSize(4);
        assertThat(all.kinds())
                .containsExactly(
                        new LaneKind(20, BarTurn.NAP, RED),
                        new LaneKind(40, BarTurn.NAP, RED),
                        new LaneKind(40, BarTurn.ALONG, RED),
                        new LaneKind(40, BarTurn.ANY, RED));
        assertThat(all.wanted().get(1)).isEqualTo(new WantedBar(60, List.of(1), 0, 1));
        assertThat(all.wanted().get(3)).isEqualTo(new WantedBar(40, List.of(3), 0, 1));
    }

    @Test
    void rules_concern_the_bars_they_name() {
        JobBar ruled = new JobBar(5, 20, 100, RED, false, 3, 30, BarTurn.ANY, List.of(new Span(10, 20)));
        CutJoinJob job = new CutJoinJob(
                List.of(),
                List.of(),
                List.of(bar(9, 20, RED, false), ruled, bar(7, 20, RED, false), bar(3, 20, RED, false)),
                List.of(new NeighbourBars(3, 7, 0, 5)),
                10,
                0,
                0);

        AskedBars asked = AskedBars.bars(job);

        assertThat(asked.rules().concerns(0)).isFalse();
        assertThat(asked.rules().concerns(1)).isTrue();
        assertThat(asked.rules().concerns(2)).isTrue();
        assertThat(asked.rules().concerns(3)).isTrue();
    }

    @Test
    void there_are_slots_for_as_many_parts_as_the_bars_can_have() {
        JobBar many = new JobBar(1, 20, 100, RED, false, 99, 30, BarTurn.ANY, List.of());
        JobBar few = new JobBar(2, 20, 100, RED, false, 1, 30, BarTurn.ANY, List.of());
        JobBar endless = new JobBar(3, 20, 1_000_000, RED, false, Integer.MAX_VALUE - 1, 5, BarTurn.ANY, List.of());

        // 1 + 100 / (30 - 10) parts, of which one join allows two; no bar has more than 64
        assertThat(AskedBars.bars(job(List.of(), List.of(many))).slots(10)).isEqualTo(2 * (1 + 6));
        assertThat(AskedBars.bars(job(List.of(), List.of(many, few))).slots(10)).isEqualTo(2 * (1 + 6 + 2));
        assertThat(AskedBars.bars(job(List.of(), List.of(endless))).slots(10)).isEqualTo(2 * (1 + 64));
    }
}
