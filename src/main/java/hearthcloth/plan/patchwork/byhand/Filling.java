package hearthcloth.plan.patchwork.byhand;

import hearthcloth.cutstock.piecing.FreePiecing;
import hearthcloth.cutstock.piecing.PiecedCloth;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.PiecingPlan;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.compose.Composition;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.piecing.tree.Trimming;
import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Fills the rest of a cloth round what was put together by hand. Each part is one scrap for the search, which has to be in and
 * may be trimmed no farther than its patches allow; so what she fixed stays together.
 */
public final class Filling {

    /** Changes of places that are tried in arranging, for each patch. */
    private static final long CHANGES = 800;

    private final HandHeap heap;
    private final List<Pieced> units;
    private final List<Integer> rest = new ArrayList<>();

    /**
     * Prepares.
     *
     * @param laid where it is a whole cloth, what is locked stays, and all else is made anew
     */
    public Filling(HandHeap heap, LaidOut laid) {
        this.heap = heap;
        this.units = units(heap, laid);
        Set<Integer> fixed = new TreeSet<>();
        units.forEach(unit -> fixed.addAll(HandTree.scraps(unit)));
        for (int scrap = 0; scrap < heap.size(); scrap++) {
            if (!fixed.contains(scrap)) {
                rest.add(scrap);
            }
        }
    }

    private static List<Pieced> units(HandHeap heap, LaidOut laid) {
        if (!heap.isWhole(laid)) {
            return laid.parts();
        }
        return HandTree.within(laid.parts().get(0), laid.locked()).stream()
                .map(unit -> HandTree.replaced(unit, leaf -> untrimmed(heap, (ScrapPatch) leaf)))
                .toList();
    }

    /** The whole of its scrap where only a rim was trimmed off, so that the search is as free as it was. */
    private static Pieced untrimmed(HandHeap heap, ScrapPatch patch) {
        ScrapPatch whole = heap.natural(patch.scrap(), patch.turned());
        long keep = heap.heap().terms(true).keepShort();
        boolean cut = whole.width() - patch.width() >= keep || whole.height() - patch.height() >= keep;
        return cut ? patch : whole;
    }

    /**
     * The table with a whole cloth on it; empty where none was found.
     *
     * @param kept what stays locked
     */
    public Optional<LaidOut> filled(Set<Integer> kept, Budget budget, long seed) {
        PiecingJob job = new PiecingJob(
                List.of(heap.heap().wished(heap.wished())),
                scraps(),
                heap.heap().allowances(),
                heap.heap().terms(true));
        PiecingPlan plan = new FreePiecing(job).search(budget::spent, seed, better -> {});
        if (!plan.figures().full()) {
            return Optional.empty();
        }
        PiecedCloth cloth = plan.cloths().get(0);
        return expanded(HandTree.grown(arranged(cloth.tree(), job, seed), -heap.seam()))
                .map(tree -> new LaidOut(List.of(tree), kept));
    }

    private List<Scrap> scraps() {
        List<Scrap> scraps = new ArrayList<>();
        rest.forEach(scrap -> scraps.add(heap.heap().scraps().get(scrap)));
        for (int i = 0; i < units.size(); i++) {
            Trimming.Extent extent = heap.extent(units.get(i));
            Scrap.Handling whole =
                    new Scrap.Handling(true, true, Math.max(0, extent.offWidth()), Math.max(0, extent.offHeight()));
            scraps.add(new Scrap(
                    extent.width() + heap.seam(),
                    extent.height() + heap.seam(),
                    -1 - i,
                    heap.turnable(units.get(i)),
                    whole));
        }
        return scraps;
    }

    private Pieced arranged(Pieced tree, PiecingJob job, long seed) {
        List<Scrap> scraps = job.scraps();
        Composition.Spacing spacing =
                new Composition.Spacing(heap.seam(), job.terms().clearance(), 0);
        long changes = CHANGES * tree.patches().count();
        return new Composition(
                        tree,
                        spacing,
                        scrap -> scraps.get(scrap).fabric(),
                        scrap -> scraps.get(scrap).turnable(),
                        seed)
                .compose(Budget.steps(changes)::spent)
                .tree();
    }

    /** The tree with each part put back for the scrap it was to the search. */
    private Optional<Pieced> expanded(Pieced tree) {
        if (tree instanceof Joint joint) {
            return expanded(joint.first())
                    .flatMap(first -> expanded(joint.second()).map(second -> new Joint(joint.beside(), first, second)));
        }
        ScrapPatch patch = (ScrapPatch) tree;
        int unit = patch.scrap() - rest.size();
        if (unit < 0) {
            int scrap = rest.get(patch.scrap());
            return Optional.of(new ScrapPatch(scrap, patch.turned(), patch.width(), patch.height()));
        }
        Pieced lies = patch.turned() ? HandTree.quarterTurned(units.get(unit)) : units.get(unit);
        return Trimming.to(lies, patch.width(), patch.height(), heap.limits());
    }
}
