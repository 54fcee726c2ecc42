package hearthcloth.cutstock.piecing.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.ScrapCutting;
import hearthcloth.cutstock.piecing.ScrapCutting.Extent;
import hearthcloth.cutstock.piecing.cabin.Cabin.Edge;
import hearthcloth.cutstock.piecing.cabin.Cabin.Log;
import hearthcloth.cutstock.piecing.cabin.Cabin.Tone;
import hearthcloth.cutstock.piecing.parameter.CabinParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link CabinSearch}, its {@link CabinTrial}s of a {@link CabinJob}, and the {@link Offcuts} they are cut from. */
class CabinSearchTest {

    private static final int PATCHES = CabinParameters.standard().patches();

    private static final CabinJob.Rules RULES = new CabinJob.Rules(6, 10, 12);

    private static Scrap scrap(long width, long height) {
        return new Scrap(width, height, 0, false);
    }

    private static CabinJob job(List<Cabin> cabins, List<Scrap> scraps, List<Tone> tones) {
        return new CabinJob(cabins, scraps, tones, RULES);
    }

    @Test
    void each_scrap_has_a_tone() {
        assertThatThrownBy(() -> job(List.of(), List.of(scrap(20, 20)), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 tones of 1 scraps");
    }

    @Test
    void what_is_cut_from_a_corner_leaves_the_two_offcuts_that_lose_less() {
        Offcuts offcuts = new Offcuts(job(List.of(), List.of(scrap(50, 40)), List.of(Tone.DARK)), PATCHES);
        Offcuts.Part whole = offcuts.parts().get(0);

        // 30 x 25 leaves 20 x 40 and 30 x 15 cut upright first: both go back, and so they would level
        assertThat(offcuts.lostBy(whole, 30, 25)).isZero();
        // 30 x 30 leaves 20 x 40 and 30 x 10, which is lost; level first 20 x 30 and 50 x 10, which is more
        assertThat(offcuts.lostBy(whole, 30, 30)).isEqualTo(300);
        offcuts.cut(whole, 30, 30);
        assertThat(offcuts.lost()).isEqualTo(300);
        assertThat(offcuts.parts()).containsExactly(new Offcuts.Part(0, 20, 40));
        // 20 x 28 of it leaves 20 x 12, just enough to go back
        offcuts.cut(offcuts.parts().get(0), 20, 28);
        assertThat(offcuts.lost()).isEqualTo(300);
        assertThat(offcuts.parts()).containsExactly(new Offcuts.Part(0, 20, 12));
    }

    @Test
    void a_low_patch_is_cut_off_level_first_where_that_loses_less() {
        Offcuts offcuts = new Offcuts(job(List.of(), List.of(scrap(40, 50)), List.of(Tone.DARK)), PATCHES);

        // 30 x 30: upright first 10 x 50 is lost and 30 x 20 kept; level first 10 x 30 is lost and 40 x 20 kept
        offcuts.cut(offcuts.parts().get(0), 30, 30);

        assertThat(offcuts.lost()).isEqualTo(300);
        assertThat(offcuts.parts()).containsExactly(new Offcuts.Part(0, 40, 20));
    }

    @Test
    void no_more_than_four_patches_come_out_of_one_scrap() {
        Offcuts offcuts = new Offcuts(
                job(List.of(), List.of(scrap(500, 40), new Scrap(9, 9, 0, true)), List.of(Tone.DARK, Tone.LIGHT)),
                PATCHES);
        for (int i = 0; i < 4; i++) {
            Offcuts.Part part = offcuts.parts().get(offcuts.parts().size() - 1);
            Offcuts.Part strip = offcuts.parts().stream()
                    .filter(one -> one.scrap() == 0)
                    .findFirst()
                    .orElse(part);
            assertThat(offcuts.open(strip)).isTrue();
            offcuts.cut(strip, 30, 40);
        }
        assertThat(offcuts.parts()).contains(new Offcuts.Part(0, 380, 40));
        assertThat(offcuts.open(new Offcuts.Part(0, 380, 40))).isFalse();
        assertThat(offcuts.open(new Offcuts.Part(1, 9, 9))).isTrue();
        assertThat(offcuts.turnable(new Offcuts.Part(1, 9, 9))).isTrue();
        assertThat(offcuts.turnable(new Offcuts.Part(0, 9, 9))).isFalse();
    }

    /** The net size of a tree whose sides must meet; its patches go into the list. */
    private static long[] size(Pieced tree, List<ScrapPatch> patches) {
        if (tree instanceof ScrapPatch patch) {
            patches.add(patch);
            assertThat(Math.min(patch.width(), patch.height()) - RULES.seam()).isGreaterThanOrEqualTo(RULES.least());
            return new long[] {patch.width() - RULES.seam(), patch.height() - RULES.seam()};
        }
        Joint joint = (Joint) tree;
        long[] a = size(joint.first(), patches);
        long[] b = size(joint.second(), patches);
        int meet = joint.beside() ? 1 : 0;
        assertThat(a[meet]).isEqualTo(b[meet]);
        a[1 - meet] += b[1 - meet];
        return a;
    }

    /** That the tree is the hearth with these logs round it, each of its tone; what is inside the last log is judged next. */
    private static void rounds(CabinJob job, Pieced tree, List<Log> logs) {
        if (logs.isEmpty()) {
            assertThat(tree).isInstanceOf(ScrapPatch.class);
            return;
        }
        Log last = logs.get(logs.size() - 1);
        Joint joint = (Joint) tree;
        assertThat(joint.beside()).isEqualTo(last.edge() == Edge.LEFT || last.edge() == Edge.RIGHT);
        boolean after = last.edge() == Edge.RIGHT || last.edge() == Edge.BOTTOM;
        List<ScrapPatch> bar = new ArrayList<>();
        size(after ? joint.second() : joint.first(), bar);
        assertThat(bar.size()).isBetween(1, 3);
        assertThat(bar).allMatch(patch -> last.tone() == Tone.ANY || job.tones().get(patch.scrap()) == last.tone());
        rounds(job, after ? joint.first() : joint.second(), logs.subList(0, logs.size() - 1));
    }

    private static void check(CabinJob job, List<Pieced> blocks) {
        assertThat(blocks).hasSameSizeAs(job.cabins());
        List<ScrapPatch> patches = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Cabin cabin = job.cabins().get(i);
            assertThat(size(blocks.get(i), patches)).containsExactly(cabin.width(), cabin.height());
            rounds(job, blocks.get(i), cabin.bars());
        }
        Map<Integer, List<Extent>> byScrap = new HashMap<>();
        for (ScrapPatch patch : patches) {
            assertThat(patch.turned() && !job.scraps().get(patch.scrap()).turnable())
                    .isFalse();
            byScrap.computeIfAbsent(patch.scrap(), unseen -> new ArrayList<>())
                    .add(
                            patch.turned()
                                    ? new Extent(patch.height(), patch.width())
                                    : new Extent(patch.width(), patch.height()));
        }
        byScrap.forEach((number, extents) -> {
            Scrap scrap = job.scraps().get(number);
            assertThat(extents.size()).isLessThanOrEqualTo(4);
            assertThat(new ScrapCutting(0, 0).of(new Extent(scrap.width(), scrap.height()), extents))
                    .as("%s of %s", extents, scrap)
                    .isPresent();
        });
    }

    private static final List<Log> ROUND = List.of(
            new Log(Edge.LEFT, Tone.LIGHT),
            new Log(Edge.TOP, Tone.LIGHT),
            new Log(Edge.RIGHT, Tone.DARK),
            new Log(Edge.BOTTOM, Tone.DARK),
            new Log(Edge.LEFT, Tone.ANY));

    private static CabinJob heap(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Scrap> scraps = new ArrayList<>();
        List<Tone> tones = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            scraps.add(new Scrap(18 + chance.nextInt(40), 30 + chance.nextInt(100), i, chance.nextInt(3) > 0));
            tones.add(i % 2 == 0 ? Tone.LIGHT : Tone.DARK);
        }
        return job(List.of(new Cabin(100, 90, ROUND), new Cabin(80, 80, ROUND.subList(0, 4))), scraps, tones);
    }

