package hearthcloth.work.design;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Stash;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Purpose;
import hearthcloth.work.Worked;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What she decides of a cloth before it is cut: {@link ClothKept}, {@link DesignSettled}, {@link SameDesign}, {@link OwnRuler},
 * {@link LockTurned}, {@link ColoursAgain}, {@link ClothCopied}, {@link GuidelineFollowed}, {@link NearestDesigns}.
 */
class DecidingTest {

    private static final Purpose BOX = new Purpose("box 30 x 20 x 8 cm", "", "");

    private static DesignSettled settled(Project cloth) {
        return new DesignSettled(cloth, "Dawn", Worked.HEAP);
    }

    /** A hearth for which no piece of the heap is large enough. */
    private static Design huge() {
        return new DesignEdits(Worked.kept().design()).hearth(Size.square(Length.inches(60)));
    }

    private static Project lacking() {
        return settled(Worked.kept()).in(huge(), Worked.steps());
    }

    @Test
    void a_plan_that_is_kept_is_decided_bar_by_bar_and_remembers_its_gift_and_its_paper() {
        Project kept = new ClothKept(Worked.PLAN).on(BOX, "letter");
        assertThat(kept.plan()).contains(Worked.PLAN);
        assertThat(kept.design())
                .isEqualTo(DesignEdits.settled(Worked.PLAN, kept.design().order()));
        assertThat(kept.design().layout().slots()).isNotEmpty();
        assertThat(kept.life().purpose()).isEqualTo(BOX);
        assertThat(kept.life().paper()).isEqualTo("letter");
        assertThat(kept.life().stage()).isEqualTo(Stage.DESIGNED);
        assertThat(kept.bench()).isEqualTo(Project.Bench.CLEAR);
    }

    @Test
    void the_order_of_a_kept_cloth_is_read_off_its_first_round() {
        Design round = Worked.kept().design();
        for (Order order : Order.values()) {
            Project other = settled(Worked.kept()).in(new DesignEdits(round).order(order), Worked.steps());
            other.plan()
                    .ifPresent(plan ->
                            assertThat(new ClothKept(plan).design().order()).isEqualTo(order));
        }
    }

    @Test
    void a_changed_design_is_planned_or_says_what_it_lacks_and_bench_and_life_stay() {
        Design wider = new DesignEdits(Worked.kept().design())
                .bars(
                        List.of(0),
                        new DesignEdits(Worked.kept().design()).barCut(0).plus(Length.inches(1, 8)));
        Project was = Worked.kept().with(Worked.kept().bench().withLocked(Set.of("hearth")));
        Project now = settled(was).in(wider, Worked.steps());
        assertThat(now.plan()).isPresent();
        assertThat(now.lacking()).isEmpty();
        assertThat(now.design().layout()).isEqualTo(wider.layout());
        assertThat(now.bench()).isEqualTo(was.bench());
        assertThat(now.life()).isEqualTo(was.life());

        Project lacking = lacking();
        assertThat(lacking.plan()).isEmpty();
        assertThat(lacking.lacking()).isNotEmpty();
        assertThat(lacking.design()).isEqualTo(huge());
    }

    @Test
    void a_cloth_of_any_fabrics_is_bound_to_those_it_was_planned_from() {
        Design any = new DesignEdits(Worked.kept().design()).fabrics(0, Worked.HEAP.fabrics());
        Project now = settled(Worked.kept()).in(any, Worked.steps());
        assertThat(any.scheme().bars().get(0)).hasSizeGreaterThan(1);
        assertThat(now.design().scheme().bars().get(0).size())
                .isLessThan(any.scheme().bars().get(0).size());
        assertThat(now.plan().orElseThrow().fabrics())
                .containsAll(now.design().scheme().bars().get(0));
    }

