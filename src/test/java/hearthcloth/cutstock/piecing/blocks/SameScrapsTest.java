package hearthcloth.cutstock.piecing.blocks;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.piecing.parameter.BlockParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Blocks beside each other: {@link SameScraps}, {@link Blocks} by the thousand, and {@link CutScraps}. */
class SameScrapsTest {

    private static final int FEW = BlockParameters.standard().same();

    private static final int SEAM = 2;
    private static final Stock.Rules PLAIN = new Stock.Rules(SEAM, 3, 0, 0);
    private static final Goal WIDE = new Goal(1_000, 1_000, 1_000_000, 1_000_000);

    private static Stock stock(Stock.Rules rules, int[][] sizes, boolean turnable) {
        int count = sizes.length;
        int[] widths = new int[count];
        int[] heights = new int[count];
        boolean[] may = new boolean[count];
        for (int i = 0; i < count; i++) {
            widths[i] = sizes[i][0];
            heights[i] = sizes[i][1];
            may[i] = turnable;
        }
        return Stock.of(widths, heights, may, rules);
    }

    private static int single(BlockDraft draft, Stock stock, int scrap) {
        draft.patch(scrap, stock, stock.width(scrap), stock.height(scrap));
        return draft.make();
    }

    @Test
    void a_block_is_surpassed_by_one_of_the_same_scraps_that_is_as_large_and_loses_no_more() {
        SplittableRandom chance = new SplittableRandom(20);
        for (boolean exact : new boolean[] {false, true}) {
            Blocks blocks = new Blocks();
            BlockDraft draft = new BlockDraft(blocks, WIDE, PLAIN);
            Stock stock = stock(PLAIN, new int[][] {{30, 30}}, false);
            SameScraps same = new SameScraps(blocks, exact, FEW);
            List<long[]> filed = new ArrayList<>();
            for (int i = 0; i < 3_000; i++) {
                // sets of which each comes up about a dozen times, so that none is cut short for being too many
                draft.patch(0, stock, 3 + chance.nextInt(9), 3 + chance.nextInt(9));
                draft.set = 1L + chance.nextInt(300);
                draft.lost = chance.nextInt(30);
                long[] now = {draft.set, draft.width, draft.height, draft.lost};
                boolean surpassed = filed.stream()
                        .anyMatch(old -> old[0] == now[0]
                                && old[3] <= now[3]
                                && (exact
                                        ? old[1] == now[1] && old[2] == now[2]
                                        : old[1] >= now[1] && old[2] >= now[2]));

                if (!exact) {
                    assertThat(same.surpassed(draft)).as("block %s", i).isEqualTo(surpassed);
                }
                if (exact && surpassed) {
                    assertThat(same.surpassed(draft)).as("block %s", i).isTrue();
                }
                if (!surpassed) {
                    same.file(draft.make());
                    filed.add(now);
                }
            }
            assertThat(filed.size()).isGreaterThan(500);
        }
    }

    @Test
    void of_very_many_blocks_of_the_same_scraps_no_more_are_taken_unless_everything_is() {
        for (boolean exact : new boolean[] {false, true}) {
            Blocks blocks = new Blocks();
            BlockDraft draft = new BlockDraft(blocks, WIDE, PLAIN);
            Stock stock = stock(PLAIN, new int[][] {{300, 300}}, false);
            SameScraps same = new SameScraps(blocks, exact, FEW);
            int taken = 0;
            // ever wider and ever lower: none surpasses another
            for (int i = 0; i < 60; i++) {
                draft.patch(0, stock, 3 + i, 100 - i);
                draft.lost = 0;
                if (!same.surpassed(draft)) {
                    taken++;
                    same.file(draft.make());
                }
            }
            assertThat(taken).isEqualTo(exact ? 60 : 25);
        }
    }

    @Test
    void blocks_are_still_known_when_there_are_thousands() {
        Blocks blocks = new Blocks();
        BlockDraft draft = new BlockDraft(blocks, WIDE, PLAIN);
        Stock stock = stock(PLAIN, new int[][] {{30, 30}}, false);
        SameScraps same = new SameScraps(blocks, false, FEW);
        for (int i = 1; i <= 9_000; i++) {
            draft.patch(0, stock, 20, 20);
            draft.set = i;
            assertThat(same.surpassed(draft)).isFalse();
            same.file(draft.make());
        }
        for (int i = 1; i <= 9_000; i++) {
            draft.patch(0, stock, 20, 20);
            draft.set = i;
            assertThat(same.surpassed(draft)).isTrue();
        }
    }

    private static final Stock.Rules BACK = new Stock.Rules(SEAM, 3, 5, 8);

    @Test
    void a_scrap_is_cut_to_a_blocks_edge_where_its_offcut_goes_back() {
        Stock stock = stock(BACK, new int[][] {{20, 12}, {30, 25}, {16, 40}}, false);
        Blocks blocks = new Blocks();
        Goal goal = new Goal(40, 40, 1_000, 1_000);
        BlockDraft draft = new BlockDraft(blocks, goal, BACK);
        CutScraps cuts = new CutScraps(stock, goal, blocks, draft, new SameScraps(blocks, false, FEW));
        int block = single(draft, stock, 0);

        // beside the block, 12 high: of the second scrap 20 x 12, as much as the goal has room for
        assertThat(cuts.fits(block, Blocks.HEIGHT, 1, Blocks.HEIGHT)).isTrue();
        assertThat(cuts.area()).isEqualTo(12 * (20 + 20));
        // of 32 x 27 a patch of 22 x 14: 10 x 27 and 22 x 13 go back
        assertThat(cuts.lost()).isZero();
        int cut = cuts.block();
        assertThat(blocks.width[cut]).isEqualTo(20);
        assertThat(blocks.height[cut]).isEqualTo(12);
        assertThat(blocks.cuts[cut]).isEqualTo((short) 1);
        assertThat(cuts.side()).isEqualTo(Blocks.HEIGHT);
        assertThat(cuts.fits(block, Blocks.HEIGHT, 1, Blocks.HEIGHT)).isTrue();
        assertThat(cuts.block()).isEqualTo(cut);
        // 16 + 4 is less than an edge of 20 and an offcut of 5; napped scraps do not turn
        assertThat(cuts.fits(block, Blocks.WIDTH, 2, Blocks.WIDTH)).isFalse();
        assertThat(cuts.fits(block, Blocks.HEIGHT, 1, Blocks.WIDTH)).isFalse();
    }

    @Test
    void a_cut_scrap_that_may_be_turned_tells_on_which_side_its_cut_edge_is() {
        Stock stock = stock(BACK, new int[][] {{20, 12}, {30, 25}}, true);
        Blocks blocks = new Blocks();
        Goal goal = new Goal(40, 40, 1_000, 1_000);
        BlockDraft draft = new BlockDraft(blocks, goal, BACK);
        CutScraps cuts = new CutScraps(stock, goal, blocks, draft, new SameScraps(blocks, false, FEW));
        int block = single(draft, stock, 0);

        for (int side = 0; side < 2; side++) {
            for (int scrapSide = 0; scrapSide < 2; scrapSide++) {
                assertThat(cuts.fits(block, side, 1, scrapSide)).isTrue();
                int cut = cuts.block();
                assertThat(blocks.side(cut, cuts.side())).isEqualTo(blocks.side(block, side));
                assertThat(blocks.width[cut]).isGreaterThanOrEqualTo(blocks.height[cut]);
                assertThat(cuts.lost()).isEqualTo(stock.lost(blocks.tree(cut, false)));
            }
        }
    }
}
