package hearthcloth.cutstock.piecing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cutstock.piecing.compose.Composed;
import hearthcloth.cutstock.piecing.compose.Composition;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FreePiecingTest {

    private static PiecingPlan plan(PiecingJob job, long steps) {
        return plan(job, steps, new ArrayList<>());
    }

    private static PiecingPlan plan(PiecingJob job, long steps, List<PiecingPlan> better) {
        long[] left = {steps};
        return new FreePiecing(job).search(() -> left[0]-- <= 0, 1, better::add);
    }

    /** A heap by chance: some may not be turned; a third of the heaps bring offcuts back. */
    private static PiecingJob heap(SplittableRandom chance) {
        List<Scrap> scraps = new ArrayList<>();
        int count = 1 + chance.nextInt(40);
        long net = 0;
        for (int i = 0; i < count; i++) {
            scraps.add(new Scrap(
                    5 + chance.nextInt(60), 5 + chance.nextInt(60), chance.nextInt(5), chance.nextInt(3) > 0));
            net += scraps.get(i).width() * scraps.get(i).height() / 2;
        }
        int cloths = 1 + chance.nextInt(3);
        List<WishedCloth> sizes = new ArrayList<>();
        for (int i = 0; i < cloths; i++) {
            long side = 3 + (long) Math.sqrt(net * chance.nextDouble(0.2, 1) / cloths);
            sizes.add(new WishedCloth(side + chance.nextInt(9), side));
        }
        Terms terms = chance.nextInt(3) == 0 ? new Terms(6, 8, 15, 1, 2) : new Terms(6, 0, 0, 1, 2);
        return new PiecingJob(sizes, scraps, new Allowances(1, 2, 3), terms);
    }

    @Test
    void every_plan_of_random_heaps_can_be_sewn_and_beats_no_bound() {
        SplittableRandom chance = new SplittableRandom(25);
        for (int i = 0; i < 150; i++) {
            PiecingJob job = heap(chance);
            PiecingBounds bounds = PiecingBounds.of(job);
            List<PiecingPlan> better = new ArrayList<>();

            PiecingPlan last = plan(job, 400, better);

            for (PiecingPlan plan : better) {
                assertThat(PlanCheck.faults(job, plan)).as("heap %d", i).isEmpty();
            }
            PiecingPlan.Figures figures = last.figures();
            assertThat(figures.missing()).isGreaterThanOrEqualTo(bounds.missing());
            if (figures.full()) {
                assertThat(figures.lost()).isGreaterThanOrEqualTo(bounds.lost());
                assertThat(figures.lostPercent()).isGreaterThanOrEqualTo(bounds.lostPercent());
                assertThat(figures.seams()).isGreaterThanOrEqualTo(bounds.seams());
            }
        }
    }

    @Test
    void each_plan_told_is_better_than_the_one_before() {
        PiecingJob job = PiecingSets.read("half-n030-s1");
        List<PiecingPlan> better = new ArrayList<>();

        PiecingPlan last = plan(job, 20_000, better);

        assertThat(better).isNotEmpty().last().isEqualTo(last);
        for (int i = 1; i < better.size(); i++) {
            assertThat(better.get(i).figures()).isLessThan(better.get(i - 1).figures());
        }
    }

    /** Cloths a few units across from up to five scraps, half of them cut from the cloth before. */
    private static PiecingJob tiny(SplittableRandom chance) {
        List<Scrap> scraps = new ArrayList<>();
        int count = 2 + chance.nextInt(3);
        for (int i = 0; i < count; i++) {
            scraps.add(new Scrap(4 + chance.nextInt(7), 4 + chance.nextInt(7), i, chance.nextInt(3) > 0));
        }
        WishedCloth size = new WishedCloth(4 + chance.nextInt(6), 4 + chance.nextInt(5));
        return new PiecingJob(List.of(size), scraps, new Allowances(1, 1, 1), new Terms(1, 0, 0, 1, 0));
    }

    @Test
    void tiny_heaps_lose_exactly_as_little_as_trying_everything_finds() {
        SplittableRandom chance = new SplittableRandom(7);
        int full = 0;
        for (int i = 0; i < 300; i++) {
            PiecingJob job = tiny(chance);
            long least = EveryCloth.leastLost(job);

            PiecingPlan plan = plan(job, 3_000);

            assertThat(PlanCheck.faults(job, plan)).as("heap %d", i).isEmpty();
            assertThat(plan.figures().full()).as("heap %d, %s", i, job).isEqualTo(least < EveryCloth.NONE);
            if (least < EveryCloth.NONE) {
                full++;
                assertThat(plan.figures().lost()).as("heap %d, %s", i, job).isEqualTo(least);
                assertThat(PiecingBounds.of(job).lost()).isLessThanOrEqualTo(least);
            }
        }
        assertThat(full).isGreaterThan(60);
    }

    /** Patches of a plan as it lies in the heap: scrap, width and height. */
    private static List<long[]> cut(PiecingPlan plan) {
        List<long[]> cut = new ArrayList<>();
        plan.cloths().forEach(cloth -> collect(cloth.tree(), cut));
        return cut;
    }

    private static void collect(Pieced tree, List<long[]> into) {
        if (tree instanceof Joint joint) {
            collect(joint.first(), into);
            collect(joint.second(), into);
        } else if (tree instanceof ScrapPatch patch) {
            long width = patch.turned() ? patch.height() : patch.width();
            into.add(new long[] {patch.scrap(), width, patch.turned() ? patch.width() : patch.height()});
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"half-n030-s1", "decoy-n020-s1"})
    void scraps_that_must_be_in_are_in_and_none_is_trimmed_farther_than_it_may_be(String set) {
        PiecingJob open = PiecingSets.read(set);
        SplittableRandom chance = new SplittableRandom(3);
        int full = 0;
        for (int i = 0; i < 4; i++) {
            List<Scrap> scraps = new ArrayList<>(open.scraps().stream()
                    .map(scrap -> scrap.handled(Scrap.Handling.ANY.trimmedBy(8)))
                    .toList());
            Set<Long> must = new HashSet<>();
            while (must.size() < 3) {
                int scrap = chance.nextInt(scraps.size());
                scraps.set(
                        scrap,
                        scraps.get(scrap).handled(scraps.get(scrap).handling().required()));
                must.add((long) scrap);
            }
            PiecingJob job = new PiecingJob(open.cloths(), scraps, open.allowances(), open.terms());

            PiecingPlan plan = plan(job, 20_000);

            assertThat(PlanCheck.faults(job, plan)).as("try %d", i).isEmpty();
            full += plan.figures().full() ? 1 : 0;
            List<long[]> cut = cut(plan);
            assertThat(cut.stream().map(patch -> patch[0])).as("try %d", i).containsAll(must);
            for (long[] patch : cut) {
                Scrap scrap = scraps.get((int) patch[0]);
                assertThat(scrap.width() - patch[1])
                        .as("try %d, scrap %d", i, patch[0])
                        .isBetween(0L, 8L);
                assertThat(scrap.height() - patch[2])
                        .as("try %d, scrap %d", i, patch[0])
                        .isBetween(0L, 8L);
            }
        }
        assertThat(full).isGreaterThanOrEqualTo(2);
    }

    @Test
    void the_same_seed_and_steps_give_the_same_plan() {
        PiecingJob job = PiecingSets.read("half-n030-s1");

        assertThat(plan(job, 3_000)).isEqualTo(plan(job, 3_000));
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 10})
    void a_budget_that_is_spent_at_once_ends_the_search(long steps) {
        PiecingJob job = PiecingSets.read("several-exact-k03-s1");

        assertThat(PlanCheck.faults(job, plan(job, steps))).isEmpty();
    }

    @Test
    void a_heap_that_cannot_suffice_gives_a_smaller_cloth_and_the_proof() {
        List<Scrap> scraps = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            scraps.add(new Scrap(40, 40, i, true));
        }
        PiecingJob job = new PiecingJob(
                List.of(new WishedCloth(110, 110)), scraps, new Allowances(2, 4, 4), new Terms(12, 0, 0, 1, 4));

        PiecingPlan plan = plan(job, 5_000);

        // six nets of 34 x 34 are 6936, wished are 112 x 112
        assertThat(PiecingBounds.of(job).missing()).isEqualTo(112 * 112 - 6 * 34 * 34);
        assertThat(plan.figures().full()).isFalse();
        assertThat(PlanCheck.faults(job, plan)).isEmpty();
        assertThat(plan.cloths()).hasSize(1);
    }

    @Test
    void the_fabric_that_is_said_to_be_enough_makes_the_cloth() {
        List<Scrap> scraps = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            scraps.add(new Scrap(40, 40, i, true));
        }
        PiecingJob job = new PiecingJob(
                List.of(new WishedCloth(96, 80)), scraps, new Allowances(2, 4, 4), new Terms(12, 0, 0, 1, 4));
        long[] left = {100_000};

        MoreFabric more = MoreFabric.enough(job, 9, () -> left[0]-- <= 0, 1).orElseThrow();

        // three by two nets of 34 are 102 x 68; 98 x 82 is wished: a strip of 14, the least, is enough
        assertThat(more.piece()).isEqualTo(new Scrap(104, 20, 9, false));
        assertThat(more.cloth().made()).isEqualTo(new WishedCloth(96, 80));
        assertThat(PlanCheck.treeFaults(more.job(), more.cloth())).isEmpty();
    }

    @Test
    void a_composed_cloth_keeps_its_size_and_loss_and_no_seams_meet_where_it_says_so() {
        int clear = 0;
        for (String name : List.of("exact-n030-s2", "half-n030-s1", "decoy-n020-s1")) {
            PiecingJob job = PiecingSets.read(name);
            PiecingPlan plan = plan(job, 20_000);
            PiecedCloth cloth = plan.cloths().get(0);
            Composition.Spacing spacing = new Composition.Spacing(6, 4, 2);
            long[] left = {4_000};

            Composed composed = new Composition(
                            cloth.tree(),
                            spacing,
                            i -> job.scraps().get(i).fabric(),
                            i -> job.scraps().get(i).turnable(),
                            1)
                    .compose(() -> left[0]-- <= 0);

            PiecedCloth arranged = new PiecedCloth(0, cloth.made(), composed.tree());
            assertThat(PlanCheck.faults(job, new PiecingPlan(List.of(arranged), plan.figures())))
                    .isEmpty();
            for (long first = 2; first <= 4; first += 2) {
                assertThat(composed.crossings().isEmpty() && SeamEnds.nearest(arranged.tree(), first, 6 - first) < 4)
                        .isFalse();
            }
            clear += composed.crossings().isEmpty() ? 1 : 0;
        }
        assertThat(clear).isGreaterThanOrEqualTo(2);
    }

    @Test
    void senseless_jobs_are_refused() {
        assertThatThrownBy(() -> new Scrap(0, 4, 0, true)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Allowances(3, 2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Terms(1, 0, 0, 4, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () -> new PiecingJob(List.of(), List.of(), new Allowances(1, 1, 1), new Terms(1, 0, 0, 1, 0)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
