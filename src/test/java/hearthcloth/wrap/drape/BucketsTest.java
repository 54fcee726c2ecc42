package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What {@link Buckets} gather against a look at every place. */
class BucketsTest {

    private static double[] places(Random chance, int count, double reach) {
        double[] places = new double[3 * count];
        for (int i = 0; i < places.length; i++) {
            places[i] = reach * (chance.nextDouble() - 0.3);
        }
        return places;
    }

    private static void holdsAll(double[] places, int count, double edge, Random chance) {
        Buckets buckets = new Buckets();
        buckets.fill(places, count, edge);
        for (int turn = 0; turn < 30; turn++) {
            Buckets.Box box = new Buckets.Box();
            box.of(places, chance.nextInt(count), chance.nextInt(count));
            box.with(places, chance.nextInt(count));
            box.grow(edge * chance.nextDouble());
            List<Integer> gathered = new ArrayList<>();
            int found = buckets.gather(box);
            for (int i = 0; i < found; i++) {
                gathered.add(buckets.gathered[i]);
            }
            List<Integer> inside = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                if (box.holds(places, k)) {
                    inside.add(k);
                }
            }
            assertThat(gathered).doesNotHaveDuplicates().containsAll(inside);
        }
    }

    /** Seeds 1 to 15. */
    @Test
    void every_place_in_a_box_is_gathered_once() {
        for (int seed = 1; seed <= 15; seed++) {
            Random chance = new Random(seed);
            holdsAll(places(chance, 400, 50), 400, 1 + 6 * chance.nextDouble(), chance);
        }
    }

    /** Of a thousand times a thousand times a thousand cells only as many are made as memory has room for. Seed 3. */
    @Test
    void places_far_apart_are_gathered_too() {
        Random chance = new Random(3);
        holdsAll(places(chance, 300, 1000), 300, 1, chance);
    }

    /** Seed 5: a box the size of one cell in the middle of 27 times 27 times 27 finds a few places, not all. */
    @Test
    void a_small_box_leaves_out_what_is_far_away() {
        double[] places = places(new Random(5), 5000, 27);
        Buckets buckets = new Buckets();
        buckets.fill(places, 5000, 1);
        Buckets.Box box = new Buckets.Box();
        box.of(places, 17, 17);
        box.grow(0.5);
        int found = buckets.gather(box);
        assertThat(found).isBetween(1, 100);
        for (int i = 0; i < found; i++) {
            for (int c = 0; c < 3; c++) {
                // a box that reaches half a cell each way touches two cells, so nothing lies two cells away
                assertThat(Math.abs(places[3 * buckets.gathered[i] + c] - places[3 * 17 + c]))
                        .isLessThan(2);
            }
        }
    }

    @Test
    void a_line_that_passes_a_box_on_one_side_does_not_meet_it() {
        double[] places = {0, 0, 0, 2, 2, 2, 3, 0, 0, 3, 5, 5, -1, 1, 1, 5, 1, 1};
        Buckets.Box box = new Buckets.Box();
        box.of(places, 0, 1);
        assertThat(box.meets(places, 2, 3)).isFalse();
        assertThat(box.meets(places, 4, 5)).isTrue();
        box.grow(1);
        assertThat(box.meets(places, 2, 3)).isTrue();
        assertThat(box.holds(places, 2)).isTrue();
        assertThat(box.holds(places, 5)).isFalse();
    }
}
