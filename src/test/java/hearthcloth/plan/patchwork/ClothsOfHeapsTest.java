package hearthcloth.plan.patchwork;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.piecing.WishedCloth;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.Setting;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Cloths of scraps and of log cabins from heaps whose answer is known. */
class ClothsOfHeapsTest {

    private static Budget much() {
        return Budget.steps(20_000);
    }

    private static PatchworkEffort work() {
        return new PatchworkEffort(1, Budget.steps(100_000), told -> {});
    }

    private static Set<Integer> scraps(Pieced tree) {
        Set<Integer> scraps = new HashSet<>();
        for (ScrapPatch leaf : tree.patches().toList()) {
            assertThat(scraps.add(leaf.scrap())).isTrue();
        }
        return scraps;
    }

    /** Six pieces of 60 × 60 have 54 · 54 net each: three by two make 162 × 108, which is 20 × 13¼ in finished. */
    @Test
    void pieces_alike_make_the_cloth_that_they_add_up_to_and_no_larger_one() {
        MarkedHeap heap = Heaps.alike(Optional.empty(), 2, 60, 60);
        FreeCloths cloths = new FreeCloths(heap, 1);
        Size all = Heaps.eighths(160, 106);
        Size more = Heaps.eighths(168, 106);

        assertThat(cloths.mayMake(all)).isTrue();
        assertThat(cloths.mayMake(more)).isFalse();
        assertThat(cloths.makes(all, true, much())).isTrue();
        assertThat(cloths.makes(more, true, much())).isFalse();
        FreeCloths.Found found = cloths.search(all, true, much()).orElseThrow();
        assertThat(found.full()).isTrue();
        assertThat(found.made()).isEqualTo(all);
        assertThat(Heaps.net(found.tree())).containsExactly(162, 108);
        assertThat(scraps(found.tree())).hasSize(6);
        FreeCloths.Found less = cloths.search(more, true, much()).orElseThrow();
        assertThat(less.full()).isFalse();
        assertThat(heap.netMarks(less.made().width())
                        * heap.netMarks(less.made().height()))
                .isLessThanOrEqualTo(heap.netArea());
    }

    @Test
    void arranging_keeps_every_patch_and_the_size_and_puts_no_fabric_beside_itself_where_it_can() {
        MarkedHeap heap = Heaps.alike(Optional.empty(), 2, 60, 60);
        FreeCloths cloths = new FreeCloths(heap, 1);
        Pieced tree = cloths.search(Heaps.eighths(160, 106), true, much())
                .orElseThrow()
                .tree();

        var arranged = cloths.arranged(tree);

        assertThat(scraps(arranged.tree())).isEqualTo(scraps(tree));
        assertThat(Heaps.net(arranged.tree())).containsExactly(162, 108);
        assertThat(arranged.alike()).isZero();
    }

    @Test
    void scraps_go_round_a_middle_with_the_clock_and_none_is_used_twice() {
        MarkedHeap heap = Heaps.alike(Optional.empty(), 8, 60, 60);
        Pieced middle = new ScrapPatch(0, false, 60, 60);
        // 54 net in the middle, 54 on each side of it
        ScrapBorder.Bordered bordered = new ScrapBorder(heap, middle)
                .around(new WishedCloth(162, 162), new WishedCloth(54, 54), true, Budget.steps(60_000), 1)
                .orElseThrow();

        assertThat(Heaps.net(bordered.tree())).containsExactly(162, 162);
        List<ScrapPatch> leaves = bordered.tree().patches().toList();
        assertThat(leaves.get(bordered.before())).isEqualTo(middle);
        assertThat(scraps(bordered.tree())).contains(0);
        MarkedHeap alone = Heaps.heap(Optional.empty(), Heaps.piece(2, Heaps.GREY, 60, 60));
        assertThat(new ScrapBorder(alone, middle)
                        .around(new WishedCloth(162, 162), new WishedCloth(54, 54), true, much(), 1))
                .isEmpty();
    }

    /** Two blocks of one round in a row; white is light and black dark, of each as much as the other. */
    @Test
    void blocks_fill_their_shares_and_their_patches_are_numbered_row_by_row() {
        List<hearthcloth.stash.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            pieces.add(Heaps.piece(i + 2, i % 2 == 0 ? Heaps.WHITE : Heaps.BLACK, 40, 200));
        }
        MarkedHeap heap = Heaps.heap(Optional.empty(), pieces.toArray(hearthcloth.stash.Piece[]::new));
        Blocks blocks = new Blocks(2, 1, 1, Order.ROUND, Optional.empty());
        BlockTurns turns = new BlockTurns(blocks, Setting.ALIKE, 1);

        BlockCloths.SetTogether set =
                new BlockCloths(heap, blocks).search(201, 100, turns, much(), 1).orElseThrow();

