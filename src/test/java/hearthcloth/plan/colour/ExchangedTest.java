package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.job.StockPiece;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Two bars 10 wide, each joined from parts of 20 and 30 that lose 2, the first from fabric 0 and the second from fabric 1;
 * and a hearth of 10 × 10.
 */
class ExchangedTest {

    private static final StockPiece HEARTH = new StockPiece(0, 10, 10, 2, false);
    private static final StockPiece ONE = new StockPiece(1, 10, 50, 0, false);
    private static final StockPiece TWO = new StockPiece(2, 10, 50, 1, false);
    private static final StockPiece SPARE = new StockPiece(3, 10, 50, 1, false);

    private static JobBar bar(int id, FabricSets fabrics, boolean oneFabric, BarTurn turn, Span... forbidden) {
        return new JobBar(id, 10, 48, fabrics, oneFabric, 3, 5, turn, List.of(forbidden));
    }

    private static JobBar bar(int id, Span... forbidden) {
        return bar(id, FabricSets.of(0, 1), false, BarTurn.NAP, forbidden);
    }

    private static Cutting parts(int demand) {
        return new Cutting.Cut(
                0,
                0,
                10,
                50,
                false,
                20,
                new Cutting.Part(demand, 0, 0, 0, 10, 20, false),
                new Cutting.Part(demand, 1, 0, 20, 10, 30, false));
    }

    private static final CutPlan PLAN = CutPlan.of(
            List.of(
                    new CutPiece(HEARTH, new Cutting.Part(0, 0, 0, 0, 10, 10, false)),
                    new CutPiece(ONE, parts(1)),
                    new CutPiece(TWO, parts(2))),
            1,
            2,
            5);

    private static Exchanged exchanged(List<NeighbourBars> neighbours, JobBar... bars) {
        CutJoinJob job = new CutJoinJob(
                List.of(HEARTH, ONE, TWO, SPARE),
                List.of(new JobBlock(0, 10, 10, FabricSets.of(2), true)),
                List.of(bars),
                neighbours,
                2,
                0,
                5);
        return new Exchanged(job, PLAN);
    }

    private static Exchanged plain() {
        return exchanged(List.of(), bar(1), bar(2));
    }

    @Test
    void it_knows_parts_pieces_and_joins_of_the_plan() {
        Exchanged state = plain();
        assertThat(state.bars()).isEqualTo(2);
        assertThat(state.parts(0)).isEqualTo(2);
        assertThat(state.trees()).isEqualTo(3);
        assertThat(state.leaf(0, 1)).isEqualTo(new Exchanged.Leaf(1, 10, 30, false));
        assertThat(state.pieceOf(1, 0)).isEqualTo(TWO);
        assertThat(state.join(0, 0)).isEqualTo(20);
        assertThat(state.join(0, 1)).isEqualTo(48);
        assertThat(state.stands()).isTrue();
        assertThat(state.plan()).isEqualTo(PLAN);
    }

    @Test
    void parts_that_change_places_keep_their_cuts_and_get_each_others_names() {
        Exchanged state = plain();
        state.swapParts(0, 0, 1, 0);

        assertThat(state.pieceOf(0, 0)).isEqualTo(TWO);
        assertThat(state.stands()).isTrue();
        CutPlan plan = state.plan();
        assertThat(plan.figures()).isEqualTo(PLAN.figures());
        assertThat(plan.partsOf(1)).extracting(placed -> placed.piece().id()).containsExactly(2, 1);
        assertThat(plan.partsOf(2)).extracting(placed -> placed.piece().id()).containsExactly(1, 2);
        assertThat(plan.partsOf(1)).extracting(placed -> placed.part().y()).containsExactly(0L, 20L);

        state.swapParts(0, 0, 1, 0);
        assertThat(state.plan()).isEqualTo(PLAN);
    }

