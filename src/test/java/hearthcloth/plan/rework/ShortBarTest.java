package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The laws of a bar that is too short: every way is cut from pieces that are there, and nothing sewn is touched. */
class ShortBarTest {

    private static final Stash STASH = Stashes.scraps(90, 3);
    private static final List<Plan> PLANS = Planned.plans(STASH, 12, 3);
    private static final int NEXT = 5_000;

    private static Stash left(Plan plan) {
        List<Piece> pieces = new ArrayList<>(STASH.pieces());
        plan.cuts().forEach(cut -> pieces.remove(cut.piece()));
        return new Stash(pieces);
    }

    private static ShortBar shortBar(Plan plan, Design design, int sewn, Length by) {
        String bar = design.layout().slots().get(sewn).place().bar();
        Length measured = new RemainingPlan(plan, sewn, Map.of()).cutLength(bar).minus(by);
        return new ShortBar(
                new RemainingPlan(plan, sewn, Map.of(bar, measured)),
                bar,
                design,
                new RemainingPlan.Table(left(plan), NEXT, Ruler.EIGHTHS));
    }

    @Test
    void every_way_is_a_whole_plan_from_pieces_that_are_there() {
        Set<ShortBar.Kind> seen = new HashSet<>();
        for (Plan plan : PLANS) {
            Design design = DesignEdits.settled(plan, Order.ROUND);
            int sewn = design.layout().slots().size() / 2;
            for (ShortBar.Way way :
                    shortBar(plan, design, sewn, Length.inches(2)).ways(Budget.steps(4_000))) {
                seen.add(way.kind());
                RemainingPlan.Resewn resewn = way.resewn();
                resewn.plan().checked();
                assertThat(resewn.cuts())
                        .allMatch(cut -> left(plan).pieces().contains(cut.piece())
                                || resewn.come().contains(cut.piece()));
                assertThat(resewn.come()).allMatch(piece -> piece.row() >= NEXT);
                assertThat(way.told()).isNotEmpty();
                assertThat(resewn.plan().cloth().finished())
                        .isEqualTo(way.design().layout().finished());
                assertThat(names(resewn.plan())).isEqualTo(names(plan));
                assertThat(pastPieces(resewn.plan()))
                        .isEqualTo(pastPieces(plan.cuts().isEmpty() ? plan : asPast(plan)));
                if (way.kind() != ShortBar.Kind.TRIMMED) {
                    assertThat(resewn.plan().cloth().finished())
                            .isEqualTo(plan.cloth().finished());
                }
            }
        }
        assertThat(seen).contains(ShortBar.Kind.JOINED_STRIP, ShortBar.Kind.ANEW, ShortBar.Kind.TRIMMED);
    }

    private static Plan asPast(Plan plan) {
        return new Plan(
                plan.story(),
                plan.cloth(),
                plan.rules(),
                plan.cuts().stream().map(cut -> cut.asCut(cut.tree())).toList(),
                plan.bound());
    }

    /** Ids of what was cut before: all of it stays in the story where a cut was made or a patch is used. */
    private static List<String> pastPieces(Plan plan) {
        return plan.cuts().stream()
                .filter(cut -> cut.past() && !cut.tree().cuts().isEmpty())
                .map(cut -> cut.piece().id())
                .toList();
    }

    /** Names of hearth and bars, without their parts. */
    private static Set<String> names(Plan plan) {
        Set<String> names = new HashSet<>();
        plan.cloth().patches().forEach(patch -> names.add(patch.place().id().replaceFirst("\\..*", "")));
        return names;
    }

    @Test
    void trimmed_to_the_bar_the_work_is_smaller_by_what_is_missing_and_nothing_is_cut() {
        Plan plan = PLANS.get(0);
        Design design = DesignEdits.settled(plan, Order.ROUND);
        ShortBar bar = shortBar(plan, design, 3, Length.inches(1));
        Layout.Slot slot = design.layout().slots().get(3);
        ShortBar.Way way = bar.ways(Budget.steps(4_000)).stream()
                .filter(one -> one.kind() == ShortBar.Kind.TRIMMED)
                .findFirst()
                .orElseThrow();
        Length less = bar.missing().roundedTo(Ruler.EIGHTHS.step(), Rounding.UP);
        boolean upright = slot.place().side().isUpright();
        Length was = upright
                ? plan.cloth().finished().height()
                : plan.cloth().finished().width();
        Length is = upright
                ? way.design().layout().finished().height()
                : way.design().layout().finished().width();
        assertThat(was.minus(is)).isEqualTo(less);
        assertThat(way.resewn().cuts()).isEmpty();
    }

    @Test
    void a_bar_that_is_long_enough_is_said_to_be() {
        Plan plan = PLANS.get(0);
        Design design = DesignEdits.settled(plan, Order.ROUND);
        assertThatThrownBy(() -> shortBar(plan, design, 1, Length.ZERO).ways(Budget.steps(100)))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("is long enough");
    }

    @Test
    void a_bar_on_the_other_side_of_the_work_changes_places_and_no_bar_changes_its_cut() {
        Plan plan = PLANS.get(0);
        Design design = DesignEdits.settled(plan, Order.ROUND);
        OtherEdge other = OtherEdge.of(design, plan, "1A", 1).orElseThrow();
        assertThat(other.plan().cuts()).isEqualTo(plan.cuts());
        assertThat(names(other.plan())).isEqualTo(names(plan));
        assertThat(other.plan().cloth().finished()).isEqualTo(plan.cloth().finished());
        assertThat(other.design().layout().courses().get(0).side())
                .isEqualTo(design.layout().courses().get(0).side().opposite());
        // Its partner is sewn on already.
        assertThat(OtherEdge.of(design, plan, "1A", 3)).isEmpty();
        assertThat(OtherEdge.of(other.design(), other.plan(), "1A", 1)
                        .orElseThrow()
                        .plan()
                        .cloth())
                .isEqualTo(plan.cloth());
    }
}
