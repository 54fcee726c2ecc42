package hearthcloth.cutstock.piecing.blocks;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.piecing.parameter.BlockParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.LeastSide;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** {@link BlockSearch}: each {@link BlockCover} can be cut, and {@link Until#BEST} is the best that trying everything finds. */
class BlockSearchTest {

    private static final BlockParameters BLOCKS = BlockParameters.standard();

    private static final int SEAM = 2;
    private static final int LEAST = 2;
    private static final long NONE = Long.MAX_VALUE / 8;
    private static final Stock.Rules RULES = new Stock.Rules(SEAM, LEAST, 0, 0);

    private static BooleanSupplier steps(long count) {
        long[] left = {count};
        return () -> left[0]-- <= 0;
    }

    private static Stock random(SplittableRandom chance, int count, int from, int range) {
        int[] widths = chance.ints(count, from, from + range).toArray();
        int[] heights = chance.ints(count, from, from + range).toArray();
        boolean[] turnable = new boolean[count];
        for (int i = 0; i < count; i++) {
            turnable[i] = chance.nextInt(3) > 0;
        }
        return Stock.of(widths, heights, turnable, RULES);
    }

    /** The least that is lost if exactly these scraps cover a rectangle, by every cut of it and every share. */
    private static long least(Stock stock, int set, int width, int height) {
        if (Math.min(width, height) < LEAST) {
            return NONE;
        }
        if (Integer.bitCount(set) == 1) {
            int scrap = Integer.numberOfTrailingZeros(set);
            int w = stock.width(scrap);
            int h = stock.height(scrap);
            boolean fits = (w >= width && h >= height) || (stock.turnable(scrap) && h >= width && w >= height);
            return fits ? (long) (w + SEAM) * (h + SEAM) - (long) (width + SEAM) * (height + SEAM) : NONE;
        }
        long least = NONE;
        for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
            for (int at = LEAST; at <= width - LEAST; at++) {
                least = Math.min(least, least(stock, part, at, height) + least(stock, set & ~part, width - at, height));
            }
            for (int at = LEAST; at <= height - LEAST; at++) {
                least = Math.min(least, least(stock, part, width, at) + least(stock, set & ~part, width, height - at));
            }
        }
        return least;
    }

    private static long area(Stock stock, long set) {
        long area = 0;
        for (int i = 0; i < stock.size(); i++) {
            area += (set >>> i & 1) == 1 ? (long) stock.width(i) * stock.height(i) : 0;
        }
        return area;
    }

    private static long scraps(Pieced tree) {
        if (tree instanceof ScrapPatch patch) {
            return 1L << patch.scrap();
        }
        Joint joint = (Joint) tree;
        long first = scraps(joint.first());
        long second = scraps(joint.second());
        assertThat(first & second).isZero();
        return first | second;
    }

    private static void check(Stock stock, BlockCover cover, boolean exactly) {
        Pieced tree = cover.tree().get();
        assertThat(scraps(tree)).isEqualTo(cover.scraps());
        Pieced cut = Trimming.to(tree, cover.width(), cover.height(), new LeastSide(LEAST))
                .orElseThrow(() -> new AssertionError("cannot be cut to " + cover.width() + " x " + cover.height()));
        if (exactly) {
            assertThat(stock.lost(cut)).isEqualTo(cover.lost());
        } else {
            assertThat(stock.lost(cut)).isGreaterThanOrEqualTo(cover.lost());
        }
    }

    @Test
    void everything_finds_what_trying_everything_finds() {
        SplittableRandom chance = new SplittableRandom(21);
        int found = 0;
        for (int i = 0; i < 120; i++) {
            Stock stock = random(chance, 3, 3, 6);
            int width = 4 + chance.nextInt(6);
            int height = 4 + chance.nextInt(6);
            long truth = NONE;
            for (int set = 1; set < 8; set++) {
                truth = Math.min(truth, least(stock, set, width, height));
            }
            long spare = Math.max(0, area(stock, 7) - (long) width * height);
            BlockSearch search =
                    new BlockSearch(stock, new Goal(width, height, spare, NONE), Effort.everything(), BLOCKS);

            search.run(steps(10_000), Until.BEST);

            // nothing is left to follow, unless nothing is lost and nothing can be better
            assertThat(search.exhausted()).as("case %s", i).isEqualTo(truth != 0);
            assertThat(search.best().map(BlockCover::lost).orElse(NONE))
                    .as("case %s: %s x %s", i, width, height)
                    .isEqualTo(truth);
            if (search.best().isPresent()) {
                found++;
                assertThat(search.best().get().width()).isEqualTo(width);
                assertThat(search.best().get().height()).isEqualTo(height);
                check(stock, search.best().get(), true);
            }
        }
        assertThat(found).isBetween(30, 115);
    }

    @Test
    void every_cover_and_every_block_that_spans_can_be_cut() {
        SplittableRandom chance = new SplittableRandom(22);
        Stock stock = random(chance, 14, 8, 20);
        Goal goal = new Goal(40, 30, area(stock, (1 << 14) - 1) - 1_200, 3_000);
        BlockSearch search = new BlockSearch(stock, goal, new Effort(0.3, 80, 200, -1, 1), BLOCKS);

        search.run(steps(300), Until.ALL);

        assertThat(search.covers().size()).isGreaterThan(5);
        for (BlockCover cover : search.covers()) {
            assertThat(cover.width()).isEqualTo(40);
            assertThat(cover.height()).isEqualTo(30);
            check(stock, cover, false);
        }
        assertThat(search.spanning().size()).isGreaterThan(5);
        for (BlockCover cover : search.spanning()) {
            assertThat(cover.width() == 40 || cover.height() == 30).isTrue();
            assertThat(cover.width() <= 40 && cover.height() <= 30).isTrue();
            check(stock, cover, false);
        }
        assertThat(search.exhausted()).isFalse();
    }

    @Test
    void the_first_cover_is_enough_where_that_is_asked() {
        SplittableRandom chance = new SplittableRandom(22);
        Stock stock = random(chance, 14, 8, 20);
        Goal goal = new Goal(40, 30, area(stock, (1 << 14) - 1) - 1_200, 3_000);
        int[] asked = {0, 0};
        Effort effort = new Effort(0.3, 80, 200, -1, 1);
        BlockSearch first = new BlockSearch(stock, goal, effort, BLOCKS);
        first.run(() -> asked[0]++ >= 600, Until.FIRST);
        BlockSearch best = new BlockSearch(stock, goal, effort, BLOCKS);
        best.run(() -> asked[1]++ >= 600, Until.BEST);

        assertThat(first.best()).isPresent();
        assertThat(asked[0]).isLessThan(asked[1]);
        assertThat(best.best().orElseThrow().lost())
                .isLessThan(first.best().orElseThrow().lost());
        check(stock, best.best().orElseThrow(), false);
    }

    @Test
    void no_cover_loses_more_or_holds_more_than_the_goal_allows() {
        Stock stock = Stock.of(new int[] {20, 25}, new int[] {10, 10}, new boolean[] {false, false}, RULES);
        // 45 x 10 out of both loses nothing; 44 x 10 loses a strip of 1 x 12
        assertThat(best(stock, new Goal(45, 10, 0, 0))).isZero();
        assertThat(best(stock, new Goal(44, 10, 10, 12))).isEqualTo(12);
        assertThat(best(stock, new Goal(44, 10, 10, 11))).isEqualTo(-1);
        assertThat(best(stock, new Goal(44, 10, 9, 12))).isEqualTo(-1);
        // a goal that stands: the scraps may not be turned, so nothing covers it
        assertThat(best(stock, new Goal(10, 45, 0, 0))).isEqualTo(-1);
        Stock turnable = Stock.of(new int[] {20, 25}, new int[] {10, 10}, new boolean[] {true, true}, RULES);
        assertThat(best(turnable, new Goal(10, 45, 0, 0))).isZero();
    }

    private static long best(Stock stock, Goal goal) {
        BlockSearch search = new BlockSearch(stock, goal, Effort.everything(), BLOCKS);
        search.run(steps(1_000), Until.BEST);
        search.best().ifPresent(cover -> {
            assertThat(cover.width()).isEqualTo(goal.width());
            assertThat(cover.height()).isEqualTo(goal.height());
            check(stock, cover, true);
        });
        return search.best().map(BlockCover::lost).orElse(-1L);
    }

    @Test
    void a_scrap_is_cut_in_two_where_its_offcut_goes_back_and_that_costs_its_price() {
        // beside 20 x 10 lies 40 x 10 out of 40 x 18, of which 42 x 8 go back; below both 60 x 20
        Stock stock = Stock.of(
                new int[] {20, 40, 60},
                new int[] {10, 18, 20},
                new boolean[] {false, false, false},
                new Stock.Rules(2, 2, 8, 8));

        assertThat(cutting(stock, 0)).isZero();
        assertThat(cutting(stock, 300)).isZero();
        assertThat(cutting(stock, 301)).isEqualTo(-1);
        assertThat(cutting(stock, -1)).isEqualTo(-1);
    }

    private static long cutting(Stock stock, double price) {
        BlockSearch search =
                new BlockSearch(stock, new Goal(60, 30, 400, 300), new Effort(0.5, 50, 50, price, 1), BLOCKS);
        search.run(steps(100), Until.BEST);
        return search.best().map(BlockCover::lost).orElse(-1L);
    }
}
