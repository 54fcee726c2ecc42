package hearthcloth.plan.patchwork;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SewingNamesTest {

    private int patches;

    /** A random tree over one rectangle, its patches numbered from 1 from left to right. */
    private Assembly random(Size size, int leaves, Random chance) {
        if (leaves == 1) {
            return new Patch(new Place.Free(++patches), "oat", size, Showing.SAME);
        }
        int first = 1 + chance.nextInt(leaves - 1);
        Join join = chance.nextBoolean() ? Join.BESIDE : Join.BELOW;
        Length across = new Length(join.across(size).nm() / 2);
        Size one = join.size(across, join.edge(size));
        Size other = join.size(join.across(size).minus(across), join.edge(size));
        return Seam.of(join, Half.FIRST, random(one, first, chance), random(other, leaves - first, chance));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void names_come_in_the_order_of_sewing_and_a_task_is_a_hand_of_patches(long seed) {
        Assembly work = random(Size.square(Length.cm(600)), 3 + (int) seed * 7, new Random(seed));
        Cloth cloth = new Cloth(SewingNames.named(work, List.of()), Making.metric());

        Set<Place> sewn = new LinkedHashSet<>();
        for (Step step : cloth.steps()) {
            step.patches(step.added().other()).forEach(patch -> sewn.add(patch.place()));
            step.patches(step.added()).forEach(patch -> sewn.add(patch.place()));
        }
        Map<Integer, Integer> sizes = new HashMap<>();
        int task = 0;
        List<Integer> tasks = new ArrayList<>();
        for (Place place : sewn) {
            int own = ((Place.Free) place).task();
            sizes.merge(own, 1, Integer::sum);
            tasks.add(own);
            task = Math.max(task, own);
        }
        assertThat(tasks).isSorted();
        assertThat(Collections.max(sizes.values())).isLessThanOrEqualTo(SewingNames.HAND);
        assertThat(sizes.keySet())
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, task).boxed().toList());
    }

    private static int task(Map<Integer, Place> names, int number) {
        return ((Place.Free) java.util.Objects.requireNonNull(names.get(number))).task();
    }

    @Test
    void a_block_is_one_task_however_many_patches_it_has() {
        Random chance = new Random(3);
        Assembly block = random(Size.square(Length.cm(64)), 9, chance);
        Assembly rest = random(Size.square(Length.cm(64)), 4, chance);
        Assembly work = Seam.of(Join.BESIDE, Half.FIRST, block, rest);
        Set<Integer> numbers = Set.copyOf(IntStream.rangeClosed(1, 9).boxed().toList());

        Map<Integer, Place> names = SewingNames.names(work, List.of(numbers));

        assertThat(numbers).allSatisfy(number -> assertThat(task(names, number)).isEqualTo(1));
        assertThat(task(names, 10)).isEqualTo(2);
    }

    @Test
    void names_are_read_back_from_the_text_form() {
        Assembly work = SewingNames.named(random(Size.square(Length.cm(80)), 12, new Random(5)), List.of());
        assertThat(Notation.parse(Notation.print(work))).isEqualTo(work);
    }
}
