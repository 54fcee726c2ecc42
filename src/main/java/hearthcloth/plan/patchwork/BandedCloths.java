package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.piecing.FreePiecing;
import hearthcloth.cutstock.piecing.PiecedCloth;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.PiecingPlan;
import hearthcloth.cutstock.piecing.WishedCloth;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork.Direction;
import hearthcloth.plan.parameter.PatchworkParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** A cloth of bands from rim to rim, each pieced of scraps, in breadths that differ a little. */
final class BandedCloths {

    private static final PatchworkParameters.Bands BANDS =
            PatchworkParameters.standard().bands();

    private final MarkedHeap heap;
    private final Direction direction;
    private final long seed;

    BandedCloths(MarkedHeap heap, Direction direction, long seed) {
        this.heap = heap;
        this.direction = direction;
        this.seed = seed;
    }

    /**
     * A cloth of the wished size, its bands above or beside each other; empty where none was found.
     *
     * @param budget for each number of bands that is tried
     */
    Optional<Pieced> search(Size wished, boolean offcuts, Supplier<Budget> budget) {
        long width = heap.netMarks(wished.width());
        long height = heap.netMarks(wished.height());
        long whole = direction == Direction.ACROSS ? height : width;
        int usual = (int) Math.round(whole / (BANDS.breadth() * Math.sqrt(heap.middleArea())));
        for (int more : BANDS.more()) {
            int count = Math.max(BANDS.fewest(), Math.min(BANDS.most(), usual)) + more;
            List<Long> breadths = breadths(whole, count);
            if (count >= BANDS.fewest() && breadths.stream().allMatch(breadth -> breadth >= heap.leastNet())) {
                Optional<Pieced> tree =
                        bands(breadths, direction == Direction.ACROSS ? width : height, offcuts, budget.get());
                if (tree.isPresent()) {
                    return tree;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Pieced> bands(List<Long> breadths, long length, boolean offcuts, Budget budget) {
        boolean across = direction == Direction.ACROSS;
        List<WishedCloth> bands = breadths.stream()
                .map(breadth -> across ? heap.ofNet(length, breadth) : heap.ofNet(breadth, length))
                .toList();
        PiecingJob job = new PiecingJob(bands, heap.scraps(), heap.allowances(), heap.terms(offcuts));
        PiecingPlan plan = new FreePiecing(job).search(budget::spent, seed, better -> {});
        return plan.figures().full()
                ? plan.cloths().stream().map(PiecedCloth::tree).reduce((a, b) -> new Joint(!across, a, b))
                : Optional.empty();
    }

    /** Whole marks that add up. */
    private List<Long> breadths(long whole, int count) {
        SplittableRandom chance = new SplittableRandom(seed);
        double[] weights = new double[Math.max(1, count)];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = 1 + BANDS.uneven() * (2 * chance.nextDouble() - 1);
            sum += weights[i];
        }
        List<Long> breadths = new ArrayList<>();
        double reached = 0;
        for (double weight : weights) {
            long from = Math.round(whole * reached / sum);
            reached += weight;
            breadths.add(Math.round(whole * reached / sum) - from);
        }
        return breadths;
    }
}
