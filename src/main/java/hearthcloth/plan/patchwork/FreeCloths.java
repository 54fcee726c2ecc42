package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.piecing.FreePiecing;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.PiecingPlan;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.compose.Composed;
import hearthcloth.cutstock.piecing.compose.Composition;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.parameter.PatchworkParameters;
import java.util.List;
import java.util.Optional;

/** Searches one cloth of scraps and arranges it. */
final class FreeCloths {

    private static final long CHANGES = PatchworkParameters.standard().free().changes();

    private final MarkedHeap heap;
    private final long seed;

    FreeCloths(MarkedHeap heap, long seed) {
        this.heap = heap;
        this.seed = seed;
    }

    /**
     * A cloth found.
     *
     * @param made the size it has
     * @param full whether that is the wished size
     */
    record Found(Pieced tree, Size made, boolean full) {}

    /** What is asked of the search. */
    PiecingJob job(Size wished, boolean offcuts) {
        return new PiecingJob(List.of(heap.wished(wished)), heap.scraps(), heap.allowances(), heap.terms(offcuts));
    }

    /** The best cloth within the budget; smaller than wished where that size is not found. */
    Optional<Found> search(Size wished, boolean offcuts, Budget budget) {
        PiecingPlan plan = new FreePiecing(job(wished, offcuts)).search(budget::spent, seed, better -> {});
        return plan.cloths().stream().findFirst().map(cloth -> {
            boolean full = plan.figures().full();
            Size made = full
                    ? wished
                    : new Size(
                            heap.finished(net(cloth.made().width())),
                            heap.finished(net(cloth.made().height())));
            return new Found(cloth.tree(), made, full);
        });
    }

    /** Whether the size is found within the budget; ends as soon as it is. */
    boolean makes(Size wished, boolean offcuts, Budget budget) {
        boolean[] found = {false};
        new FreePiecing(job(wished, offcuts))
                .search(
                        () -> found[0] || budget.spent(),
                        seed,
                        better -> found[0] |= better.figures().full());
        return found[0];
    }

    /** The seams of a cloth that is not arranged any more. */
    Composed judged(Pieced tree) {
        return composition(tree).compose(() -> true);
    }

    /** Whether there is net area enough. */
    boolean mayMake(Size size) {
        return heap.netMarks(size.width()) * heap.netMarks(size.height()) <= heap.netArea();
    }

    private long net(long finishedMarks) {
        return finishedMarks + 2 * heap.allowances().hem() - heap.allowances().seam();
    }

    /** The same cloth arranged so that seams keep clear of each other and no fabric lies beside itself. */
    Composed arranged(Pieced tree) {
        return composition(tree).compose(Budget.steps(CHANGES * tree.patches().count())::spent);
    }

    private Composition composition(Pieced tree) {
        List<Scrap> scraps = heap.scraps();
        Composition.Spacing spacing = new Composition.Spacing(
                heap.allowances().seam(), heap.terms(true).clearance(), 0);
        return new Composition(
                tree,
                spacing,
                scrap -> scraps.get(scrap).fabric(),
                scrap -> scraps.get(scrap).turnable(),
                seed);
    }
}
