package hearthcloth.plan.propose;

import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.Optional;

/** Planned cloths for tests of what comes after planning. */
public final class Planned {

    private Planned() {}

    /** The proposals for a square of {@code inches} from a stash; at least one, or the test that asks fails. */
    public static List<Plan> plans(Stash stash, int inches, int proposals) {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(inches))), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), proposals, 1, Ruler.EIGHTHS));
        PlanOutcome outcome = Planner.plan(stash, wish, 1, Budget.steps(2_000), seen -> {});
        return ((PlanOutcome.Proposals) outcome).plans();
    }
}
