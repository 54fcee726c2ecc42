package hearthcloth.cutstock.piecing.cover;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.piecing.blocks.Effort;
import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.blocks.Until;
import hearthcloth.cutstock.piecing.parameter.PiecingParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * {@link Covering} by {@link Dive} and {@link Repair} out of a {@link Heap}, {@link SeveralCoverings}, and the {@link Plank}s
 * that a {@link Covered} rectangle is taken apart into.
 */
class CoveringTest {

    private static final int LEAST = 4;
    private static final Stock.Rules RULES = new Stock.Rules(2, LEAST, 0, 0);

    private static BooleanSupplier steps(long count) {
        long[] left = {count};
        return () -> left[0]-- <= 0;
    }

    private static ScrapPatch patch(int scrap, long width, long height) {
        return new ScrapPatch(scrap, false, width, height);
    }

    /** A rectangle cut at random into so many: the heap that covers it without loss. */
    private static Heap jigsaw(SplittableRandom chance, int width, int height, int count) {
        List<int[]> parts = new ArrayList<>(List.of(new int[] {width, height}));
        while (parts.size() < count) {
            int[] part = parts.remove(chance.nextInt(parts.size()));
            int side = part[0] >= part[1] ? 0 : 1;
            int at = LEAST + chance.nextInt(Math.max(1, part[side] - 2 * LEAST));
            int[] near = part.clone();
            int[] far = part.clone();
            near[side] = at;
            far[side] = part[side] - at;
            if (far[side] < LEAST) {
                parts.add(part);
                continue;
            }
            parts.add(near);
            parts.add(far);
        }
        boolean[] turnable = new boolean[count];
        Arrays.fill(turnable, true);
        return new Heap(
                Stock.of(
                        parts.stream().mapToInt(part -> part[0]).toArray(),
                        parts.stream().mapToInt(part -> part[1]).toArray(),
                        turnable,
                        RULES),
                PiecingParameters.standard());
    }

    private static Heap heap(SplittableRandom chance, int count) {
        boolean[] turnable = new boolean[count];
        for (int i = 0; i < count; i++) {
            turnable[i] = chance.nextInt(4) > 0;
        }
        return new Heap(
                Stock.of(
                        chance.ints(count, 8, 30).toArray(),
                        chance.ints(count, 8, 30).toArray(),
                        turnable,
                        RULES),
                PiecingParameters.standard());
    }

    private static int[] all(Heap heap) {
        return IntStream.range(0, heap.size()).toArray();
    }

    /** The size of a tree whose sides must meet and whose patches must come out of distinct scraps as they may lie. */
    private static long[] judged(Heap heap, Pieced tree, BitSet seen) {
        if (tree instanceof ScrapPatch patch) {
            Stock stock = heap.all();
            assertThat(seen.get(patch.scrap())).isFalse();
            seen.set(patch.scrap());
            assertThat(patch.turned() && !stock.turnable(patch.scrap())).isFalse();
            long across = patch.turned() ? stock.height(patch.scrap()) : stock.width(patch.scrap());
            long down = patch.turned() ? stock.width(patch.scrap()) : stock.height(patch.scrap());
            assertThat(patch.width()).isBetween((long) LEAST, across);
            assertThat(patch.height()).isBetween((long) LEAST, down);
            return new long[] {patch.width(), patch.height()};
        }
        Joint joint = (Joint) tree;
        long[] a = judged(heap, joint.first(), seen);
        long[] b = judged(heap, joint.second(), seen);
        int meet = joint.beside() ? 1 : 0;
        assertThat(a[meet]).isEqualTo(b[meet]);
        a[1 - meet] += b[1 - meet];
        return a;
    }

    private static BitSet check(Heap heap, Covered covered, int width, int height) {
        BitSet seen = new BitSet();
        assertThat(judged(heap, covered.tree(), seen)).containsExactly(width, height);
        assertThat(covered.width()).isEqualTo(width);
        assertThat(covered.height()).isEqualTo(height);
        assertThat(covered.lost()).isEqualTo(heap.lost(covered.tree()));
        assertThat(covered.scraps()).isEqualTo(seen);
        return seen;
    }

    @Test
    void a_heap_tells_areas_and_renumbers_a_tree() {
        Heap heap = new Heap(
                Stock.of(new int[] {10, 20}, new int[] {5, 6}, new boolean[] {true, true}, RULES),
                PiecingParameters.standard());
        Pieced tree = new Joint(true, new ScrapPatch(0, true, 5, 10), patch(1, 7, 10));

        assertThat(heap.size()).isEqualTo(2);
        assertThat(heap.area(1)).isEqualTo(120);
        assertThat(heap.area(new int[] {1, 0})).isEqualTo(170);
        assertThat(Heap.renumbered(tree, i -> 7 - i))
                .isEqualTo(new Joint(true, new ScrapPatch(7, true, 5, 10), patch(6, 7, 10)));
    }