    @Test
    void every_trial_that_comes_to_an_end_can_be_cut_and_sewn() {
        int made = 0;
        for (int seed = 0; seed < 25; seed++) {
            CabinJob job = heap(seed);
            CabinTrial trial = new CabinTrial(job, new SplittableRandom(seed));
            Optional<List<Pieced>> blocks = trial.blocks();
            if (blocks.isPresent()) {
                made++;
                check(job, blocks.get());
                assertThat(trial.cost()).isPositive();
            }
        }
        assertThat(made).isGreaterThan(10);
    }

    @Test
    void the_best_of_all_trials_is_kept() {
        CabinJob job = heap(3);
        SplittableRandom chance = new SplittableRandom(9);
        double least = Double.POSITIVE_INFINITY;
        Optional<List<Pieced>> best = Optional.empty();
        for (int i = 0; i < 30; i++) {
            CabinTrial trial = new CabinTrial(job, chance.split());
            Optional<List<Pieced>> blocks = trial.blocks();
            if (blocks.isPresent() && trial.cost() < least) {
                least = trial.cost();
                best = blocks;
            }
        }
        int[] left = {30};

        assertThat(CabinSearch.search(job, () -> left[0]-- <= 0, 9))
                .isEqualTo(best)
                .isPresent();
        assertThat(CabinSearch.search(job, () -> true, 9)).isEmpty();
    }

