package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two plans of colour wished together: both names are true of every cloth that is offered. */
class MixedColoursTest {

    /** Three light and three dark fabrics, one of the dark ones a bright red; a length of each. */
    private static final Stash HEAP = heap(0xf8f8f4, 0xe6dcc8, 0xd8e0d0, 0x24243c, 0x2e2e2e, 0xb01818);

    private static Stash heap(int... colours) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < colours.length; i++) {
            Fabric fabric = Trials.fabric("F" + i, colours[i]);
            pieces.add(Trials.piece(2 + i, fabric, 320, 400));
        }
        return new Stash(pieces);
    }

    private static List<Plan> plans(Scheme.Kind first, Scheme.Kind with) {
        Wish wish = ChoiceTest.wish(Optional.of(Size.square(Length.inches(30))))
                .coloured(Optional.of(first), Contrast.READS)
                .mixed(Optional.of(with));
        return Planner.plan(HEAP, wish, 1, Budget.steps(6_000), seen -> {}) instanceof PlanOutcome.Proposals found
                ? found.plans()
                : List.of();
    }

    @ParameterizedTest
    @CsvSource({"HALVES, SCATTERED", "HALVES, ACCENT", "TURNS, ACCENT", "SPIRAL, SCATTERED", "SCATTERED, ACCENT"})
    void both_names_are_true(Scheme.Kind first, Scheme.Kind with) {
        List<Plan> plans = plans(first, with);
        assertThat(plans).isNotEmpty();
        for (Plan plan : plans) {
            assertThat(SchemeRule.holds(first, plan.cloth(), plan.fabrics())).isTrue();
            assertThat(SchemeRule.holds(with, plan.cloth(), plan.fabrics())).isTrue();
        }
    }

    @Test
    void a_second_plan_of_colour_is_nothing_without_a_first() {
        Wish open = ChoiceTest.wish(Optional.of(Size.square(Length.inches(30))));
        assertThat(open.mixed(Optional.of(Scheme.Kind.ACCENT))).isEqualTo(open);
    }
}
