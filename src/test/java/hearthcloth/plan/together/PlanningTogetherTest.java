package hearthcloth.plan.together;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Rect;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that hold for every heap that is divided, and heaps whose answer is known. */
class PlanningTogetherTest {

    private static final int BEGUN = 5;

    private static Asked square(String name, int inches) {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(inches))), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        return new Asked(name, wish, Optional.empty());
    }

    private static List<Asked> squares(int count, int inches) {
        List<Asked> asked = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            asked.add(square("Student " + i, inches));
        }
        return asked;
    }

    private static PlanningTogether.Effort steps(int effort, long seed) {
        return new PlanningTogether.Effort(effort, seed, Budget.steps(Long.MAX_VALUE));
    }

    /** To the end of the search. */
    private static Together planned(Stash heap, List<Asked> asked, long seed) {
        return PlanningTogether.plan(heap, asked, steps(1, seed), told -> {});
    }

    /** Until a division is reached of which this is true, or to the end of the search. */
    private static Together planned(
            Stash heap,
            List<Asked> asked,
            int effort,
            long seed,
            Predicate<TogetherProgress> enough,
            Consumer<TogetherProgress> seen) {
        AtomicBoolean reached = new AtomicBoolean();
        return PlanningTogether.plan(heap, asked, new PlanningTogether.Effort(effort, seed, reached::get), told -> {
            seen.accept(told);
            reached.set(reached.get() || enough.test(told));
        });
    }

    /**
     * The first divisions: all at once, one after another, and three times some taken apart and planned anew. What holds for
     * every division holds for these; {@link #the_laws_hold_at_the_end_of_a_search_too} goes on to the end.
     */
    private static Together begun(Stash heap, List<Asked> asked, long seed) {
        return planned(heap, asked, 1, seed, told -> told.tried() >= BEGUN, told -> {});
    }

    private static List<Plan> plans(Together together) {
        return together.parts().stream().flatMap(part -> part.plan().stream()).toList();
    }

    /** Every piece is of the heap or left over by a cloth that is cut before, and stands in one plan. */
    private static void nothingIsPromisedTwice(Stash heap, Together together) {
        Map<String, Piece> there = new HashMap<>();
        heap.pieces().forEach(piece -> there.put(piece.id(), piece));
        for (int cloth : together.order()) {
            Plan plan = together.parts().get(cloth).plan().orElseThrow().checked();
            for (PieceCut cut : plan.cuts()) {
                assertThat(there.remove(cut.piece().id())).isEqualTo(cut.piece());
            }
            for (Leftover left : together.leftovers()) {
                if (left.by() == cloth) {
                    List<Rect> offcuts = plan.cuts().stream()
                            .filter(cut -> cut.piece().equals(left.of()))
                            .flatMap(cut -> cut.tree().left().stream())
                            .toList();
                    assertThat(offcuts).contains(left.at());
                    assertThat(left.part().size()).isEqualTo(left.at().size());
                    assertThat(there.put(left.part().id(), left.part())).isNull();
                }
            }
        }
        assertThat(together.order())
                .doesNotHaveDuplicates()
                .hasSize(plans(together).size());
    }

    private static Stash heap(long seed) {
        return Stashes.scraps(26 + (int) seed * 4, seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void no_piece_of_a_random_heap_is_promised_twice(long seed) {
        promisedOnce(heap(seed), begun(heap(seed), squares(3, 12), seed));
    }

    private static void promisedOnce(Stash heap, Together together) {
        nothingIsPromisedTwice(heap, together);
        assertThat(together.parts()).hasSize(3);
        double sewn = plans(together).stream()
                .mapToDouble(plan -> plan.figures().areas().used())
                .sum();
        assertThat(sewn).isPositive().isLessThanOrEqualTo(heap.areaMm2());
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void nobody_fares_worse_than_one_after_another(long seed) {
        noWorseThanInTurn(begun(Stashes.scraps(30, seed), squares(4, 13), seed));
    }

    private static void noWorseThanInTurn(Together together) {
        Fairness reached = together.measure().fairness();
        Fairness inTurn = together.measure().oneAfterAnother().orElseThrow();
        assertThat(reached.lacking()).isLessThanOrEqualTo(inTurn.lacking());
        if (reached.lacking() == inTurn.lacking()) {
            assertThat(reached.worst()).isLessThanOrEqualTo(inTurn.worst());
        }
        assertThat(reached.worst()).isGreaterThanOrEqualTo(together.measure().bound());
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void the_laws_hold_at_the_end_of_a_search_too(long seed) {
        Together together = planned(heap(seed), squares(3, 12), seed);
        promisedOnce(heap(seed), together);
        noWorseThanInTurn(together);
        assertThat(planned(heap(seed), squares(3, 12), seed)).isEqualTo(together);
    }

    @Test
    void the_same_heap_wishes_and_seed_give_the_same_plans() {
        Stash heap = Stashes.scraps(30, 21);
        assertThat(begun(heap, squares(3, 12), 21)).isEqualTo(begun(heap, squares(3, 12), 21));
    }

    @Test
    void a_search_that_is_stopped_at_once_still_has_a_cloth_for_everybody() {
        Stash heap = Stashes.scraps(60, 31);
        Together together = PlanningTogether.plan(
                heap, squares(3, 12), new PlanningTogether.Effort(1, 31, Budget.until(() -> true)), told -> {});
        nothingIsPromisedTwice(heap, together);
        assertThat(together.isComplete()).isTrue();
        assertThat(together.measure().oneAfterAnother()).isEmpty();
    }

    @Test
    void progress_counts_up_to_what_is_to_be_tried() {
        List<TogetherProgress> told = new ArrayList<>();
        planned(Stashes.scraps(30, 43), squares(3, 12), 1, 43, progress -> progress.tried() >= BEGUN, told::add);
        for (int i = 0; i < told.size(); i++) {
            assertThat(told.get(i).tried())
                    .isEqualTo(i + 1)
                    .isLessThanOrEqualTo(told.get(i).of());
            assertThat(told.get(i).asked()).isEqualTo(3);
        }
    }

    @Test
    void progress_only_ever_gets_fairer() {
        List<Fairness> told = new ArrayList<>();
        planned(
                Stashes.scraps(30, 41),
                squares(3, 12),
                1,
                41,
                progress -> told.size() >= 2 * BEGUN,
                progress -> told.add(progress.best()));
        assertThat(told).hasSizeGreaterThan(2);
        for (int i = 1; i < told.size(); i++) {
            assertThat(told.get(i)).isLessThanOrEqualTo(told.get(i - 1));
        }
    }

    @Test
    void what_one_cloth_leaves_of_a_length_is_the_others_and_is_cut_after_it() {
        Together together = begun(Stashes.yardage(), squares(4, 12), 51);
        nothingIsPromisedTwice(Stashes.yardage(), together);
        assertThat(together.isComplete()).isTrue();
        assertThat(together.leftovers()).isNotEmpty();
        assertThat(together.leftovers().get(0).part().id()).matches("\\d+[a-z]+");
    }

    @Test
    void hearths_differ_where_the_heap_allows_it() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Fabric fabric = new Fabric("Fabric " + i, Colour.of(0x28262a * (i + 1)), Fabric.Faces.SAME, Fabric.Nap.ANY);
            for (int copy = 0; copy < 8; copy++) {
                int row = pieces.size() + 2;
                pieces.add(new Piece(
                        String.valueOf(row),
                        fabric,
                        new Size(Length.inches(8), Length.inches(20)),
                        Piece.Washed.UNKNOWN,
                        row));
            }
        }
        Together together = planned(
                new Stash(pieces),
                squares(4, 14),
                1,
                61,
                told -> told.best().alike() == 0 && told.best().worst() == 0,
                told -> {});
        Set<String> hearths = new HashSet<>();
        plans(together)
                .forEach(plan -> hearths.add(plan.cloth().patches().stream()
                        .filter(patch -> patch.place().id().equals("hearth"))
                        .findFirst()
                        .orElseThrow()
                        .fabric()));
        assertThat(hearths).hasSize(4);
        assertThat(together.measure().fairness().alike()).isZero();
        assertThat(together.measure().fairness().worst()).isZero();
    }

    @Test
    void a_heap_that_is_too_small_says_what_is_short_and_what_to_buy() {
        Stash heap = Stashes.scraps(12, 71);
        Together together = begun(heap, squares(5, 20), 71);
        nothingIsPromisedTwice(heap, together);
        assertThat(together.isComplete()).isFalse();
        assertThat(together.shopping())
                .extracting(Purchase::goods)
                .contains(Purchase.Goods.FAT_QUARTERS, Purchase.Goods.NARROW_BOLT);
        together.parts().stream()
                .flatMap(part -> part.shortage().stream())
                .forEach(shortage -> assertThat(shortage.why()).isNotEmpty());
    }

    @Test
    void where_no_piece_is_as_long_as_the_cloth_somebody_must_join() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            Fabric fabric = Stashes.fabric(i % 3, Fabric.Faces.SAME, Fabric.Nap.ANY);
            pieces.add(Stashes.piece(i + 2, fabric, new Size(Length.inches(8), Length.inches(12))));
        }
        Together together = begun(new Stash(pieces), squares(2, 18), 81);
        assertThat(together.measure().bound()).isOne();
        assertThat(together.measure().fairness().worst()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tight-k03-s1",
                "tight-k03-s2",
                "exact-k03-s1",
                "like-k03-s2",
                "grown-k03-s3",
                "tight-k06-s1",
                "exact-k06-s1",
                "tight-k12-s3",
                "exact-k12-s5",
                "like-k12-s1"
            })
    void every_cloth_that_a_heap_was_cut_from_is_made_again(String name) throws IOException {
        PlantedHeap planted = PlantedHeap.read("several-" + name + ".txt");
        Together together = planned(
                planted.stash(), planted.asked(), 3, 1, told -> told.best().lacking() == 0, told -> {});
        nothingIsPromisedTwice(planted.stash(), together);
        assertThat(together.isComplete()).isTrue();
        for (int i = 0; i < planted.asked().size(); i++) {
            assertThat(together.parts().get(i).plan().orElseThrow().cloth().finished())
                    .isEqualTo(planted.asked().get(i).wish().target().size().orElseThrow());
        }
    }
}
