package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.function.Consumer;

/**
 * From a wish and a heap to cloths of scraps or of small log cabins. The same stash, wish and effort give the same cloths, as
 * long as the budget does not end first.
 */
public final class PatchworkPlanner {

    private PatchworkPlanner() {}

    /**
     * Plans cloths.
     *
     * @param effort how long is searched, 1 and more, counted in steps
     * @param budget ends the search early, but not before a first cloth is found or found to be out of reach
     * @param seen receives how far the search has come, on the calling thread
     */
    public static PlanOutcome plan(
            Stash stash, Wish wish, Patchwork patchwork, int effort, Budget budget, Consumer<PlanProgress> seen) {
        PlanOutcome outcome = asWished(stash, wish, patchwork, effort, budget, seen);
        boolean isBare = outcome instanceof PlanOutcome.CannotMake cannot
                && cannot.nearest().isEmpty()
                && !stash.pieces().isEmpty();
        if (!isBare) {
            return outcome;
        }
        PlanOutcome.CannotMake cannot = (PlanOutcome.CannotMake) outcome;
        return new PlanOutcome.CannotMake(
                cannot.proven(), cannot.why(), new NearestPatchwork(stash, wish, patchwork).found(budget));
    }

    /** The same; where it cannot be made, the nearest is looked for among smaller ones of its kind alone. */
    static PlanOutcome asWished(
            Stash stash, Wish wish, Patchwork patchwork, int effort, Budget budget, Consumer<PlanProgress> seen) {
        Stash chosen = wish.preferences().fabrics().isEmpty()
                ? stash
                : stash.only(wish.preferences().fabrics());
        MarkedHeap heap = MarkedHeap.of(chosen.pieces(), chosen.fabrics(), wish);
        if (heap.pieces().isEmpty()) {
            return new PlanOutcome.CannotMake(true, List.of(none(chosen, wish)), List.of());
        }
        PatchworkEffort work = new PatchworkEffort(effort, budget, seen);
        return patchwork
                .blocks()
                .map(blocks -> new BlockPlanning(heap, patchwork, blocks, work).outcome())
                .orElseGet(() -> new FreePlanning(heap, patchwork, work).outcome());
    }

    private static Sentence none(Stash stash, Wish wish) {
        return stash.pieces().isEmpty()
                ? PlanningSentences.stashEmpty()
                : PlanningSentences.scrapsTooSmall(Argument.of(wish.rules().leastPiece(), Rounding.UP));
    }
}
