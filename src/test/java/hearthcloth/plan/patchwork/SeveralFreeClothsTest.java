package hearthcloth.plan.patchwork;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanCheck;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** {@link SeveralFreeCloths}: cloths whose answer is known, since each scrap is a ninth of one. */
class SeveralFreeClothsTest {

    private static final Patchwork AS_THEY_ARE = new Patchwork(Optional.empty(), true, Patchwork.ScrapRule.AS_THEY_ARE);

    /** Three by three patches that finish 10 by 10 eighths, the outer ones less the hem: what nine scraps of 18 make. */
    private static Stash squares(int count) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pieces.add(Heaps.piece(i + 2, i % 2 == 0 ? Heaps.WHITE : Heaps.GREY, 40, 40));
        }
        return new Stash(pieces);
    }

    private static List<Optional<Plan>> plan(Stash stash, List<Wish> wishes) {
        return SeveralFreeCloths.plan(stash, wishes, AS_THEY_ARE, Budget.steps(20_000), 1);
    }

    @Test
    void each_scrap_is_in_one_cloth_and_each_cloth_has_its_size() {
        Size first = Heaps.eighths(100, 66);
        Size second = Heaps.eighths(66, 66);
        List<Optional<Plan>> plans =
                plan(squares(14), List.of(Heaps.wish(Optional.of(first)), Heaps.wish(Optional.of(second))));
        assertThat(plans).hasSize(2).allMatch(Optional::isPresent);
        assertThat(plans.get(0).orElseThrow().cloth().finished()).isEqualTo(first);
        assertThat(plans.get(1).orElseThrow().cloth().finished()).isEqualTo(second);
        List<String> used = new ArrayList<>();
        plans.forEach(one -> {
            PlanCheck.require(one.orElseThrow());
            one.orElseThrow().cuts().forEach(cut -> used.add(cut.piece().id()));
        });
        assertThat(used).doesNotHaveDuplicates();
    }

    @Test
    void a_wish_without_a_size_and_a_heap_without_scraps_give_nothing() {
        Wish open = Heaps.wish(Optional.empty());
        Wish sized = Heaps.wish(Optional.of(Heaps.eighths(66, 66)));
        assertThat(plan(squares(9), List.of(open))).containsExactly(Optional.empty());
        assertThat(plan(new Stash(List.of()), List.of(sized))).containsExactly(Optional.empty());
        List<Optional<Plan>> mixed = plan(squares(9), List.of(open, sized));
        assertThat(mixed.get(0)).isEmpty();
        assertThat(mixed.get(1)).isPresent();
    }

    /** Two scraps of 40 by 40 eighths cover less than a cloth of 200 by 200. */
    @Test
    void a_cloth_that_is_too_large_for_the_heap_is_not_made_smaller() {
        assertThat(plan(squares(2), List.of(Heaps.wish(Optional.of(Heaps.eighths(200, 200))))))
                .containsExactly(Optional.empty());
    }
}
