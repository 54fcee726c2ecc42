package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.propose.Stashes;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Guides of plans that the planner made out of odd scraps. */
class PlannedGuideTest {

    private static final long STEPS = 200;

    @Test
    void cuts_can_be_followed_blindly_and_every_number_lies_on_the_ruler() {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.parse("20 in")), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 3, 1, Ruler.EIGHTHS));
        PlanOutcome outcome = Planner.plan(Stashes.scraps(40, 5), wish, 1, Budget.steps(STEPS), progress -> {});

        assertThat(outcome).isInstanceOf(PlanOutcome.Proposals.class);
        for (Plan plan : ((PlanOutcome.Proposals) outcome).plans()) {
            Guide guide = Guide.of(plan, Ruler.EIGHTHS);
            BlindCutter.cuts(plan, guide.cutting());
            assertThat(guide.sewing().seams()).hasSize(plan.cloth().patches().size() - 1);
            assertThat(GuideText.of(guide))
                    .doesNotContain("should now measure about", "too long and runs past the null");
        }
    }
}