    @Test
    void a_cloth_keeps_its_ruler_from_the_first_cut_on() {
        Project kept = Worked.kept();
        assertThat(new OwnRuler(kept, Ruler.MILLIMETRES).own()).isEqualTo(Ruler.EIGHTHS);
        assertThat(new OwnRuler(kept, Ruler.MILLIMETRES).isOther()).isTrue();
        assertThat(new OwnRuler(kept, Ruler.EIGHTHS).isOther()).isFalse();
        assertThat(new OwnRuler(kept, Ruler.MILLIMETRES).isBegun()).isFalse();
        assertThat(new OwnRuler(kept, Ruler.EIGHTHS).toNewMarks()).isEmpty();

        Design marks = new OwnRuler(kept, Ruler.MILLIMETRES).toNewMarks().orElseThrow();
        assertThat(marks.making().margins().mark()).isEqualTo(Ruler.MILLIMETRES.step());

        for (Project begun : List.of(Worked.ticked("2:1"), Worked.cut())) {
            assertThat(new OwnRuler(begun, Ruler.MILLIMETRES).isBegun()).isTrue();
            assertThat(new OwnRuler(begun, Ruler.MILLIMETRES).toNewMarks()).isEmpty();
        }
    }

    @Test
    void planned_again_it_goes_to_the_new_marks_where_the_fabric_suffices_and_else_stays() {
        Project again = new SameDesign(settled(Worked.kept()), Ruler.MILLIMETRES, "a4").again(Worked::steps);
        Ruler own = new OwnRuler(again, Ruler.MILLIMETRES).own();
        assertThat(again.plan()).isPresent();
        assertThat(again.life().paper()).isEqualTo(own == Ruler.MILLIMETRES ? "a4" : null);

        Project same = new SameDesign(settled(Worked.kept()), Ruler.EIGHTHS, "letter").again(Worked::steps);
        assertThat(same.design().layout()).isEqualTo(Worked.kept().design().layout());
        assertThat(same.plan()).isPresent();

        Project begun = Worked.ticked("2:1");
        Project stays = new SameDesign(settled(begun), Ruler.MILLIMETRES, "a4").again(Worked::steps);
        assertThat(new OwnRuler(stays, Ruler.MILLIMETRES).own()).isEqualTo(Ruler.EIGHTHS);
    }

    @Test
    void a_lock_is_turned_and_turned_back() {
        LockTurned on = new LockTurned(Worked.kept(), "1A");
        assertThat(on.isOn()).isTrue();
        Project locked = on.told("lock").edited().orElseThrow();
        assertThat(locked.bench().locked()).containsExactly("1A");
        LockTurned off = new LockTurned(locked, "1A");
        assertThat(off.isOn()).isFalse();
        assertThat(off.told("unlock").edited()).contains(Worked.kept());
    }

    @Test
    void colours_planned_again_leave_what_is_locked() {
        Project locked = Worked.kept().with(Worked.kept().bench().withLocked(Set.of("hearth", "1A", "2B")));
        DesignFit.Wished open = new DesignFit.Wished(Optional.empty(), Contrast.READS);
        Design other = new ColoursAgain(locked, Worked.HEAP)
                .other(open, 0, Worked.steps())
                .orElseThrow();
        assertThat(other.scheme()).isNotEqualTo(locked.design().scheme());
        assertThat(other.layout()).isEqualTo(locked.design().layout());
        assertThat(other.scheme().hearth()).isEqualTo(locked.design().scheme().hearth());
        for (int bar = 0; bar < other.layout().slots().size(); bar++) {
            String name = other.layout().slots().get(bar).place().bar();
            if (name.equals("1A") || name.equals("2B")) {
                assertThat(other.scheme().bars().get(bar))
                        .isEqualTo(locked.design().scheme().bars().get(bar));
            }
        }
    }

