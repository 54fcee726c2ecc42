package hearthcloth.cutstock.piecing.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.LeastSide;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link BlockDraft}s of the scraps of a {@link Stock}, cut by {@link CutScraps} and known by their {@link SameScraps}. */
class BlockDraftTest {

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
    void a_cut_loses_what_is_neither_patch_nor_an_offcut_that_goes_back() {
        Stock.Rules back = new Stock.Rules(SEAM, 3, 10, 15);

        // a scrap of 22 x 22 and a patch of 12 x 22 leave 10 x 22
        assertThat(PLAIN.lost(20, 20, 10, 20)).isEqualTo(220);
        assertThat(back.lost(20, 20, 10, 20)).isZero();
        assertThat(new Stock.Rules(SEAM, 3, 11, 15).lost(20, 20, 10, 20)).isEqualTo(220);
        assertThat(new Stock.Rules(SEAM, 3, 10, 23).lost(20, 20, 10, 20)).isEqualTo(220);
        // a patch of 12 x 12 leaves 10 x 22 and 12 x 10, cut either way; the smaller is too short to go back
        assertThat(back.lost(20, 20, 10, 10)).isEqualTo(120);
        assertThat(back.lost(20, 20, 20, 20)).isZero();
        // 10 wide beside it and 8 high below: upright first, 10 x 22 goes back, 12 x 8 does not; else 10 x 14 does not
        assertThat(back.lost(20, 20, 10, 12)).isEqualTo(12 * 8);
        assertThat(back.lost(20, 20, 12, 10)).isEqualTo(12 * 8);
    }

    @Test
    void a_stock_is_picked_from_in_any_order() {
        Stock stock =
                Stock.of(new int[] {10, 20, 30}, new int[] {11, 21, 31}, new boolean[] {true, false, true}, PLAIN);

        Stock some = stock.pick(new int[] {2, 1});

        assertThat(some.size()).isEqualTo(2);
        assertThat(some.width(0)).isEqualTo(30);
        assertThat(some.height(1)).isEqualTo(21);
        assertThat(some.side(0, Blocks.WIDTH)).isEqualTo(30);
        assertThat(some.side(0, Blocks.HEIGHT)).isEqualTo(31);
        assertThat(some.turnable(0)).isTrue();
        assertThat(some.turnable(1)).isFalse();
        assertThat(some.rules()).isEqualTo(PLAIN);
    }

    @Test
    void a_scrap_is_the_easier_the_more_sides_are_as_long_as_its_own() {
        Stock stock = stock(PLAIN, new int[][] {{10, 20}, {10, 30}, {20, 10}, {7, 8}}, true);

        // 10 has two partners, 20 has one
        assertThat(stock.ease(0)).isCloseTo((float) (Math.log(3) + Math.log(2)), within(1e-6f));
        assertThat(stock.ease(3)).isZero();
    }

    @Test
    void what_a_tree_loses_is_what_its_patches_lose_as_they_lie_on_their_scraps() {
        Stock stock = stock(PLAIN, new int[][] {{10, 20}, {30, 5}}, true);

        // 12 x 22 less 12 x 11; turned, 32 x 7 less 8 wide and 6 high as the scrap lies: 8 x 6
        Pieced tree = new Joint(true, new ScrapPatch(0, false, 10, 9), new ScrapPatch(1, true, 4, 6));
        assertThat(stock.lost(tree)).isEqualTo(12 * 22 - 12 * 11 + 32 * 7 - 8 * 6);
    }

    @Test
    void a_goal_limits_a_block_that_may_be_turned_by_its_longer_and_shorter_side() {
        Goal high = new Goal(20, 50, 0, 0);

        assertThat(high.area()).isEqualTo(1_000);
        assertThat(high.limit(Blocks.WIDTH, false)).isEqualTo(20);
        assertThat(high.limit(Blocks.HEIGHT, false)).isEqualTo(50);
        assertThat(high.limit(Blocks.WIDTH, true)).isEqualTo(50);
        assertThat(high.limit(Blocks.HEIGHT, true)).isEqualTo(20);
        assertThat(new Goal(3_000_000, 3_000_000, 0, 0).area()).isEqualTo(9_000_000_000_000L);
    }

    @Test
    void a_scrap_that_may_be_turned_is_kept_lying() {
        Stock stock = stock(PLAIN, new int[][] {{10, 20}}, true);
        Blocks blocks = new Blocks();
        BlockDraft draft = new BlockDraft(blocks, WIDE, PLAIN);

        int block = single(draft, stock, 0);

        assertThat(blocks.width[block]).isEqualTo(20);
        assertThat(blocks.trim(block, Blocks.WIDTH)).isEqualTo(17);
        assertThat(blocks.tree(block, false)).isEqualTo(new ScrapPatch(0, true, 20, 10));
        assertThat(blocks.tree(block, true)).isEqualTo(new ScrapPatch(0, false, 10, 20));
        Stock napped = stock(PLAIN, new int[][] {{10, 20}}, false);
        int standing = single(draft, napped, 0);
        assertThat(blocks.width[standing]).isEqualTo(10);
        assertThat(draft.turnable()).isFalse();
    }

    @Test
    void two_blocks_meet_at_the_shorter_of_their_edges() {
        Stock stock = stock(PLAIN, new int[][] {{30, 20}, {25, 24}}, false);
        Blocks blocks = new Blocks();
        BlockDraft draft = new BlockDraft(blocks, WIDE, PLAIN);
        int a = single(draft, stock, 0);
        int b = single(draft, stock, 1);

        assertThat(draft.join(a, Blocks.HEIGHT, b, Blocks.HEIGHT)).isTrue();

        // 4 off the second, which is 25 and a seam wide
        assertThat(draft.width).isEqualTo(55);
        assertThat(draft.height).isEqualTo(20);
        assertThat(draft.lost).isEqualTo(4 * (25 + SEAM));
        assertThat(draft.held).isEqualTo(30 * 20 + 25 * 24);
        assertThat(draft.set).isEqualTo(3);
        assertThat(blocks.tree(draft.make(), false))
                .isEqualTo(new Joint(true, new ScrapPatch(0, false, 30, 20), new ScrapPatch(1, false, 25, 24)));
    }

