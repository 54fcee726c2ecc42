package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.LaneKind;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Blocks put into corners by {@link StockCorners}, what {@link FreePlots} they leave, which pieces {@link PieceChoice} takes. */
class StockCornersTest {

    private static final FabricSets RED = FabricSets.of(0);
    private static final LaneKind LANE = new LaneKind(10, BarTurn.ANY, RED);

    private static JobBlock block(int id, long width, long height) {
        return new JobBlock(id, width, height, RED, true);
    }

    private static StockPiece piece(int id, long width, long length) {
        return new StockPiece(id, width, length, 0, false);
    }

    private static CutJoinJob job(List<StockPiece> stock, JobBlock... blocks) {
        return new CutJoinJob(stock, List.of(blocks), List.of(), List.of(), 0, 0, 0);
    }

    private static StockCorners.Placing place(List<StockPiece> stock, double variety, long seed, JobBlock... blocks) {
        return new StockCorners(
                        job(stock, blocks),
                        List.of(LANE),
                        SearchParameters.standard().costs().smallFirst())
                .place(stock, variety, new SplittableRandom(seed));
    }

    /** Says what is wrong with blocks cut from a stock; empty if nothing is. */
    private static List<String> faults(List<StockPiece> stock, FreePlots ground, JobBlock... blocks) {
        List<CutPiece> used = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            Cutting cutting = ground.cuttings().get(i);
            if (cutting.leaves().anyMatch(Cutting.Part.class::isInstance)) {
                used.add(new CutPiece(ground.pieces().get(i), cutting));
            }
        }
        return PlanOracle.faults(job(stock, blocks), CutPlan.of(used, blocks.length, 0, 0));
    }

    @Test
    void a_part_is_cut_from_the_corner_either_way_with_no_cut_too_many() {
        Cutting free = new Cutting.Offcut(5, 7, 100, 80);
        Cutting.Part part = new Cutting.Part(1, 0, 5, 7, 30, 20, false);

        Cutting upright = StockCorners.corner(free, part, true);
        assertThat(upright.cuts()).isEqualTo(2);
        assertThat(upright.leaves())
                .containsExactly(part, new Cutting.Offcut(5, 27, 30, 60), new Cutting.Offcut(35, 7, 70, 80));
        Cutting level = StockCorners.corner(free, part, false);
        assertThat(level.leaves())
                .containsExactly(part, new Cutting.Offcut(35, 7, 70, 20), new Cutting.Offcut(5, 27, 100, 60));

        Cutting.Part wide = new Cutting.Part(1, 0, 5, 7, 100, 20, false);
        Cutting.Part high = new Cutting.Part(1, 0, 5, 7, 30, 80, false);
        for (boolean lengthwise : new boolean[] {true, false}) {
            assertThat(StockCorners.corner(free, wide, lengthwise).leaves())
                    .containsExactly(wide, new Cutting.Offcut(5, 27, 100, 60));
            assertThat(StockCorners.corner(free, high, lengthwise).leaves())
                    .containsExactly(high, new Cutting.Offcut(35, 7, 70, 80));
            Cutting.Part all = new Cutting.Part(1, 0, 5, 7, 100, 80, false);
            assertThat(StockCorners.corner(free, all, lengthwise)).isEqualTo(all);
        }
    }

    @Test
    void bare_stock_is_free_wholly_and_a_block_takes_its_own_plot() {
        List<StockPiece> stock = List.of(piece(0, 40, 50), piece(1, 40, 50));
        FreePlots bare = FreePlots.bare(stock);

        assertThat(bare.plots())
                .containsExactly(
                        new FreePlots.Plot(stock.get(0), new Cutting.Offcut(0, 0, 40, 50)),
                        new FreePlots.Plot(stock.get(1), new Cutting.Offcut(0, 0, 40, 50)));

        Cutting.Offcut free = new Cutting.Offcut(0, 0, 40, 50);
        Cutting.Part part = new Cutting.Part(1, 0, 0, 0, 40, 20, false);
        FreePlots one = bare.with(1, free, StockCorners.corner(free, part, true));
        assertThat(one.plots())
                .containsExactly(
                        new FreePlots.Plot(stock.get(0), free),
                        new FreePlots.Plot(stock.get(1), new Cutting.Offcut(0, 20, 40, 30)));
        Cutting.Part second = new Cutting.Part(2, 0, 0, 20, 40, 30, false);
        FreePlots two = one.with(1, new Cutting.Offcut(0, 20, 40, 30), second);
        assertThat(two.plots()).hasSize(1);
        assertThat(two.cuttings().get(1).leaves()).containsExactly(part, second);
        assertThat(bare.plots()).hasSize(2);
    }

    @Test
    void a_block_goes_where_it_spoils_the_least_room_for_lanes() {
        // lanes 10 wide: of 100 x 100 and of 20 x 20 the block takes room for two of 20; of 25 x 25 lanes filled 2 x
        // 25, and
        // beside and below the block they still fill 2 x 5 twice
        List<StockPiece> stock = List.of(piece(0, 100, 100), piece(1, 20, 20), piece(2, 25, 25));

        FreePlots ground = place(stock, 0, 1, block(1, 20, 20)).ground();

        assertThat(ground.cuttings().get(2).leaves()).contains(new Cutting.Part(1, 0, 0, 0, 20, 20, false));
        assertThat(faults(stock, ground, block(1, 20, 20))).isEmpty();
    }

    @Test
    void of_spots_that_spoil_the_same_the_smaller_rectangle_is_taken() {
        List<StockPiece> stock = List.of(piece(0, 40, 40), piece(1, 40, 30), piece(2, 40, 50));

        FreePlots ground = place(stock, 0, 1, block(1, 20, 10)).ground();

        assertThat(ground.cuttings().get(1)).isInstanceOf(Cutting.Cut.class);
    }

    @Test
    void the_largest_block_is_placed_first_and_what_has_no_room_is_told() {
        List<StockPiece> stock = List.of(piece(0, 60, 60), piece(1, 20, 20));

        // the large one fits the first piece alone; had the small ones gone first, they could have taken it
        StockCorners.Placing placing = place(stock, 0, 1, block(1, 20, 20), block(2, 60, 50));
        assertThat(placing.left()).isEmpty();
        assertThat(faults(stock, placing.ground(), block(1, 20, 20), block(2, 60, 50)))
                .isEmpty();

        StockCorners.Placing tooHigh = place(stock, 0, 1, block(1, 20, 21), block(2, 60, 50));
        assertThat(tooHigh.left()).contains(block(1, 20, 21));
    }

    @Test
    void a_block_is_turned_only_where_it_may_be() {
        List<StockPiece> lying = List.of(piece(0, 20, 60));
        List<StockPiece> napped = List.of(new StockPiece(0, 20, 60, 0, true));
        JobBlock wide = block(1, 50, 20);
        JobBlock firm = new JobBlock(1, 50, 20, RED, false);

        assertThat(place(lying, 0, 1, wide).left()).isEmpty();
        assertThat(faults(lying, place(lying, 0, 1, wide).ground(), wide)).isEmpty();
        assertThat(place(napped, 0, 1, wide).left()).isPresent();
        assertThat(place(lying, 0, 1, firm).left()).isPresent();
        assertThat(place(List.of(new StockPiece(0, 90, 90, 1, false)), 0, 1, wide)
                        .left())
                .isPresent();
    }

    @Test
    void with_variety_other_spots_are_taken_too_and_all_can_be_cut() {
        List<StockPiece> stock = List.of(piece(0, 90, 80), piece(1, 50, 120), piece(2, 70, 70));
        JobBlock[] blocks = {block(1, 30, 40), block(2, 25, 25), block(3, 35, 20)};
        List<FreePlots> grounds = new ArrayList<>();
        for (int seed = 0; seed < 30; seed++) {
            StockCorners.Placing placing = place(stock, 0.4, seed, blocks);
            assertThat(placing.left()).isEmpty();
            assertThat(faults(stock, placing.ground(), blocks)).isEmpty();
            grounds.add(placing.ground());
            assertThat(place(stock, 0, seed, blocks)).isEqualTo(place(stock, 0, 99, blocks));
        }
        assertThat(grounds.stream().distinct().count()).isGreaterThan(5);
    }

    @Test
    void a_small_stock_is_considered_as_a_whole() {
        List<StockPiece> stock =
                IntStream.range(0, 250).mapToObj(i -> piece(i, 1, 1)).toList();

        assertThat(new PieceChoice(job(stock), List.of(LANE)).pieces(1)).isEqualTo(stock);
        List<StockPiece> more =
                IntStream.range(0, 251).mapToObj(i -> piece(i, 1, 1)).toList();
        assertThat(new PieceChoice(job(more), List.of(LANE)).pieces(1)).isEmpty();
        assertThat(new PieceChoice(job(more), List.of(LANE)).pieces(4)).isEqualTo(more);
    }

    @Test
    void of_a_large_stock_the_longest_the_ready_and_the_nearest_are_considered_in_its_order() {
        List<StockPiece> stock = new ArrayList<>();
        for (int i = 0; i < 1_000; i++) {
            // lengths 1000 .. 1999; each too narrow to be turned
            stock.add(new StockPiece(i, 15, 1_000 + (i * 7) % 1_000, i % 100 == 3 ? 1 : 0, true));
        }
        StockPiece ready = new StockPiece(2_000, 10, 30, 0, true);
        stock.add(500, ready);
        CutJoinJob job = new CutJoinJob(
                stock,
                List.of(),
                List.of(new JobBar(1, 10, 1_500, RED, false, 0, 1, BarTurn.NAP, List.of())),
                List.of(),
                0,
                0,
                0);

        List<StockPiece> chosen = new PieceChoice(job, List.of(new LaneKind(10, BarTurn.NAP, RED))).pieces(1);

        assertThat(chosen).hasSizeLessThan(140).contains(ready).isSubsetOf(stock);
        assertThat(chosen).isSortedAccordingTo((a, b) -> Integer.compare(stock.indexOf(a), stock.indexOf(b)));
        assertThat(chosen).noneMatch(piece -> piece.fabric() == 1);
        List<Long> lengths = chosen.stream().map(StockPiece::length).toList();
        assertThat(lengths).contains(1_500L, 1_501L).doesNotContain(1_499L, 1_503L);
        // 125 of one kind: the longest, less the few that are of the other fabric
        assertThat(lengths).contains(1_999L, 1_990L, 1_875L).doesNotContain(1_800L);
    }

    @Test
    void of_a_large_stock_the_pieces_that_fit_a_block_most_closely_are_considered() {
        List<StockPiece> stock = IntStream.range(0, 400)
                .mapToObj(i -> piece(i, 30 + (i * 3) % 400, 40))
                .toList();

        List<StockPiece> chosen = new PieceChoice(job(stock, block(1, 50, 35)), List.of()).pieces(1);

        // turned it would have to be 50 long: so 50 .. 65 wide
        assertThat(chosen.stream().map(StockPiece::width).sorted())
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(50, 65).mapToObj(i -> (long) i).toList());
    }
}
