package hearthcloth.cutstock.bound;

import hearthcloth.cutstock.job.BarClass;
import hearthcloth.cutstock.job.CutJoinBounds;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.join.JoinBounds;
import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.List;

/**
 * Bounds that no plan can beat, and proofs that there is no plan: each class of bars by itself, with all the lanes it
 * could get. They are valid because ignoring what the other classes need only makes a plan easier.
 */
public final class CutBounds {

    private final CutJoinJob job;
    private final List<BarClass> classes;

    public CutBounds(CutJoinJob job) {
        this.job = job;
        this.classes = BarClass.of(job);
    }

    /** The bounds of a job that nothing proves impossible. */
    public CutJoinBounds bounds() {
        int joins = classes.stream().mapToInt(BarClass::joins).sum();
        List<FabricBounds> families = FabricBounds.of(job, needs());
        return new CutJoinBounds(
                joins,
                families.stream().mapToDouble(FabricBounds::used).reduce(0, Double::sum),
                families.stream().mapToDouble(FabricBounds::touched).reduce(0, Double::sum),
                families.stream().mapToDouble(FabricBounds::lost).reduce(0, Double::sum));
    }

    /** Improves the bounds on joins, class by class, until they reach what a plan has. */
    public void raise(int planJoins, Budget budget) {
        for (BarClass kind : classes) {
            int others = classes.stream().mapToInt(BarClass::joins).sum() - kind.joins();
            kind.raise(planJoins - others, budget);
        }
    }

    /**
     * Every demand with the least area of its parts; the area that a class loses in joins is assigned to its first bar.
     */
    private List<FabricBounds.Need> needs() {
        List<FabricBounds.Need> needs = new ArrayList<>();
        job.blocks().forEach(block -> needs.add(new FabricBounds.Need(block, (double) block.width() * block.height())));
        for (BarClass kind : classes) {
            double joined = kind.joinedArea();
            for (JobBar bar : kind.bars()) {
                needs.add(new FabricBounds.Need(bar, (double) bar.width() * bar.length() + joined));
                joined = 0;
            }
        }
        return needs;
    }

    /** Everything that is provably short; empty if this proves nothing. */
    public List<Shortage> shortages() {
        List<Shortage> found = new ArrayList<>();
        for (BarClass kind : classes) {
            JoinBounds bounds = kind.bounds();
            long missing = bounds.missing();
            if (missing > 0) {
                List<Integer> ids = kind.bars().stream().map(JobBar::id).toList();
                found.add(new Shortage(ids, kind.kind().fabrics(), kind.kind().width(), missing));
            } else {
                kind.bars().forEach(bar -> tooManyJoins(kind, bar, bounds, found));
            }
        }
        job.blocks().stream()
                .filter(block -> job.stock().stream().noneMatch(piece -> fits(block, piece)))
                .forEach(block ->
                        found.add(new Shortage(List.of(block.id()), block.fabrics(), block.width(), block.height())));
        return found;
    }

    private void tooManyJoins(BarClass kind, JobBar bar, JoinBounds bounds, List<Shortage> found) {
        long reach = bounds.reach(bar.mostJoins() + 1);
        if (reach < bar.length()) {
            found.add(new Shortage(List.of(bar.id()), bar.fabrics(), kind.kind().width(), bar.length() - reach));
        }
    }

    /** Whether a piece is large enough for a block, by itself. */
    public static boolean fits(JobBlock block, StockPiece piece) {
        boolean upright = block.width() <= piece.width() && block.height() <= piece.length();
        boolean turned = block.turnable()
                && !piece.lengthwiseOnly()
                && block.height() <= piece.width()
                && block.width() <= piece.length();
        return block.fabrics().has(piece.fabric()) && (upright || turned);
    }
}