    @Test
    void a_copy_is_begun_anew_with_the_same_locks() {
        Project first = Worked.ticked("2:1").with(Worked.ticked("2:1").bench().withLocked(Set.of("1A")));
        Project copy = new ClothCopied(first, BOX, "a4").like(Worked.HEAP, "Dawn", Worked.steps());
        assertThat(copy.plan()).contains(Worked.PLAN);
        assertThat(copy.bench()).isEqualTo(Project.Bench.CLEAR.withLocked(Set.of("1A")));
        assertThat(copy.life().purpose()).isEqualTo(BOX);
        assertThat(copy.life().paper()).isEqualTo("a4");
        Project changed = new ClothCopied(first, BOX, "a4").in(huge(), Worked.HEAP, "Dawn", Worked.steps());
        assertThat(changed.design()).isEqualTo(huge());
        assertThat(changed.bench().ticked()).isEmpty();
    }

    @Test
    void a_guideline_is_followed_in_her_own_fabric_or_says_what_it_lacks() {
        Project hers = new GuidelineFollowed(Worked.kept().design(), "Dawn", "a4").from(Worked.HEAP, Worked.steps());
        assertThat(hers.plan()).isPresent();
        assertThat(hers.life().purpose()).isEqualTo(Purpose.NOTHING);
        assertThat(hers.life().paper()).isEqualTo("a4");
        Stash one = new Stash(Worked.HEAP.pieces().subList(0, 1));
        Project little = new GuidelineFollowed(Worked.kept().design(), "Dawn", "a4").from(one, Worked.steps());
        assertThat(little.plan()).isEmpty();
        assertThat(little.lacking()).isNotEmpty();
    }

    @Test
    void beside_a_cloth_that_lacks_fabric_stand_the_nearest_that_can_be_cut_each_other_in_one_thing() {
        DesignEdits edits = new DesignEdits(Worked.kept().design());
        // More rounds than the heap has fabric for.
        Project lacking = settled(Worked.kept()).in(edits.rounds(edits.rounds() + 4), Worked.steps());
        assertThat(lacking.plan()).isEmpty();
        NearestDesigns nearest = new NearestDesigns(lacking, "Dawn", Worked.HEAP);
        List<NearestDesigns.Near> found = nearest.found(Worked::steps);

        assertThat(found).isNotEmpty().doesNotHaveDuplicates();
        for (NearestDesigns.Near near : found) {
            assertThat(Worked.HEAP.pieces())
                    .containsAll(near.plan().cuts().stream()
                            .<hearthcloth.stash.Piece>map(cut -> cut.piece())
                            .toList());
            assertThat(near.plan().cloth().finished())
                    .isEqualTo(near.design().layout().finished());
            Project taken = nearest.taken(near);
            assertThat(taken.plan()).contains(near.plan());
            assertThat(taken.lacking()).isEmpty();
            assertThat(taken.life()).isEqualTo(lacking.life());
            assertThat(nearest.of(near.kind(), Worked.steps()))
                    .as("what was shown is found again")
                    .contains(near);
        }
        assertThat(found)
                .filteredOn(near -> near.kind() == NearestDesigns.Kind.ROUNDS)
                .allMatch(near -> new DesignEdits(near.design()).rounds() < edits.rounds() + 4)
                .isNotEmpty();
    }

    @Test
    void a_hearth_for_which_no_piece_is_large_enough_is_offered_smaller() {
        Design larger = new DesignEdits(Worked.kept().design()).hearth(new Size(Length.inches(18), Length.inches(19)));
        Project lacking = settled(Worked.kept()).in(larger, Worked.steps());
        if (lacking.plan().isEmpty()) {
            Optional<NearestDesigns.Near> near =
                    new NearestDesigns(lacking, "Dawn", Worked.HEAP).of(NearestDesigns.Kind.HEARTH, Worked.steps());
            assertThat(near).isPresent();
            Size is = new DesignEdits(near.get().design()).hearthCut();
            assertThat(is.width()).isLessThan(Length.inches(18));
            assertThat(is.width().nm() % Length.inches(1, 8).nm())
                    .as("on a mark")
                    .isZero();
        }
        assertThat(new NearestDesigns(lacking, "Dawn", new Stash(List.of())).found(() -> Budget.steps(100)))
                .isEmpty();
    }
}
