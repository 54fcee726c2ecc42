package hearthcloth.cutstock.piecing.cabin;

import hearthcloth.cutstock.piecing.tree.Pieced;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** Tries blocks again and again with other chances and keeps the best trial. */
public final class CabinSearch {

    private CabinSearch() {}

    /**
     * The blocks at cut sizes, in the order of the job; empty where none of the trials made all of them.
     *
     * @param spent asked before each trial; true ends the search
     */
    public static Optional<List<Pieced>> search(CabinJob job, BooleanSupplier spent, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Optional<List<Pieced>> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        while (!spent.getAsBoolean()) {
            CabinTrial trial = new CabinTrial(job, chance.split());
            Optional<List<Pieced>> blocks = trial.blocks();
            if (blocks.isPresent() && trial.cost() < least) {
                least = trial.cost();
                best = blocks;
            }
        }
        return best;
    }
}