    @Test
    void what_lies_in_a_row_is_one_row_of_planks() {
        Pieced stack = new Joint(false, patch(2, 10, 4), patch(3, 10, 6));
        Pieced tree = new Joint(
                true, new Joint(true, patch(0, 5, 10), patch(1, 6, 10)), new Joint(true, stack, patch(4, 7, 10)));

        Plank row = Plank.of(tree);

        assertThat(row.beside).isTrue();
        assertThat(row.isPatch()).isFalse();
        assertThat(row.parts).extracting(part -> part.width).containsExactly(5L, 6L, 10L, 7L);
        assertThat(row.width).isEqualTo(28);
        assertThat(row.height).isEqualTo(10);
        assertThat(row.patches).isEqualTo(5);
        Plank column = row.parts.get(2);
        assertThat(column.beside).isFalse();
        assertThat(column.height).isEqualTo(10);
        assertThat(column.tree()).isEqualTo(stack);
        List<Plank> rows = new ArrayList<>();
        row.rows(rows);
        assertThat(rows).containsExactly(row, column);
        assertThat(row.row(List.of(row.parts.get(3), row.parts.get(0))))
                .isEqualTo(new Joint(true, patch(4, 7, 10), patch(0, 5, 10)));
        assertThat(row.tree())
                .isEqualTo(new Joint(
                        true,
                        new Joint(true, new Joint(true, patch(0, 5, 10), patch(1, 6, 10)), stack),
                        patch(4, 7, 10)));
        assertThat(Plank.of(patch(9, 3, 2)).tree()).isEqualTo(patch(9, 3, 2));
        assertThat(Plank.of(patch(9, 3, 2)).isPatch()).isTrue();
    }

    @Test
    void dives_cover_a_rectangle_out_of_more_scraps_than_one_search_takes() {
        SplittableRandom chance = new SplittableRandom(24);
        Heap heap = heap(chance, 90);
        Effort effort = new Effort(0.25, 60, 200, -1, 0);
        Dive.Style style = new Dive.Style(effort, effort, 8, 4, Until.FIRST);
        int covered = 0;
        for (int i = 0; i < 5; i++) {
            Optional<Covered> cover = new Dive(heap, steps(4_000), chance).cover(80, 60, all(heap), 1_000_000, style);
            if (cover.isPresent()) {
                covered++;
                assertThat(check(heap, cover.get(), 80, 60).cardinality()).isGreaterThan(5);
            }
        }
        assertThat(covered).isGreaterThan(1);
        Dive dive = new Dive(heap, steps(100), chance);
        assertThat(dive.cover(120, 9_000, all(heap), 1_000_000, style)).isEmpty();
        assertThat(dive.cover(120, LEAST - 1, all(heap), 1_000_000, style)).isEmpty();
        assertThat(dive.cover(80, 60, all(heap), -1, style)).isEmpty();
    }

    @Test
    void a_cover_is_repaired_only_for_the_better() {
        SplittableRandom chance = new SplittableRandom(25);
        Heap heap = heap(chance, 30);
        BooleanSupplier spent = steps(40_000);
        Covering covering = new Covering(heap, 60, 50, all(heap), 0, spent, 5);
        assertThat(covering.rough()).isTrue();
        Covered cover = covering.best().orElseThrow();
        long first = cover.lost();
        Repair repair = new Repair(heap, all(heap), spent, chance);
        for (int i = 0; i < 40; i++) {
            Covered next = repair.once(cover, new Effort(0.1, 60, 200, -1, 0));

            check(heap, next, 60, 50);
            assertThat(next.lost()).isLessThanOrEqualTo(cover.lost());
            cover = next;
        }
        assertThat(cover.lost()).isLessThan(first / 2);
        Covered single = new Covered(patch(0, 8, 8), 8, 8, 0);
        assertThat(repair.once(single, Effort.everything())).isSameAs(single);
    }

    @Test
    void a_rectangle_cut_into_scraps_is_put_together_again_without_loss() {
        Heap heap = jigsaw(new SplittableRandom(26), 60, 48, 9);
        Covering covering = new Covering(heap, 60, 48, all(heap), 0, steps(30_000), 5);

        assertThat(covering.tight()).isTrue();
        assertThat(covering.few()).isTrue();
        covering.everything();

        assertThat(check(heap, covering.best().orElseThrow(), 60, 48).cardinality())
                .isEqualTo(9);
        assertThat(covering.best().orElseThrow().lost()).isZero();
        assertThat(covering.done()).isTrue();
    }

