package hearthcloth.plan.together;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.ShortSearch;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * {@link Allotment} of two lengths of yardage: the first cloth cuts into them, the second is cut from what it leaves, and
 * {@link Finishing} says who has what.
 */
class AllotmentTest {

    private static final Stash HEAP = Stashes.yardage();
    private static final List<Asked> ASKED = List.of(Wished.square("Ada", 12), Wished.square("Bea", 12));

    private static Made made(List<Piece> pieces) {
        return Made.of(ShortSearch.of(
                        new Stash(pieces), ASKED.get(0).wish(), ShortSearch.Depth.SHORT, Budget.steps(Long.MAX_VALUE))
                .orElseThrow());
    }

    private static double area(List<Piece> pieces) {
        return pieces.stream().mapToDouble(Piece::areaMm2).sum();
    }

    private final Allotment none = Allotment.of(HEAP, OffcutRule.SHARED);
    private final Made first = made(none.free());
    private final Allotment one = none.with(0, first);
    private final Made second = made(one.free());
    private final Allotment both = one.with(1, second);

    @Test
    void at_first_the_whole_heap_is_there_for_everybody() {
        assertThat(none.untouched()).isEqualTo(HEAP.pieces());
        assertThat(none.free()).isEqualTo(HEAP.pieces());
        assertThat(none.made()).isEmpty();
    }

    @Test
    void what_a_cloth_is_cut_from_is_gone_but_for_what_it_leaves() {
        List<Piece> used = first.plan().cuts().stream().map(cut -> cut.piece()).toList();
        assertThat(one.untouched()).doesNotContainAnyElementsOf(used);
        assertThat(one.free()).containsAll(one.untouched()).doesNotContainAnyElementsOf(used);
        assertThat(area(one.free()))
                .isLessThanOrEqualTo(
                        HEAP.areaMm2() - first.plan().figures().areas().used() + 1e-6);
        assertThat(one.free())
                .allSatisfy(piece -> assertThat(HEAP.fabrics()).contains(piece.fabric()))
                .extracting(Piece::id)
                .doesNotHaveDuplicates();
    }

    @Test
    void nothing_is_cut_twice() {
        assertThatThrownBy(() -> one.with(1, first))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("cloth 1 is cut from what is gone");
        assertThat(one.made()).containsOnlyKeys(0);
    }

    @Test
    void without_the_first_cloth_the_second_has_nothing_to_be_cut_from() {
        assertThat(both.without(Set.of()).made()).isEqualTo(Map.of(0, first, 1, second));
        assertThat(both.without(Set.of(1)).free()).containsExactlyInAnyOrderElementsOf(one.free());
        assertThat(both.without(Set.of(0)).made()).isEmpty();
        assertThat(both.without(Set.of(0)).free()).isEqualTo(HEAP.pieces());
    }

    @Test
    void the_leftovers_that_are_handed_on_are_those_the_second_is_cut_from() {
        List<Leftover> handed = both.handedOn();
        assertThat(handed)
                .extracting(Leftover::part)
                .containsExactlyInAnyOrderElementsOf(second.plan().cuts().stream()
                        .map(cut -> cut.piece())
                        .filter(piece -> !HEAP.pieces().contains(piece))
                        .toList());
        assertThat(handed).isNotEmpty().allSatisfy(left -> {
            assertThat(left.by()).isZero();
            assertThat(left.part().size()).isEqualTo(left.at().size());
            assertThat(HEAP.pieces()).contains(left.of());
        });
        assertThat(one.handedOn()).isEmpty();
    }

    @Test
    void more_pieces_are_there_for_whoever_lacks_some() {
        Piece more = Stashes.scraps(1, 1).pieces().get(0);
        Piece named = new Piece("more", more.fabric(), more.size(), more.washed(), 99);
        Allotment restocked = both.restocked(List.of(named));
        assertThat(restocked.untouched()).contains(named);
        assertThat(restocked.made()).isEqualTo(both.made());
        assertThat(restocked.without(Set.of(0, 1)).untouched()).contains(named).containsAll(HEAP.pieces());
    }

    /** Leftovers are called after their piece, so that she can write them on: 2a, 2b, 3a. */
    @Test
    void finishing_renames_leftovers_alike_wherever_they_stand() {
        PlanningTogether.Effort effort = new PlanningTogether.Effort(1, 1, Budget.steps(100));
        Together together = new Finishing(both, ASKED, effort).together(Optional.empty(), 0);
        assertThat(together.isComplete()).isTrue();
        assertThat(together.order()).containsExactly(0, 1);
        assertThat(together.shopping()).isEmpty();
        assertThat(together.leftovers()).hasSameSizeAs(both.handedOn()).allSatisfy(left -> {
            assertThat(left.part().id()).matches("[23][a-z]");
            assertThat(left.part().id()).startsWith(left.of().id());
        });
        Plan plan = together.parts().get(1).plan().orElseThrow();
        assertThat(plan.cuts().stream().map(cut -> cut.piece().id()))
                .containsAll(together.leftovers().stream()
                        .map(left -> left.part().id())
                        .toList())
                .noneMatch(id -> id.contains("/"));
        assertThat(plan.cloth()).isEqualTo(second.plan().cloth());
        assertThat(together.measure().fairness()).isEqualTo(Fairness.of(both, 2));
    }

    /** A third square of 60 in can never come from what is left of two lengths of 42 in. */
    @Test
    void finishing_says_what_is_short_of_a_cloth_that_cannot_be_made() {
        List<Asked> three = List.of(ASKED.get(0), ASKED.get(1), Wished.square("Cleo", 60));
        PlanningTogether.Effort effort = new PlanningTogether.Effort(1, 1, Budget.steps(100));
        Together together = new Finishing(both, three, effort).together(Optional.empty(), 0);
        assertThat(together.isComplete()).isFalse();
        assertThat(together.parts().get(2).shortage()).isPresent();
        assertThat(together.parts().get(0).shortage()).isEmpty();
        assertThat(together.measure().fairness().lacking()).isOne();
        assertThat(together.shopping()).isNotEmpty();
    }

    @Test
    void shares_of_fabrics_sum_up_to_the_whole_cloth() {
        assertThat(first.shares().values().stream().mapToDouble(share -> share).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(first.dark(101)).isCloseTo(1, within(1e-9));
        assertThat(first.dark(-1)).isZero();
    }
}
