package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The nearest cloth to blocks or scraps that cannot be made at all as they are wished: of fewer rounds, of fewer blocks, of
 * scraps alone, of any fabrics, or else with one hearth and bars round it.
 */
record NearestPatchwork(Stash stash, Wish wish, Patchwork patchwork) {

    /** The first that is found; empty where the stash makes nothing. */
    List<Plan> found(Budget budget) {
        for (Patchwork other : relaxed()) {
            Optional<Plan> near = first(PatchworkPlanner.asWished(stash, wish, other, 1, budget, seen -> {}));
            if (near.isPresent()) {
                return List.of(near.get());
            }
        }
        if (!wish.preferences().fabrics().isEmpty()) {
            Wish open = wish.withFabricsOpen();
            Optional<Plan> near = first(PatchworkPlanner.asWished(stash, open, patchwork, 1, budget, seen -> {}));
            return near.isPresent() ? List.of(near.get()) : new NearestPatchwork(stash, open, patchwork).found(budget);
        }
        return first(Planner.plan(stash, wish.withShapeOpen(), 1, budget, seen -> {})).stream()
                .toList();
    }

    private static Optional<Plan> first(PlanOutcome outcome) {
        List<Plan> plans = outcome instanceof PlanOutcome.Proposals found
                ? found.plans()
                : ((PlanOutcome.CannotMake) outcome).nearest();
        return plans.stream().findFirst();
    }

    /** What is wished with ever less of it. */
    private List<Patchwork> relaxed() {
        List<Patchwork> other = new ArrayList<>();
        patchwork.blocks().ifPresent(blocks -> {
            if (blocks.rounds() > 1) {
                other.add(of(blocks, blocks.across(), blocks.down(), blocks.rounds() / 2));
            }
            if (blocks.across() * blocks.down() > 1) {
                other.add(of(blocks, (blocks.across() + 1) / 2, (blocks.down() + 1) / 2, 1));
            }
        });
        other.add(Patchwork.free());
        other.remove(patchwork);
        return other;
    }

    private Patchwork of(Blocks blocks, int across, int down, int rounds) {
        return new Patchwork(
                Optional.of(new Blocks(across, down, rounds, blocks.order(), blocks.setting())),
                patchwork.scraps(),
                patchwork.cutting());
    }
}