    @Test
    void whole_bars_change_places_with_all_their_parts() {
        Exchanged state = plain();
        state.swapBars(0, 1);

        assertThat(state.plan().partsOf(1))
                .extracting(placed -> placed.piece().id())
                .containsExactly(2, 2);
        assertThat(state.plan().figures()).isEqualTo(PLAN.figures());
    }

    @Test
    void the_order_of_parts_moves_the_join_which_may_not_come_into_a_forbidden_span() {
        Exchanged state = exchanged(List.of(), bar(1, new Span(21, 30)), bar(2));
        assertThat(state.stands()).isTrue();
        state.swapParts(0, 0, 0, 1);
        assertThat(state.join(0, 0)).isEqualTo(30);
        assertThat(state.stands()).isTrue();

        Exchanged other = exchanged(List.of(), bar(1, new Span(29, 31)), bar(2));
        other.swapParts(0, 0, 0, 1);
        assertThat(other.stands()).isFalse();
    }

    @Test
    void joins_of_bars_side_by_side_keep_their_distance() {
        // 20 + 3 − 20 is 3; with the first bar's parts the other way round 30 + 3 − 20 is 13
        assertThat(exchanged(List.of(new NeighbourBars(1, 2, 3, 3)), bar(1), bar(2))
                        .stands())
                .isTrue();
        Exchanged near = exchanged(List.of(new NeighbourBars(1, 2, 3, 4)), bar(1), bar(2));
        assertThat(near.stands()).isFalse();
        near.swapParts(0, 0, 0, 1);
        assertThat(near.stands()).isTrue();
    }

    @Test
    void a_bar_is_never_given_a_fabric_it_may_not_have() {
        Exchanged state = exchanged(List.of(), bar(1, FabricSets.of(0), false, BarTurn.NAP), bar(2));
        assertThat(state.stands()).isTrue();
        state.swapParts(0, 0, 1, 0);
        assertThat(state.stands()).isFalse();
    }

    @Test
    void a_bar_that_is_to_be_of_one_fabric_stays_so() {
        JobBar one = bar(1, FabricSets.of(0, 1), true, BarTurn.NAP);
        JobBar two = bar(2, FabricSets.of(0, 1), true, BarTurn.NAP);
        Exchanged state = exchanged(List.of(), one, two);
        assertThat(state.stands()).isTrue();
        state.swapParts(0, 0, 1, 0);
        assertThat(state.stands()).isFalse();
        state.swapParts(0, 1, 1, 1);
        assertThat(state.stands()).isTrue();
    }

    @Test
    void nap_is_kept_when_a_piece_is_traded() {
        StockPiece napped = new StockPiece(3, 10, 50, 1, true);
        CutJoinJob job = new CutJoinJob(
                List.of(HEARTH, ONE, TWO, napped),
                List.of(new JobBlock(0, 10, 10, FabricSets.of(2), true)),
                List.of(bar(1, FabricSets.of(0, 1), false, BarTurn.NAP_ACROSS), bar(2)),
                List.of(),
                2,
                0,
                5);
        Exchanged state = new Exchanged(job, PLAN);
        assertThat(state.stands()).isTrue();
        // a bar that lies across the cloth must lie across a napped piece, and these lie along
        state.cutFrom(1, napped);
        assertThat(state.stands()).isFalse();
    }

    @Test
    void a_piece_that_is_cut_too_trades_and_a_hearths_piece_stays() {
        Exchanged state = plain();
        state.cutFrom(1, TWO);
        assertThat(state.piece(1)).isEqualTo(TWO);
        assertThat(state.piece(2)).isEqualTo(ONE);
        assertThat(state.stands()).isTrue();
        state.cutFrom(1, SPARE);
        assertThat(state.plan().pieces()).extracting(CutPiece::piece).containsExactly(HEARTH, SPARE, ONE);

        Exchanged hearth = plain();
        hearth.cutFrom(0, SPARE);
        assertThat(hearth.stands()).isFalse();
    }
}
