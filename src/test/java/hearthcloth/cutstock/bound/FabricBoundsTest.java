package hearthcloth.cutstock.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutDemand;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** {@link FabricBounds}, {@link PieceYield} and {@link TouchedArea}, beside examples by hand and every way to cut. */
class FabricBoundsTest {

    private static JobBlock block(int id, long width, long height, int... fabrics) {
        return new JobBlock(id, width, height, FabricSets.of(fabrics), false);
    }

    private static JobBar bar(long width, long leastPart, BarTurn turn) {
        return new JobBar(9, width, 99, FabricSets.of(0), false, 9, leastPart, turn, List.of());
    }

    private static StockPiece piece(int id, long width, long length, int fabric) {
        return new StockPiece(id, width, length, fabric, false);
    }

    @Test
    void demands_are_one_family_where_their_fabrics_hang_together_even_through_a_third() {
        List<JobBlock> blocks = List.of(
                block(1, 1, 1, 0), block(2, 1, 1, 2), block(3, 1, 1, 5), block(4, 1, 1, 1, 2), block(5, 1, 1, 0, 1));
        CutJoinJob job = new CutJoinJob(List.of(), blocks, List.of(), List.of(), 0, 0, 0);
        List<FabricBounds.Need> needs =
                blocks.stream().map(one -> new FabricBounds.Need(one, one.id())).toList();

        List<FabricBounds> families = FabricBounds.of(job, needs);

        assertThat(families)
                .extracting(family ->
                        family.demands().stream().map(CutDemand::id).sorted().toList())
                .containsExactly(List.of(1, 2, 4, 5), List.of(3));
        assertThat(families).extracting(FabricBounds::used).containsExactly(12.0, 3.0);
    }

    @Test
    void a_need_of_no_fabric_at_all_ends_the_sorting_too() {
        CutJoinJob job = new CutJoinJob(List.of(), List.of(), List.of(), List.of(), 0, 0, 0);

        assertThat(FabricBounds.of(job, List.of(new FabricBounds.Need(block(1, 1, 1), 1))))
                .isEmpty();
    }

    @Test
    void only_pieces_that_can_give_something_are_counted() {
        List<JobBlock> blocks = List.of(block(1, 6, 6, 0));
        List<StockPiece> stock = List.of(piece(0, 10, 10, 0), piece(1, 5, 90, 0), piece(2, 10, 10, 1));
        CutJoinJob job = new CutJoinJob(stock, blocks, List.of(), List.of(), 0, 0, 6);

        FabricBounds only = FabricBounds.of(job, List.of(new FabricBounds.Need(blocks.get(0), 36)))
                .get(0);

        // on a line of 10 one block of 6: at most 60 of 100; 10 - 6 + 1 < 6, so of each 6 used 4 are lost
        assertThat(only.yields()).containsExactly(new PieceYield(100, 60, 4.0 / 6));
        assertThat(only.touched()).isCloseTo(100, within(0.01));
        assertThat(only.lost()).isCloseTo(24, within(1e-9));
    }

    @Test
    void fabric_is_taken_where_it_is_cheapest_first() {
        // two pieces: the first can give 60 and loses none, the second gives 90 of 100 and loses a tenth of what it
        // gives
        FabricBounds family =
                new FabricBounds(List.of(), 90, List.of(new PieceYield(100, 90, 0.1), new PieceYield(120, 60, 0)));

        assertThat(family.lost()).isCloseTo(30 * 0.1, within(1e-9));
        // 90 from the one of 100, which is cheaper by area: 100 is touched
        assertThat(family.touched()).isCloseTo(100, within(0.02));
        FabricBounds more = new FabricBounds(List.of(), 120, family.yields());
        // 90 of the first cost 100, 30 of the second at 2 each: 160 in whole pieces is 220
        assertThat(more.touched()).isCloseTo(220, within(0.02));
    }

    @Test
    void a_line_across_a_piece_is_filled_by_whole_blocks_at_most() {
        List<CutDemand> demands = List.of(block(1, 3, 4, 0));

        // across: three of 3 are 9 of 10, so 9 x 10 at most; along: two of 4 are 8 of 10, so 10 x 8
        PieceYield yield = PieceYield.of(piece(0, 10, 10, 0), demands, 9);

        assertThat(yield).isEqualTo(new PieceYield(100, 80, 2.0 / 8));
        assertThat(PieceYield.of(piece(0, 10, 10, 0), demands, 8).lossShare()).isEqualTo(2.0 / 8);
        assertThat(PieceYield.of(piece(0, 10, 10, 0), demands, 7).lossShare()).isZero();
    }

    @Test
    void a_bar_fills_a_line_along_it_wholly_and_a_line_across_it_by_its_width() {
        List<CutDemand> demands = List.of(bar(3, 5, BarTurn.ALONG));

        assertThat(PieceYield.of(piece(0, 10, 20, 0), demands, 9)).isEqualTo(new PieceYield(200, 9 * 20, 1.0 / 9));
        assertThat(PieceYield.of(piece(0, 10, 4, 0), demands, 9).capacity()).isZero();
        assertThat(PieceYield.of(piece(0, 10, 20, 1), demands, 9).capacity()).isZero();
        assertThat(PieceYield.of(piece(0, 10, 20, 0), List.of(bar(3, 5, BarTurn.ACROSS)), 0)
                        .capacity())
                .isEqualTo(6 * 3 * 10);
    }

    @Test
    void with_too_many_sums_the_whole_line_counts() {
        List<CutDemand> demands = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            demands.add(block(i, 1_000 + 2L * i, 1, 0));
        }

