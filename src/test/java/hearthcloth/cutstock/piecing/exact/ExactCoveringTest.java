package hearthcloth.cutstock.piecing.exact;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.parameter.SeveralParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Heaps cut at random from rectangles, without any loss; seeds are the loops' numbers. */
class ExactCoveringTest {

    private static final SeveralParameters.Exact EXACT =
            SeveralParameters.standard().exact();

    private static final int LEAST = 12;

    /** Rectangles of about a hundred units a side. */
    private static int[] sides(Random random, int count) {
        return random.ints(count, 90, 121).toArray();
    }

    /** Cuts rectangles into so many parts each; some parts lie turned in the heap, some may not be turned. */
    private static Stock heap(Random random, int[] widths, int[] heights, int parts) {
        List<int[]> all = new ArrayList<>();
        for (int n = 0; n < widths.length; n++) {
            all.addAll(cut(random, widths[n], heights[n], parts));
        }
        Collections.shuffle(all, random);
        boolean[] turnable = new boolean[all.size()];
        for (int i = 0; i < all.size(); i++) {
            turnable[i] = random.nextInt(10) < 7;
            if (turnable[i] && random.nextBoolean()) {
                all.set(i, new int[] {all.get(i)[1], all.get(i)[0]});
            }
        }
        return Stock.of(
                all.stream().mapToInt(part -> part[0]).toArray(),
                all.stream().mapToInt(part -> part[1]).toArray(),
                turnable,
                new Stock.Rules(6, LEAST, 0, 0));
    }

    private static List<int[]> cut(Random random, int width, int height, int parts) {
        List<int[]> cut = new ArrayList<>(List.of(new int[] {width, height}));
        while (cut.size() < parts) {
            int[] part = cut.remove(random.nextInt(cut.size()));
            int side = part[0] > part[1] ? 0 : 1;
            if (part[side] < 2 * LEAST) {
                cut.add(part);
                continue;
            }
            int at = LEAST + random.nextInt(part[side] - 2 * LEAST + 1);
            int[] other = part.clone();
            other[side] -= at;
            part[side] = at;
            cut.add(part);
            cut.add(other);
        }
        return cut;
    }

    /** Width and height of a tree of whole scraps; fails where edges that meet differ, or a scrap is cut or used twice. */
    private static long[] size(Pieced tree, Stock stock, List<Integer> used) {
        if (tree instanceof ScrapPatch patch) {
            assertThat(used).doesNotContain(patch.scrap());
            used.add(patch.scrap());
            assertThat(patch.turned() && !stock.turnable(patch.scrap())).isFalse();
            int width = stock.width(patch.scrap());
            int height = stock.height(patch.scrap());
            assertThat(patch.width()).isEqualTo(patch.turned() ? height : width);
            assertThat(patch.height()).isEqualTo(patch.turned() ? width : height);
            return new long[] {patch.width(), patch.height()};
        }
        Joint joint = (Joint) tree;
        long[] first = size(joint.first(), stock, used);
        long[] second = size(joint.second(), stock, used);
        int met = joint.beside() ? 1 : 0;
        assertThat(first[met]).isEqualTo(second[met]);
        first[1 - met] += second[1 - met];
        return first;
    }

    @Test
    void what_was_cut_from_several_rectangles_makes_them_again_and_nothing_is_left() {
        for (int seed = 0; seed < 30; seed++) {
            Random random = new Random(seed);
            int count = 1 + seed % 6;
            int[] widths = sides(random, count);
            int[] heights = sides(random, count);
            Stock stock = heap(random, widths, heights, 5 + seed % 4);
            List<Pieced> trees =
                    ExactCovering.of(stock, widths, heights, EXACT, () -> false).orElseThrow();
            List<Integer> used = new ArrayList<>();
            for (int n = 0; n < count; n++) {
                assertThat(size(trees.get(n), stock, used)).as("seed %s", seed).containsExactly(widths[n], heights[n]);
            }
            assertThat(used).hasSize(stock.size());
        }
    }

    @Test
    void a_heap_of_the_same_area_that_makes_no_such_rectangle_gives_none() {
        Stock stock = Stock.of(
                new int[] {20, 30}, new int[] {20, 30}, new boolean[] {true, true}, new Stock.Rules(6, LEAST, 0, 0));
        assertThat(ExactCovering.of(stock, new int[] {50}, new int[] {26}, EXACT, () -> false))
                .isEmpty();
    }

    @Test
    void a_scrap_with_a_nap_is_not_turned_to_fit() {
        int[] sides = {20, 40};
        Stock stock =
                Stock.of(sides, new int[] {40, 20}, new boolean[] {false, false}, new Stock.Rules(6, LEAST, 0, 0));
        assertThat(ExactCovering.of(stock, new int[] {40}, new int[] {40}, EXACT, () -> false))
                .isEmpty();
        Stock one = Stock.of(sides, new int[] {40, 20}, new boolean[] {true, false}, new Stock.Rules(6, LEAST, 0, 0));
        assertThat(ExactCovering.of(one, new int[] {40}, new int[] {40}, EXACT, () -> false))
                .isPresent();
    }

    @Test
    void nothing_is_searched_where_there_is_more_or_the_budget_is_spent() {
        Random random = new Random(1);
        int[] widths = sides(random, 2);
        int[] heights = sides(random, 2);
        Stock stock = heap(random, widths, heights, 5);
        assertThat(ExactCovering.of(stock, new int[] {widths[0]}, new int[] {heights[0]}, EXACT, () -> false))
                .isEqualTo(Optional.empty());
        assertThat(ExactCovering.of(stock, widths, heights, EXACT, () -> true)).isEmpty();
    }
}