        assertThat(Heaps.net(set.tree())).containsExactly(201, 100);
        List<ScrapPatch> leaves = set.tree().patches().toList();
        // a bar may be joined, so there are at least five patches in a block; together they are all there are
        int first = set.blocks().get(0).size();
        assertThat(first).isBetween(5, leaves.size() - 5);
        assertThat(set.blocks()).containsExactly(numbers(1, first), numbers(first + 1, leaves.size()));
        assertThat(set.toned()).isTrue();
        // a net of 201 is shared as 100 and 101
        assertThat(Heaps.net(((hearthcloth.cutstock.piecing.tree.Joint) set.tree()).first()))
                .containsExactly(100, 100);
        assertThat(scraps(set.tree())).hasSize(leaves.size());
    }

    private static Set<Integer> numbers(int from, int to) {
        return java.util.stream.IntStream.rangeClosed(from, to).boxed().collect(java.util.stream.Collectors.toSet());
    }

    @Test
    void log_cabins_that_are_wished_are_planned_told_and_named_by_their_setting() {
        MarkedHeap heap = Heaps.alike(Optional.of(Size.square(Length.inches(20))), 30, 40, 100);
        Blocks blocks = new Blocks(2, 2, 1, Order.ROUND, Optional.of(Setting.BARN_RAISING));
        Patchwork patchwork = new Patchwork(Optional.of(blocks), false, Patchwork.ScrapRule.EITHER);

        PlanOutcome outcome = new BlockPlanning(heap, patchwork, blocks, work()).outcome();

        assertThat(outcome).isInstanceOfSatisfying(PlanOutcome.Proposals.class, made -> {
            Plan plan = made.plans().get(0);
            assertThat(plan.cloth().finished()).isEqualTo(Size.square(Length.inches(20)));
            assertThat(plan.cloth().patches()).hasSizeGreaterThanOrEqualTo(20);
            assertThat(plan.story().title()).hasToString("Barn raising, 2 × 2 log cabins");
            assertThat(plan.story().goodAt()).asString().startsWith("Light and dark go out from the middle");
            assertThat(plan.story().chosen())
                    .map(Sentence::english)
                    .contains("4 log cabins, 2 × 2, one round in each, round the square.");
        });
    }

    @Test
    void too_few_scraps_for_log_cabins_say_so_and_offer_the_nearest() {
        MarkedHeap heap = Heaps.alike(Optional.of(Size.square(Length.inches(60))), 4, 40, 100);
        Blocks blocks = new Blocks(1, 1, 1, Order.ROUND, Optional.empty());
        Patchwork patchwork = new Patchwork(Optional.of(blocks), false, Patchwork.ScrapRule.EITHER);

        PlanOutcome outcome = new BlockPlanning(heap, patchwork, blocks, work()).outcome();

        assertThat(outcome).isInstanceOfSatisfying(PlanOutcome.CannotMake.class, cannot -> {
            assertThat(cannot.proven()).isFalse();
            assertThat(cannot.why())
                    .map(Sentence::english)
                    .containsExactly("These scraps were not enough for 1 × 1 log cabins of 1 round at 60 × 60 in; fewer"
                            + " blocks or rounds need less.");
            assertThat(cannot.nearest()).hasSize(1);
            assertThat(cannot.nearest().get(0).cloth().finished().width()).isLessThan(Length.inches(60));
        });
    }

    @Test
    void scraps_make_the_wished_size_or_are_said_to_be_short_with_the_nearest_cloth() {
        MarkedHeap heap = Heaps.alike(Optional.of(Heaps.eighths(160, 106)), 2, 60, 60);
        PlanOutcome made = new FreePlanning(heap, Patchwork.free(), work()).outcome();
        assertThat(made)
                .isInstanceOfSatisfying(
                        PlanOutcome.Proposals.class,
                        proposals -> assertThat(proposals.plans())
                                .allMatch(plan -> plan.cloth().finished().equals(Heaps.eighths(160, 106))));

        MarkedHeap large = Heaps.alike(Optional.of(Heaps.eighths(240, 240)), 2, 60, 60);
        PlanOutcome outcome = new FreePlanning(large, Patchwork.free(), work()).outcome();
        assertThat(outcome).isInstanceOfSatisfying(PlanOutcome.CannotMake.class, cannot -> {
            assertThat(cannot.proven()).isTrue();
            assertThat(cannot.why().get(0)).asString().startsWith("However these scraps are laid, they are ");
            assertThat(cannot.nearest()).hasSize(1);
        });
    }

    @Test
    void without_a_size_the_largest_square_that_was_found_lies_below_what_the_fabric_could_make() {
        MarkedHeap heap = Heaps.alike(Optional.empty(), 3, 60, 60);
        PlanOutcome made = new FreePlanning(heap, Patchwork.free(), work()).outcome();

        // nine pieces of 54 net make 162 square, 20 in, just so
        assertThat(made).isInstanceOfSatisfying(PlanOutcome.Proposals.class, proposals -> {
            Plan plan = proposals.plans().get(0);
            assertThat(plan.cloth().finished()).isEqualTo(Size.square(Length.inches(20)));
            assertThat(plan.story().chosen().get(0))
                    .hasToString(
                            "The size: the largest square that was found, 20 in; all these scraps together could not"
                                    + " make one above 20 in.");
        });
    }
}
