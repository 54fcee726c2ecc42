package hearthcloth.plan.together;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A piece moved by hand is in the cloth it was given to and in no other, and nobody is left without for it. */
class HandedPieceTest {

    private static final PlanningTogether.Effort SHORT = new PlanningTogether.Effort(1, 5, Budget.until(() -> true));

    private static Asked asked(String name) {
        return new Asked(
                name,
                new Wish(
                        new Wish.Target(Optional.of(Size.square(Length.inches(12))), false),
                        OpenShape.shape(),
                        Making.inches(),
                        PiecingRules.inches(),
                        new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS)),
                Optional.empty());
    }

    /** Stopped at once: a division for everybody, not the fairest. */
    private static Together planned(Stash heap) {
        return PlanningTogether.plan(
                heap,
                OffcutRule.KEPT,
                List.of(asked("Anna"), asked("Bo"), asked("Cy")),
                new PlanningTogether.Effort(1, 5, Budget.until(() -> true)),
                told -> {});
    }

    private static List<Piece> pieces(Together together, int cloth) {
        return together.parts().get(cloth).plan().map(Plan::cuts).orElse(List.of()).stream()
                .<Piece>map(cut -> cut.piece())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void a_piece_given_by_hand_is_in_that_cloth_alone_and_the_others_have_theirs(long seed) {
        Stash heap = Stashes.scraps(45, seed);
        Together was = planned(heap);
        assertThat(was.isComplete()).isTrue();
        int moved = 0;
        for (Piece piece : pieces(was, 0).subList(0, 3)) {
            Optional<Together> now = HandedPiece.moved(heap, was, piece.id(), 1, SHORT);
            if (now.isPresent()) {
                moved++;
                assertThat(pieces(now.get(), 1)).contains(piece);
                assertThat(pieces(now.get(), 2)).isEqualTo(pieces(was, 2));
                Set<Piece> seen = new HashSet<>();
                for (int cloth = 0; cloth < 3; cloth++) {
                    assertThat(now.get().parts().get(cloth).isAsWished()).isTrue();
                    now.get().parts().get(cloth).plan().orElseThrow().checked();
                    assertThat(pieces(now.get(), cloth)).allMatch(seen::add);
                }
            }
        }
        assertThat(moved).isPositive();
    }

    @Test
    void a_piece_that_is_not_there_is_refused() {
        Stash heap = Stashes.scraps(45, 1);
        assertThatThrownBy(() -> HandedPiece.moved(heap, planned(heap), "nine", 1, SHORT))
                .hasMessageContaining("nine");
    }

    @Test
    void where_offcuts_are_kept_no_cloth_is_cut_from_what_another_leaves() {
        Together together = PlanningTogether.plan(
                Stashes.yardage(), OffcutRule.KEPT, List.of(asked("Anna"), asked("Bo")), SHORT, told -> {});
        assertThat(together.leftovers()).isEmpty();
    }
}