    @Test
    void a_bar_of_which_no_scrap_is_long_enough_is_joined_end_to_end() {
        List<Log> one = List.of(new Log(Edge.RIGHT, Tone.DARK));
        // the hearth takes 76 x 96 of the light one; the bar, 90 long, needs two of the dark ones of 56 - 6
        List<Scrap> scraps = List.of(scrap(90, 96), scrap(36, 56), scrap(36, 56));
        CabinJob job = job(List.of(new Cabin(100, 90, one)), scraps, List.of(Tone.LIGHT, Tone.DARK, Tone.DARK));
        int[] left = {40};

        List<Pieced> blocks = CabinSearch.search(job, () -> left[0]-- <= 0, 1).orElseThrow();

        check(job, blocks);
        List<ScrapPatch> patches = new ArrayList<>();
        size(((Joint) blocks.get(0)).second(), patches);
        assertThat(patches).extracting(ScrapPatch::scrap).containsExactlyInAnyOrder(1, 2);
    }

    @Test
    void no_bar_lies_against_its_own_fabric_where_the_heap_has_others() {
        List<Log> rounds = new ArrayList<>();
        for (int round = 0; round < 2; round++) {
            for (Edge edge : Edge.values()) {
                rounds.add(new Log(edge, Tone.ANY));
            }
        }
        List<Scrap> scraps = new ArrayList<>();
        for (int i = 0; i < 48; i++) {
            scraps.add(new Scrap(40, 130, i % 6, true));
        }
        List<Tone> tones = scraps.stream().map(scrap -> Tone.DARK).toList();
        CabinJob job = job(List.of(new Cabin(110, 120, rounds)), scraps, tones);
        int[] left = {60};

        Pieced work =
                CabinSearch.search(job, () -> left[0]-- <= 0, 1).orElseThrow().get(0);

        List<Integer> fabrics = new ArrayList<>();
        for (int i = rounds.size() - 1; i >= 0; i--) {
            Joint joint = (Joint) work;
            boolean after = rounds.get(i).edge() == Edge.RIGHT || rounds.get(i).edge() == Edge.BOTTOM;
            Pieced bar = after ? joint.second() : joint.first();
            bar.patches().forEach(patch -> fabrics.add(scraps.get(patch.scrap()).fabric()));
            work = after ? joint.first() : joint.second();
        }
        work.patches().forEach(patch -> fabrics.add(scraps.get(patch.scrap()).fabric()));
        assertThat(fabrics).hasSize(9);
        for (int i = 1; i < fabrics.size(); i++) {
            assertThat(fabrics.subList(Math.max(0, i - 4), i)).doesNotContain(fabrics.get(i));
        }
    }

    @Test
    void a_heap_of_the_wrong_tone_or_size_makes_no_block() {
        List<Log> one = List.of(new Log(Edge.RIGHT, Tone.DARK));
        Cabin cabin = new Cabin(60, 40, one);
        List<Scrap> scraps = List.of(scrap(100, 100), scrap(100, 100));
        int[] left = {60};

        assertThat(CabinSearch.search(
                        job(List.of(cabin), scraps, List.of(Tone.LIGHT, Tone.LIGHT)), () -> left[0]-- <= 40, 1))
                .isEmpty();
        assertThat(CabinSearch.search(
                        job(List.of(cabin), scraps, List.of(Tone.LIGHT, Tone.DARK)), () -> left[0]-- <= 20, 1))
                .isPresent();
        assertThat(CabinSearch.search(
                        job(List.of(new Cabin(15, 40, one)), scraps, List.of(Tone.LIGHT, Tone.DARK)),
                        () -> left[0]-- <= 0,
                        1))
                .isEmpty();
    }

    @Test
    void a_bar_is_as_broad_as_its_scrap_where_nothing_of_it_could_go_back() {
        // across 70: usual is 70 / 2.25 = 31, at most 46; the scrap gives 44 - 6 = 38 of 90
        List<Log> one = List.of(new Log(Edge.RIGHT, Tone.DARK));
        CabinJob job = job(
                List.of(new Cabin(70, 90, one)), List.of(scrap(80, 96), scrap(44, 96)), List.of(Tone.LIGHT, Tone.DARK));
        Joint block = (Joint) new CabinTrial(job, new SplittableRandom(1))
                .blocks()
                .orElseThrow()
                .get(0);

        assertThat(block.second()).isEqualTo(new ScrapPatch(1, false, 44, 96));
        assertThat(block.first()).isEqualTo(new ScrapPatch(0, false, 70 - 38 + 6, 96));
    }
}
