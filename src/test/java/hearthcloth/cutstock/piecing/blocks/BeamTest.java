package hearthcloth.cutstock.piecing.blocks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Blocks that wait in a {@link Beam} of {@link Queue}s as widely as an {@link Effort} says, and by edge in an {@link EdgeIndex}. */
class BeamTest {

    private static List<Integer> all(Beam beam) {
        List<Integer> taken = new ArrayList<>();
        for (int block = beam.take(b -> true); block >= 0; block = beam.take(b -> true)) {
            taken.add(block);
        }
        return taken;
    }

    @Test
    void a_queue_gives_the_least_key_first() {
        SplittableRandom chance = new SplittableRandom(17);
        Queue queue = new Queue();
        List<Float> waiting = new ArrayList<>();
        List<Float> keys = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            if (waiting.isEmpty() || chance.nextInt(5) > 1) {
                float key = chance.nextInt(60) / 8f;
                queue.add(keys.size(), key);
                keys.add(key);
                waiting.add(key);
            } else {
                float least = waiting.stream().min(Float::compare).orElseThrow();
                assertThat(queue.leastKey()).isEqualTo(least);
                assertThat(keys.get(queue.take())).isEqualTo(least);
                waiting.remove(least);
            }
            assertThat(queue.isEmpty()).isEqualTo(waiting.isEmpty());
        }
        queue.clear();
        assertThat(queue.isEmpty()).isTrue();
    }

    @Test
    void each_number_of_scraps_is_a_class_and_so_is_each_that_spans() {
        List<Integer> classes = new ArrayList<>();
        for (int scraps = 1; scraps <= Stock.MOST; scraps++) {
            classes.add(Beam.classOf(scraps, false));
            classes.add(Beam.classOf(scraps, true));
        }
        assertThat(classes).doesNotHaveDuplicates();
    }

    @Test
    void only_the_best_of_a_class_are_followed() {
        Beam beam = new Beam(new Effort(0.25, 2, 1, -1, 0));
        int kind = Beam.classOf(3, false);

        beam.add(kind, 10, 0.1);
        assertThat(beam.admits(kind, 0.4)).isTrue();
        beam.add(kind, 20, 0.2);
        assertThat(beam.admits(kind, 0.3)).isFalse();
        assertThat(beam.admits(kind, 0.2)).isFalse();
        assertThat(beam.admits(kind, 0.15)).isTrue();
        beam.add(kind, 5, 0.05);
        assertThat(beam.admits(kind, 0.1)).isFalse();
        assertThat(beam.admits(kind, 0.07)).isTrue();

        assertThat(all(beam)).containsExactly(5, 10);
    }

    @Test
    void blocks_that_span_have_a_number_of_their_own() {
        Beam beam = new Beam(new Effort(0.25, 2, 1, -1, 0));
        int spanning = Beam.classOf(3, true);
        int other = Beam.classOf(3, false);

        beam.add(spanning, 1, 0.2);
        assertThat(beam.admits(spanning, 0.3)).isFalse();
        beam.add(other, 2, 0.2);
        assertThat(beam.admits(other, 0.3)).isTrue();
        beam.add(spanning, 3, 0.1);
        assertThat(all(beam)).containsExactlyInAnyOrder(2, 3);
    }

    @Test
    void classes_are_served_in_turn_and_in_each_the_best_that_is_of_use() {
        Beam beam = new Beam(new Effort(0.25, 99, 99, -1, 0));
        beam.add(Beam.classOf(2, false), 1, 0.30);
        beam.add(Beam.classOf(2, false), 2, 0.20);
        beam.add(Beam.classOf(2, false), 3, 0.10);
        beam.add(Beam.classOf(5, false), 4, 0.01);
        beam.add(Beam.classOf(5, false), 5, 0.02);

        assertThat(beam.take(block -> block != 3)).isEqualTo(2);
        assertThat(beam.take(block -> true)).isEqualTo(4);
        assertThat(beam.take(block -> true)).isEqualTo(1);
        assertThat(beam.take(block -> true)).isEqualTo(5);
        assertThat(beam.take(block -> true)).isEqualTo(-1);
    }

    @Test
    void of_many_blocks_at_least_the_best_so_many_are_followed_and_few_more() {
        SplittableRandom chance = new SplittableRandom(18);
        Beam beam = new Beam(new Effort(0.5, 40, 40, -1, 0));
        List<Double> keys = new ArrayList<>();
        int kind = Beam.classOf(4, false);
        for (int i = 0; i < 2_000; i++) {
            double key = chance.nextDouble();
            if (beam.admits(kind, key)) {
                beam.add(kind, i, key);
            }
            keys.add(key);
        }

        List<Double> followed = all(beam).stream().map(keys::get).toList();

        assertThat(followed).isSorted();
        List<Double> best = keys.stream().sorted().toList();
        // blocks in the last narrow range, a 511th of the keys, are told apart no further
        assertThat(followed.size()).isBetween(40, 60);
        assertThat(followed).containsAll(best.subList(0, 39));
    }

    @Test
    void everything_is_everything_and_a_seed_changes_nothing_else() {
        assertThat(Effort.everything().all()).isTrue();
        assertThat(Effort.everything().cutPrice()).isNegative();
        Effort effort = new Effort(0.1, 20, 30, 4, 5);
        assertThat(effort.all()).isFalse();
        assertThat(effort.seeded(9)).isEqualTo(new Effort(0.1, 20, 30, 4, 9));
    }

    @Test
    void edges_are_found_in_the_drawer_of_their_length() {
        for (int longest : new int[] {10, 4_095, 4_096, 10_000, 10_000_000}) {
            EdgeIndex index = new EdgeIndex(longest);
            assertThat(index.drawer(longest)).isLessThan(4_096);
            assertThat(index.drawer(longest + 5)).isEqualTo(index.drawer(longest));
            assertThat(index.drawer(-3)).isZero();
            for (int i = 0; i < 20; i++) {
                index.file(longest, 1L << i, i);
            }
            index.file(0, 7, 99);

            int drawer = index.drawer(longest);
            assertThat(index.count(drawer)).isEqualTo(20);
            for (int i = 0; i < 20; i++) {
                assertThat(index.sets(drawer)[i]).isEqualTo(1L << i);
                assertThat(index.entries(drawer)[i]).isEqualTo(i);
            }
            assertThat(index.count(index.drawer(0))).isEqualTo(1);
            assertThat(index.count(index.drawer(longest / 2))).isZero();
        }
        EdgeIndex fine = new EdgeIndex(4_095);
        assertThat(fine.drawer(17)).isEqualTo(17);
        assertThat(new EdgeIndex(4_096).drawer(17)).isEqualTo(8);
    }
}
