package hearthcloth.plan.patchwork;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.Direction;
import hearthcloth.plan.model.Patchwork.ScrapRule;
import hearthcloth.plan.model.Patchwork.ScrapWishes;
import hearthcloth.plan.model.Patchwork.Setting;
import hearthcloth.plan.model.Patchwork.Sizes;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Stash;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PatchworkPlannerTest {

    private static final Length LEAST = Length.inches(5, 4);

    private static Wish wish(Optional<Size> size, int proposals) {
        PiecingRules rules = new PiecingRules(LEAST, Length.inches(1), 4);
        Wish.Preferences preferences = new Wish.Preferences(List.of(), proposals, 1, Ruler.EIGHTHS);
        return new Wish(new Wish.Target(size, false), OpenShape.shape(), Making.inches(), rules, preferences);
    }

    private static PlanOutcome planned(Stash stash, Wish wish, Patchwork patchwork) {
        return PatchworkPlanner.plan(stash, wish, patchwork, 1, Budget.steps(Long.MAX_VALUE), told -> {});
    }

    private static List<Plan> plans(Stash stash, Wish wish, Patchwork patchwork) {
        return ((PlanOutcome.Proposals) planned(stash, wish, patchwork)).plans();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void scraps_become_a_cloth_of_exactly_the_wished_size_in_which_every_patch_shows_its_least(long seed) {
        Size size = new Size(Length.inches(36), Length.inches(481, 16));
        List<Plan> plans = plans(Stashes.scraps(50, seed), wish(Optional.of(size), 3), Patchwork.free());
        assertThat(plans).isNotEmpty();
        for (Plan plan : plans) {
            assertThat(plan.cloth().finished()).isEqualTo(size);
            for (Patch patch : plan.cloth().patches()) {
                assertThat(patch.size().width()).isGreaterThanOrEqualTo(LEAST);
                assertThat(patch.size().height()).isGreaterThanOrEqualTo(LEAST);
            }
        }
    }

    /** A heap as it comes, of which six sevenths have to be in the cloth: it takes longer to find, and is found. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void a_cloth_that_takes_most_of_a_heap_is_found_however_long_it_takes(long seed) {
        Stash heap = Heaps.wild(60, seed);
        double seam = 0.75 * 25.4;
        double net = heap.pieces().stream()
                .mapToDouble(piece -> (piece.size().width().in(Unit.MILLIMETRE) - seam)
                        * (piece.size().height().in(Unit.MILLIMETRE) - seam))
                .sum();
        Size size = Size.square(Length.inches((long) (Math.sqrt(0.86 * net) / 25.4)));
        assertThat(planned(heap, wish(Optional.of(size), 1), Patchwork.free()))
                .isInstanceOf(PlanOutcome.Proposals.class);
    }

    @Test
    void arrangements_that_are_offered_together_use_different_scraps() {
        Size size = Size.square(Length.inches(30));
        List<Plan> plans = plans(Stashes.scraps(60, 4), wish(Optional.of(size), 4), Patchwork.free());
        assertThat(plans).hasSizeGreaterThanOrEqualTo(2);
        Set<Set<String>> used = new HashSet<>();
        plans.forEach(plan -> used.add(
                Set.copyOf(plan.cuts().stream().map(cut -> cut.piece().id()).toList())));
        assertThat(used).hasSize(plans.size());
    }

    @Test
    void as_they_are_no_offcut_is_planned_for() {
        Size size = Size.square(Length.inches(34));
        Patchwork asTheyAre = new Patchwork(Optional.empty(), true, ScrapRule.AS_THEY_ARE);
        Plan plan = plans(Stashes.scraps(60, 5), wish(Optional.of(size), 1), asTheyAre)
                .get(0);
        double offcuts = plan.figures().areas().offcuts();
        assertThat(offcuts).isLessThan(0.03 * plan.figures().areas().used());
    }

    @Test
    void the_largest_square_lies_between_what_is_easy_and_what_the_fabric_could_make_at_all() {
        Stash stash = Stashes.scraps(40, 6);
        Plan plan = plans(stash, wish(Optional.empty(), 1), Patchwork.free()).get(0);
        double area = plan.cloth().finished().areaMm2();
        assertThat(area).isBetween(0.5 * stash.areaMm2(), stash.areaMm2());
    }

    @Test
    void a_size_beyond_the_fabric_is_proven_impossible_and_a_smaller_cloth_is_offered() {
        Stash stash = Stashes.scraps(20, 7);
        double side = Math.sqrt(stash.areaMm2());
        Size size = Size.square(Length.mm((long) side));
        PlanOutcome.CannotMake cannot =
                (PlanOutcome.CannotMake) planned(stash, wish(Optional.of(size), 1), Patchwork.free());
        assertThat(cannot.proven()).isTrue();
        assertThat(cannot.nearest()).hasSize(1);
        assertThat(cannot.nearest().get(0).cloth().finished().areaMm2()).isLessThan(size.areaMm2());
    }

    @ParameterizedTest
    @ValueSource(strings = {"STRAIGHT_FURROW", "BARN_RAISING", "TURNED_AT_WILL"})
    void nine_blocks_have_a_hearth_and_two_rounds_each_and_a_letter_each(String setting) {
        Blocks blocks = new Blocks(3, 3, 2, Order.ROUND, Optional.of(Setting.valueOf(setting)));
        Patchwork patchwork = new Patchwork(Optional.of(blocks), false, ScrapRule.EITHER);
        Plan plan = plans(Stashes.scraps(90, 8), wish(Optional.of(Size.square(Length.inches(42))), 1), patchwork)
                .get(0);
        assertThat(plan.cloth().patches()).hasSizeGreaterThanOrEqualTo(9 * 9);
        assertThat(plan.sources()).containsKeys("A1", "A9", "I1", "I9");
        assertThat(plan.cuts())
                .allSatisfy(cut -> assertThat(cut.tree().kept().size()).isLessThanOrEqualTo(4));
    }

    @Test
    void scraps_lie_round_a_log_cabin() {
        Blocks one = new Blocks(1, 1, 2, Order.ROUND, Optional.empty());
        Patchwork patchwork = new Patchwork(Optional.of(one), true, ScrapRule.EITHER);
        Size size = Size.square(Length.inches(44));
        Plan plan = plans(Stashes.scraps(60, 9), wish(Optional.of(size), 1), patchwork)
                .get(0);
        assertThat(plan.cloth().finished()).isEqualTo(size);
        assertThat(plan.sources()).containsKeys("A1", "A9");
        assertThat(plan.cuts().stream().filter(cut -> cut.tree() instanceof CutTree.Kept))
                .isNotEmpty();
    }

    @Test
    void of_two_lengths_of_fabric_a_piece_gives_two_or_three_patches() {
        Size size = Size.square(Length.inches(40));
        List<Plan> plans = plans(Stashes.yardage(), wish(Optional.of(size), 6), Patchwork.free());
        assertThat(plans)
                .anySatisfy(plan -> assertThat(plan.cuts())
                        .anySatisfy(cut -> assertThat(cut.tree().kept().size()).isBetween(2, 3)));
    }

    @Test
    void just_beyond_what_the_heap_makes_the_cloth_offered_is_hardly_smaller_and_the_fabric_that_is_lacking_is_told() {
        Stash stash = Stashes.scraps(30, 10);
        Plan largest = plans(stash, wish(Optional.empty(), 1), Patchwork.free()).get(0);
        Length side = largest.cloth().finished().width().plus(Length.inches(2));
        PlanOutcome outcome = planned(stash, wish(Optional.of(Size.square(side)), 1), Patchwork.free());
        assertThat(outcome).isInstanceOf(PlanOutcome.CannotMake.class);
        PlanOutcome.CannotMake cannot = (PlanOutcome.CannotMake) outcome;
        Length made = cannot.nearest().get(0).cloth().finished().width();
        assertThat(made.times(100)).isGreaterThan(side.times(86));
        assertThat(cannot.why()).anySatisfy(why -> assertThat(why).asString().contains("one more piece"));
    }

    private static Patchwork wished(ScrapWishes wishes) {
        return new Patchwork(Optional.empty(), true, ScrapRule.EITHER, wishes);
    }

    private static Set<String> used(Plan plan) {
        Set<String> used = new HashSet<>();
        plan.cuts().forEach(cut -> used.add(cut.piece().id()));
        return used;
    }

    @Test
    void pieces_that_must_be_in_are_in_every_arrangement_and_no_more_is_trimmed_than_is_allowed() {
        Stash stash = Stashes.scraps(40, 5);
        List<String> must =
                List.of(stash.pieces().get(7).id(), stash.pieces().get(21).id());
        Length most = Length.inches(2);
        ScrapWishes wishes = new ScrapWishes(must, Optional.empty(), Optional.of(most), Sizes.MIXED, Direction.ANY);
        Size size = Size.square(Length.inches(30));
        List<Plan> plans = plans(stash, wish(Optional.of(size), 3), wished(wishes));
        assertThat(plans).isNotEmpty();
        for (Plan plan : plans) {
            assertThat(used(plan)).containsAll(must);
            assertThat(plan.cloth().finished()).isEqualTo(size);
        }
    }

    @Test
    void a_piece_in_the_middle_lies_there_as_it_is() {
        Stash stash = Stashes.scraps(40, 5);
        var piece = stash.pieces().get(3);
        ScrapWishes wishes =
                new ScrapWishes(List.of(), Optional.of(piece.id()), Optional.empty(), Sizes.ANY, Direction.ANY);
        Plan plan = plans(stash, wish(Optional.of(Size.square(Length.inches(36))), 1), wished(wishes))
                .get(0);
        var cut = plan.cuts().stream()
                .filter(one -> one.piece().id().equals(piece.id()))
                .findFirst()
                .orElseThrow();
        assertThat(cut.tree().kept()).hasSize(1);
        String place = cut.tree().kept().get(0).patch();
        var laid = plan.cloth().laid().stream()
                .filter(one -> one.patch().place().id().equals(place))
                .findFirst()
                .orElseThrow();
        double middle = laid.at().x().nm() + laid.at().width().nm() / 2.0;
        assertThat(middle / plan.cloth().finished().width().nm()).isBetween(0.45, 0.55);
    }

    @ParameterizedTest
    @EnumSource(
            value = Direction.class,
            names = {"ACROSS", "DOWN"})
    void bands_run_from_rim_to_rim(Direction direction) {
        ScrapWishes wishes = new ScrapWishes(List.of(), Optional.empty(), Optional.empty(), Sizes.ANY, direction);
        Size size = new Size(Length.inches(30), Length.inches(36));
        Plan plan = plans(Stashes.scraps(60, 5), wish(Optional.of(size), 1), wished(wishes))
                .get(0);
        assertThat(plan.cloth().finished()).isEqualTo(size);
        Join join = direction == Direction.ACROSS ? Join.BELOW : Join.BESIDE;
        assertThat(plan.cloth().work())
                .isInstanceOfSatisfying(
                        Seam.class, seam -> assertThat(seam.join()).isEqualTo(join));
    }

    @Test
    void a_piece_that_is_not_there_is_said() {
        ScrapWishes wishes =
                new ScrapWishes(List.of("999"), Optional.empty(), Optional.empty(), Sizes.ANY, Direction.ANY);
        PlanOutcome outcome =
                planned(Stashes.scraps(20, 1), wish(Optional.of(Size.square(Length.inches(20))), 1), wished(wishes));
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        PlanOutcome.CannotMake.class,
                        none -> assertThat(none.why())
                                .hasToString(
                                        "[There is no piece 999 that a patch can be cut from; look it up in the stash.]"));
    }
}