    @Test
    void two_blocks_do_not_meet_where_one_would_have_to_be_trimmed_too_far() {
        Stock stock = stock(PLAIN, new int[][] {{30, 2}, {25, 24}, {25, 3}}, false);
        Blocks blocks = new Blocks();
        BlockDraft draft = new BlockDraft(blocks, WIDE, PLAIN);
        int low = single(draft, stock, 0);
        int high = single(draft, stock, 1);
        int least = single(draft, stock, 2);

        assertThat(draft.join(low, Blocks.HEIGHT, high, Blocks.HEIGHT)).isFalse();
        assertThat(draft.join(high, Blocks.HEIGHT, low, Blocks.HEIGHT)).isFalse();
        assertThat(draft.join(high, Blocks.HEIGHT, least, Blocks.HEIGHT)).isTrue();
    }

    @Test
    void what_stands_out_over_the_goal_is_clipped_or_the_block_refused() {
        Stock stock = stock(PLAIN, new int[][] {{30, 20}}, false);
        Blocks blocks = new Blocks();
        BlockDraft draft = new BlockDraft(blocks, new Goal(25, 16, 0, 0), PLAIN);
        draft.patch(0, stock, 30, 20);

        assertThat(draft.spansWidth()).isFalse();
        assertThat(draft.clip()).isTrue();

        // 32 x 22 less 27 x 18
        assertThat(draft.lost).isEqualTo(32 * 22 - 27 * 18);
        assertThat(draft.spansWidth()).isTrue();
        assertThat(draft.spansHeight()).isTrue();
        BlockDraft narrow = new BlockDraft(blocks, new Goal(2, 16, 0, 0), PLAIN);
        narrow.patch(0, stock, 30, 20);
        assertThat(narrow.clip()).isFalse();
    }

    @Test
    void trimming_a_joined_block_cuts_into_all_patches_that_lie_there() {
        Stock stock = stock(PLAIN, new int[][] {{30, 20}, {25, 20}}, false);
        Blocks blocks = new Blocks();
        BlockDraft draft = new BlockDraft(blocks, new Goal(50, 16, 0, 0), PLAIN);
        assertThat(draft.join(single(draft, stock, 0), Blocks.HEIGHT, single(draft, stock, 1), Blocks.HEIGHT))
                .isTrue();

        assertThat(draft.clip()).isTrue();

        // of 32 x 22 and 27 x 22 are left 32 x 18 and 22 x 18, or 27 x 18 and 27 x 18
        assertThat(draft.lost).isEqualTo(32 * 22 + 27 * 22 - 32 * 18 - 22 * 18);
    }

    @Test
    void a_block_that_stands_out_either_way_is_laid_so_that_less_is_trimmed() {
        Stock stock = stock(PLAIN, new int[][] {{29, 28}}, true);
        BlockDraft draft = new BlockDraft(new Blocks(), new Goal(40, 20, 0, 0), PLAIN);
        draft.patch(0, stock, 29, 28);

        assertThat(draft.standsOut()).isTrue();
        draft.turnIfCheaper();

        // 8 off 29 and a seam, or 9 off 28 and a seam
        assertThat(draft.width).isEqualTo(29);
        BlockDraft square = new BlockDraft(new Blocks(), new Goal(20, 20, 0, 0), PLAIN);
        square.patch(0, stock, 29, 28);
        square.turn();
        assertThat(square.width).isEqualTo(28);
        assertThat(square.height).isEqualTo(29);
    }

    @Test
    void a_block_loses_at_least_what_is_reckoned_and_two_scraps_exactly_that() {
        SplittableRandom chance = new SplittableRandom(19);
        int pairs = 0;
        int larger = 0;
        for (int i = 0; i < 400; i++) {
            int[][] sizes = new int[2 + chance.nextInt(3)][];
            for (int k = 0; k < sizes.length; k++) {
                sizes[k] = new int[] {3 + chance.nextInt(12), 3 + chance.nextInt(12)};
            }
            Stock stock = stock(PLAIN, sizes, chance.nextInt(4) > 0);
            Blocks blocks = new Blocks();
            BlockDraft draft = new BlockDraft(blocks, WIDE, PLAIN);
            int block = single(draft, stock, 0);
            for (int k = 1; k < sizes.length && block >= 0; k++) {
                int next = single(draft, stock, k);
                int side = chance.nextInt(2);
                int other = stock.turnable(k) ? chance.nextInt(2) : side;
                block = draft.join(block, side, next, other) ? draft.make() : -1;
            }
            if (block < 0) {
                continue;
            }
            int made = block;
            Pieced tree = blocks.tree(block, false);
            Pieced cut = Trimming.to(tree, blocks.width[block], blocks.height[block], new LeastSide(PLAIN.least()))
                    .orElseThrow(() -> new AssertionError("cannot be cut: " + made + tree));
            assertThat(blocks.lost[block]).as("%s", tree).isLessThanOrEqualTo(stock.lost(cut));
            if (sizes.length == 2) {
                pairs++;
                assertThat(blocks.lost[block]).as("%s", tree).isEqualTo(stock.lost(cut));
            } else {
                larger++;
            }
        }
        assertThat(pairs).isGreaterThan(50);
        assertThat(larger).isGreaterThan(50);
    }
}