        PieceYield yield = PieceYield.of(piece(0, 9_999, 1, 0), demands, 0);

        // every sum is even; to see so would take more sums than are looked at
        assertThat(yield.capacity()).isEqualTo(9_999);
    }

    /** A rectangle that may be cut out whole. */
    private record Form(long width, long height) {}

    /** Everything one piece's lines may be cut into, tried: at integer places, which are enough for integer forms. */
    private static final class EveryCutting {
        private final List<Form> forms;
        private final long leastOffcut;
        private final double perCovered;
        private final double perLost;
        private final Map<Form, Double> known = new HashMap<>();

        EveryCutting(List<Form> forms, long leastOffcut, double perCovered, double perLost) {
            this.forms = forms;
            this.leastOffcut = leastOffcut;
            this.perCovered = perCovered;
            this.perLost = perLost;
        }

        /** The greatest value of covered and lost area. */
        double most(long width, long height) {
            Form key = new Form(width, height);
            Double before = known.get(key);
            if (before != null) {
                return before;
            }
            boolean sliver = Math.min(width, height) < leastOffcut;
            double most = sliver ? perLost * width * height : 0;
            if (forms.contains(key)) {
                most = Math.max(most, perCovered * width * height);
            }
            for (long at = 1; at < width; at++) {
                most = Math.max(most, most(at, height) + most(width - at, height));
            }
            for (long at = 1; at < height; at++) {
                most = Math.max(most, most(width, at) + most(width, height - at));
            }
            known.put(key, most);
            return most;
        }
    }

    @Test
    void no_cutting_of_small_pieces_covers_more_or_loses_less() {
        SplittableRandom chance = new SplittableRandom(11);
        int tight = 0;
        int losing = 0;
        for (int i = 0; i < 150; i++) {
            StockPiece piece = new StockPiece(0, 2 + chance.nextInt(9), 2 + chance.nextInt(9), 0, chance.nextBoolean());
            List<CutDemand> demands = new ArrayList<>();
            List<Form> forms = new ArrayList<>();
            for (int k = 1 + chance.nextInt(2); k > 0; k--) {
                JobBlock block = new JobBlock(
                        k, 2 + chance.nextInt(4), 2 + chance.nextInt(4), FabricSets.of(0), chance.nextBoolean());
                demands.add(block);
                forms.add(new Form(block.width(), block.height()));
                if (block.turnable() && !piece.lengthwiseOnly()) {
                    forms.add(new Form(block.height(), block.width()));
                }
            }
            if (chance.nextInt(3) == 0) {
                JobBar bar = bar(2 + chance.nextInt(3), 2 + chance.nextInt(4), BarTurn.NAP);
                demands.add(bar);
                for (long length = bar.leastPart(); length <= 11; length++) {
                    forms.add(new Form(bar.width(), length));
                    if (!piece.lengthwiseOnly()) {
                        forms.add(new Form(length, bar.width()));
                    }
                }
            }
            long leastOffcut = chance.nextInt(9);

            PieceYield yield = PieceYield.of(piece, demands, leastOffcut);

            double covered = new EveryCutting(forms, leastOffcut, 1, 0).most(piece.width(), piece.length());
            assertThat(yield.capacity())
                    .as("case %s: %s, %s", i, piece, demands)
                    .isGreaterThanOrEqualTo(covered);
            tight += yield.capacity() == covered && covered > 0 ? 1 : 0;
            // lost - share x covered is never below 0
            double worst =
                    new EveryCutting(forms, leastOffcut, yield.lossShare(), -1).most(piece.width(), piece.length());
            assertThat(worst).as("case %s: %s, %s", i, piece, demands).isLessThanOrEqualTo(1e-9);
            losing += yield.lossShare() > 0 ? 1 : 0;
        }
        assertThat(tight).isGreaterThan(15);
        assertThat(losing).isGreaterThan(15);
    }

    @Test
    void the_least_sum_of_whole_pieces_is_what_trying_every_subset_finds() {
        SplittableRandom chance = new SplittableRandom(12);
        for (int i = 0; i < 100; i++) {
            int count = 1 + chance.nextInt(9);
            double[] areas = new double[count];
            for (int k = 0; k < count; k++) {
                areas[k] = 1 + chance.nextInt(90);
            }
            double whole = DoubleStream.of(areas).sum();
            double used = chance.nextInt((int) whole) + 0.5;
            double truth = whole;
            for (int set = 1; set < 1 << count; set++) {
                double sum = 0;
                for (int k = 0; k < count; k++) {
                    sum += (set >> k & 1) == 1 ? areas[k] : 0;
                }
                truth = sum >= used ? Math.min(truth, sum) : truth;
            }

            double least = TouchedArea.least(areas, used);

            assertThat(least).as("case %s", i).isBetween(used, truth);
            assertThat(least).as("case %s", i).isCloseTo(truth, within((count + 1) * whole / 65_536));
        }
    }

    @Test
    void where_sums_say_nothing_the_used_area_itself_is_the_bound() {
        assertThat(TouchedArea.least(new double[] {4, 5}, 0)).isZero();
        assertThat(TouchedArea.least(new double[] {4, 5}, 9)).isEqualTo(9);
        assertThat(TouchedArea.least(new double[] {4, 5}, 12)).isEqualTo(12);
        double[] many = new double[401];
        Arrays.fill(many, 10);
        assertThat(TouchedArea.least(many, 15)).isEqualTo(15);
        assertThat(TouchedArea.least(Arrays.copyOf(many, 400), 15)).isCloseTo(20, within(0.3));
    }
}
