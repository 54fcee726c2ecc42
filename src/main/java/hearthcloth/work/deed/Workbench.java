package hearthcloth.work.deed;

import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.stash.Stash;
import hearthcloth.work.Project;

/**
 * A cloth and what there is to go on with.
 *
 * @param cloth as it stands; planned
 * @param stash what it may be planned from: free, or counted on by itself
 * @param next the first number that is free for a new piece
 * @param ruler it is cut with
 */
public record Workbench(Project cloth, Stash stash, int next, Ruler ruler) {

    Plan plan() {
        return cloth.plan().orElseThrow();
    }

    RemainingPlan.Table table() {
        return new RemainingPlan.Table(stash, next, ruler);
    }
}
