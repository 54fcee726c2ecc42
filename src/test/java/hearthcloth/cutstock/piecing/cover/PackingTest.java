package hearthcloth.cutstock.piecing.cover;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.piecing.blocks.BlockCover;
import hearthcloth.cutstock.piecing.parameter.SeveralParameters;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link Packing} beside every choice of covers. */
class PackingTest {

    private static final long LOOKS = SeveralParameters.standard().looks();

    private static BlockCover cover(long scraps, long lost) {
        return new BlockCover(scraps, 10, 10, lost, () -> new ScrapPatch(0, false, 10, 10));
    }

    private static long lost(List<BlockCover> choice) {
        return choice.stream().mapToLong(BlockCover::lost).sum();
    }

    /** The least sum of losses of covers, one of each list from {@code at} on, without a common scrap; at most {@code most}. */
    private static long least(List<List<BlockCover>> lists, int at, long used, long most) {
        if (at == lists.size()) {
            return 0;
        }
        long least = most + 1;
        for (BlockCover cover : lists.get(at)) {
            if ((cover.scraps() & used) == 0 && cover.lost() <= most) {
                long rest = least(lists, at + 1, used | cover.scraps(), most - cover.lost());
                least = Math.min(least, cover.lost() + rest);
            }
        }
        return least;
    }

    @Test
    void covers_are_sorted_by_what_they_lose() {
        assertThat(Packing.sorted(List.of(cover(1, 5), cover(2, 3), cover(4, 9))))
                .extracting(BlockCover::lost)
                .containsExactly(3L, 5L, 9L);
    }

    @Test
    void the_best_covers_that_share_no_scrap_are_chosen_in_the_order_of_the_rectangles() {
        List<BlockCover> first = List.of(cover(0b0011, 1), cover(0b1100, 4));
        List<BlockCover> second = List.of(cover(0b0001, 2), cover(0b0010, 7));
        long[] areas = {100, 100, 100, 100};

        // 0011 loses least but leaves the second nothing
        assertThat(new Packing(List.of(first, second), areas, 100, LOOKS).best())
                .extracting(BlockCover::scraps)
                .containsExactly(0b1100L, 0b0001L);
        assertThat(new Packing(List.of(first, second), areas, 6, LOOKS).best()).hasSize(2);
        assertThat(new Packing(List.of(first, second), areas, 5, LOOKS).best()).isEmpty();
        assertThat(new Packing(List.of(first, List.of()), areas, 100, LOOKS).best())
                .isEmpty();
    }

    @Test
    void two_rectangles_of_one_size_may_not_take_the_same_cover() {
        List<BlockCover> shared = List.of(cover(0b01, 1), cover(0b10, 4));

        assertThat(new Packing(List.of(shared, shared), new long[] {100, 100}, 100, LOOKS).best())
                .extracting(BlockCover::scraps)
                .containsExactlyInAnyOrder(0b01L, 0b10L);
        assertThat(new Packing(List.of(shared, shared, shared), new long[] {100, 100, 100}, 100, LOOKS).best())
                .isEmpty();
    }

    @Test
    void random_lists_give_the_least_that_every_choice_has() {
        SplittableRandom chance = new SplittableRandom(23);
        int found = 0;
        int none = 0;
        for (int i = 0; i < 400; i++) {
            int scraps = 4 + chance.nextInt(5);
            long[] areas = chance.longs(scraps, 30, 120).toArray();
            List<List<BlockCover>> lists = new ArrayList<>();
            for (int n = 1 + chance.nextInt(3); n > 0; n--) {
                if (!lists.isEmpty() && chance.nextInt(3) == 0) {
                    lists.add(lists.get(0));
                    continue;
                }
                List<BlockCover> covers = new ArrayList<>();
                for (int k = chance.nextInt(7); k >= 0; k--) {
                    long set = 1L + chance.nextInt((1 << scraps) - 1);
                    long area = 0;
                    for (int s = 0; s < scraps; s++) {
                        area += (set >> s & 1) == 1 ? areas[s] : 0;
                    }
                    // scraps that cover 10 x 10 have at least that area
                    if (area >= 100) {
                        covers.add(cover(set, chance.nextInt(40)));
                    }
                }
                lists.add(Packing.sorted(covers));
            }
            long most = 30L + chance.nextInt(60);
            boolean enough = Arrays.stream(areas).sum() >= 100L * lists.size();
            long truth = least(lists, 0, 0, most);

            List<BlockCover> best = new Packing(lists, areas, most, LOOKS).best();

            assertThat(best.isEmpty()).as("case %s", i).isEqualTo(truth > most);
            if (!best.isEmpty()) {
                found++;
                assertThat(enough).isTrue();
                assertThat(lost(best)).as("case %s", i).isEqualTo(truth);
                long used = 0;
                for (int n = 0; n < best.size(); n++) {
                    assertThat(lists.get(n)).as("case %s", i).contains(best.get(n));
                    assertThat(best.get(n).scraps() & used).isZero();
                    used |= best.get(n).scraps();
                }
            } else {
                none++;
            }
        }
        assertThat(found).isGreaterThan(100);
        assertThat(none).isGreaterThan(50);
    }
}
