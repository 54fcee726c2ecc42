package hearthcloth.work;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.deed.AllCut;
import hearthcloth.work.deed.Deed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** {@link OffcutsLeft}: what a cloth left over, and where it is. */
class OffcutsLeftTest {

    private static final Deed.Pieces CUT =
            new AllCut(Worked.kept(), Worked.NEXT).of("Dawn").pieces();

    private static final Stash AFTER = Worked.after(Worked.HEAP, CUT);

    @Test
    void every_offcut_that_came_back_is_there_the_largest_first() {
        OffcutsLeft left = OffcutsLeft.of(Worked.cut(), AFTER);
        assertThat(left.here()).containsExactlyInAnyOrderElementsOf(CUT.come());
        assertThat(left.all()).hasSameSizeAs(CUT.come());
        for (int i = 1; i < left.all().size(); i++) {
            assertThat(left.all().get(i).size().areaMm2())
                    .isLessThanOrEqualTo(left.all().get(i - 1).size().areaMm2());
        }
    }

    @Test
    void one_that_was_used_since_is_told_and_one_that_came_back_shorter_is_there_as_long_as_it_is() {
        Piece first = CUT.come().get(0);
        Stash without = Worked.after(AFTER, new Deed.Pieces(List.of(first), List.of()));
        OffcutsLeft used = OffcutsLeft.of(Worked.cut(), without);
        assertThat(used.all()).hasSameSizeAs(CUT.come());
        assertThat(used.here()).hasSize(CUT.come().size() - 1).doesNotContain(first);

        Size less = new Size(first.size().width(), first.size().height().minus(Length.inches(1, 8)));
        Piece shorter = new Piece(first.id(), first.fabric(), less, first.washed(), first.row());
        Stash now = Worked.after(without, new Deed.Pieces(List.of(), List.of(shorter)));
        assertThat(OffcutsLeft.of(Worked.cut(), now).here()).contains(shorter);
    }

    @Test
    void a_cut_that_is_asked_for_while_sewing_has_left_nothing_before_it_is_made() {
        List<PieceCut> cuts = new ArrayList<>();
        for (PieceCut cut : Worked.PLAN.cuts()) {
            cuts.add(cuts.isEmpty() ? cut.asCut(cut.tree()) : cut);
        }
        Plan plan = new Plan(Worked.PLAN.story(), Worked.PLAN.cloth(), Worked.PLAN.rules(), cuts, Worked.PLAN.bound());
        Project waits = new Project(
                Worked.kept().design(),
                Optional.of(plan),
                List.of(),
                Project.Bench.CLEAR,
                Worked.kept().life().at(Stage.RECUT));
        int ofFirst = OffcutsLeft.of(waits, AFTER).all().size();
        assertThat(ofFirst).isLessThan(CUT.come().size());
        assertThat(OffcutsLeft.of(waits.with(waits.life().at(Stage.CUT)), AFTER).all())
                .hasSameSizeAs(CUT.come());
    }
}