    @Test
    void a_heap_too_small_covers_nothing_whatever_is_tried() {
        Heap heap = jigsaw(new SplittableRandom(26), 60, 48, 9);
        Covering covering = new Covering(heap, 60, 49, all(heap), 0, steps(30_000), 5);

        assertThat(covering.attempt()).isFalse();
        assertThat(covering.rough()).isFalse();
        covering.everything();
        assertThat(covering.best()).isEmpty();
        assertThat(covering.done()).isTrue();
    }

    @Test
    void attempts_cover_and_improving_loses_ever_less() {
        SplittableRandom chance = new SplittableRandom(27);
        Heap heap = heap(chance, 24);
        int[] some = Arrays.copyOfRange(all(heap), 0, 20);
        Covering covering = new Covering(heap, 60, 40, some, 0, steps(30_000), 5);
        assertThat(covering.few()).isFalse();
        for (int i = 0; i < covering.round() && !covering.attempt(); i++) {}
        long lost = covering.best().orElseThrow().lost();
        for (int i = 0; i < 30 && !covering.done(); i++) {
            boolean better = covering.improve();

            Covered now = covering.best().orElseThrow();
            assertThat(check(heap, now, 60, 40).length()).isLessThanOrEqualTo(20);
            assertThat(now.lost() < lost).isEqualTo(better);
            assertThat(now.lost()).isLessThanOrEqualTo(lost);
            lost = now.lost();
        }
        assertThat(lost).isLessThan(60 * 40 / 20);
    }

    @Test
    void a_heap_is_tight_where_less_than_an_eighth_or_so_is_to_spare() {
        Heap heap = new Heap(
                Stock.of(new int[] {10, 10}, new int[] {50, 60}, new boolean[] {true, true}, RULES),
                PiecingParameters.standard());

        // 1100 of 1000 wished leave a tenth; of 900 more than two tenths
        assertThat(new Covering(heap, 20, 50, all(heap), 0, steps(1), 1).tight())
                .isTrue();
        assertThat(new Covering(heap, 20, 45, all(heap), 0, steps(1), 1).tight())
                .isFalse();
    }

    @Test
    void several_rectangles_share_no_scrap_and_rework_covers_those_that_were_left() {
        SplittableRandom chance = new SplittableRandom(28);
        Heap heap = heap(chance, 30);
        int[] widths = {40, 40, 50};
        int[] heights = {40, 40, 30};
        SeveralCoverings several = new SeveralCoverings(heap, widths, heights, 0, steps(40_000), 5);
        several.begin();
        long before = -1;
        for (int i = 0; i < 40; i++) {
            BitSet used = new BitSet();
            long lost = 0;
            int covered = 0;
            for (int n = 0; n < 3; n++) {
                Optional<Covered> made = several.made(n);
                if (made.isPresent()) {
                    BitSet scraps = check(heap, made.get(), widths[n], heights[n]);
                    assertThat(scraps.intersects(used)).isFalse();
                    used.or(scraps);
                    lost += made.get().lost();
                    covered++;
                }
            }
            assertThat(several.unused()).hasSize(30 - used.cardinality());
            assertThat(Arrays.stream(several.unused()).noneMatch(used::get)).isTrue();
            assertThat(covered).as("round %s", i).isGreaterThanOrEqualTo(before >= 0 ? 3 : 0);
            if (covered == 3) {
                assertThat(before < 0 || lost <= before).as("round %s", i).isTrue();
                before = lost;
            }
            several.rework();
        }
        assertThat(before).isBetween(0L, 4_400L / 10);
        assertThat(several.done()).isEqualTo(before == 0);
    }

    @Test
    void a_rectangle_left_without_scraps_gets_some_when_a_few_are_made_anew() {
        // the first takes the two of 40 x 20, which lose nothing, and the other two are left with 40 x 41
        Heap heap = new Heap(
                Stock.of(new int[] {40, 40, 40}, new int[] {41, 20, 20}, new boolean[] {false, false, false}, RULES),
                PiecingParameters.standard());
        SeveralCoverings several =
                new SeveralCoverings(heap, new int[] {40, 40, 40}, new int[] {40, 20, 20}, 0, steps(5_000), 3);
        several.begin();
        assertThat(several.made(0).orElseThrow().lost()).isZero();
        assertThat(several.made(1)).isEmpty();
        assertThat(several.unused()).containsExactly(0);

        boolean better = false;
        for (int i = 0; i < 40 && several.unused().length > 0; i++) {
            better |= several.rework();
        }

        assertThat(better).isTrue();
        assertThat(several.made(0).orElseThrow().tree()).isEqualTo(patch(0, 40, 40));
        assertThat(several.unused()).isEmpty();
        assertThat(several.done()).isFalse();
    }
}
