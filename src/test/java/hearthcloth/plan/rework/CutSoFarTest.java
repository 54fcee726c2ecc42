package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.work.Worked;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the cuts made so far have made of a piece: {@link CutSoFar}, {@link LateMiscut}. */
class CutSoFarTest {

    private static final PieceCut CUT = Worked.PLAN.cuts().stream()
            .filter(cut -> cut.tree().cuts().size() > 1)
            .findFirst()
            .orElseThrow();

    private static Set<String> first(int cuts) {
        Set<String> made = new HashSet<>();
        for (int i = 1; i <= cuts; i++) {
            made.add(CUT.piece().id() + ":" + i);
        }
        return made;
    }

    @Test
    void each_cut_made_divides_one_part_in_two() {
        for (int cuts = 0; cuts <= CUT.tree().cuts().size(); cuts++) {
            List<CutTree> parts = CutSoFar.parts(CUT, first(cuts));
            assertThat(parts).hasSize(cuts + 1);
            assertThat(parts.stream()
                            .mapToDouble(part -> part.at().size().areaMm2())
                            .sum())
                    .isEqualTo(CUT.piece().areaMm2(), within(1e-3));
        }
        assertThat(CutSoFar.parts(CUT.asCut(CUT.tree()), Set.of()))
                .as("all of a piece that was cut before")
                .hasSize(CUT.tree().cuts().size() + 1);
    }

    @Test
    void patches_that_a_later_plan_does_not_use_are_fabric_again_with_numbers_of_their_own() {
        Plan before = past();
        List<Piece> freed = CutSoFar.freed(
                before, new Plan(before.story(), before.cloth(), before.rules(), List.of(), before.bound()), 2_000);
        assertThat(Worked.area(freed)).isEqualTo(Worked.patches(before, true), within(1e-3));
        for (int i = 0; i < freed.size(); i++) {
            assertThat(freed.get(i).row()).isEqualTo(2_000 + i);
            assertThat(freed.get(i).fabric()).isEqualTo(CUT.piece().fabric());
        }
        assertThat(CutSoFar.freed(before, before, 2_000)).as("all are used").isEmpty();
    }

    private static Plan past() {
        Plan plan = Worked.PLAN;
        return new Plan(
                plan.story(),
                plan.cloth(),
                plan.rules(),
                plan.cuts().stream()
                        .map(cut -> cut.equals(CUT) ? cut.asCut(cut.tree()) : cut)
                        .toList(),
                plan.bound());
    }

    @Test
    void a_late_slip_leaves_good_patches_and_what_was_not_cut_yet_but_nothing_of_the_spoiled_part() {
        Set<String> made = first(1);
        LateMiscut spoiled = LateMiscut.of(Worked.PLAN, made, CUT.piece().id(), Optional.empty(), 2_000);
        LateMiscut whole = LateMiscut.of(Worked.PLAN, made, "", Optional.empty(), 2_000);
        assertThat(spoiled.gone()).containsExactly(CUT.piece());
        assertThat(whole.gone()).containsExactly(CUT.piece());
        assertThat(Worked.area(spoiled.come())).isLessThanOrEqualTo(Worked.area(whole.come()));
        assertThat(spoiled.before().cuts()).hasSize(1).allMatch(PieceCut::past);

        Size rest = new Size(Length.inches(2), Length.inches(3));
        LateMiscut some = LateMiscut.of(Worked.PLAN, made, CUT.piece().id(), Optional.of(rest), 2_000);
        assertThat(some.come().get(some.come().size() - 1).size()).isEqualTo(rest);
        assertThat(some.come()).hasSize(spoiled.come().size() + 1);
        assertThat(LateMiscut.of(Worked.PLAN, Set.of(), "", Optional.empty(), 2_000)
                        .gone())
                .as("nothing was cut and nothing spoiled")
                .isEmpty();
    }
}
