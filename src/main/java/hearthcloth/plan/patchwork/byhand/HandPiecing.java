package hearthcloth.plan.patchwork.byhand;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Seam;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.patchwork.PatchworkPlans;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** From the table to a cloth that can be cut, and from such a cloth to the table; and what is done with single parts. */
public record HandPiecing(HandHeap heap) {

    /** The table with one scrap more on it, by itself. */
    public LaidOut brought(LaidOut laid, int scrap) {
        return laid.partOf(scrap) >= 0 ? laid : laid.with(heap.natural(scrap, false));
    }

    /** The part with this scrap taken apart at its last seam; a single scrap goes back to the heap. */
    public LaidOut apart(LaidOut laid, int scrap) {
        int part = laid.partOf(scrap);
        if (part < 0) {
            return laid;
        }
        LaidOut left = laid.without(part);
        return laid.parts().get(part) instanceof Joint joint
                ? whole(left).with(whole(joint.first())).with(whole(joint.second()))
                : left;
    }

    private LaidOut whole(LaidOut laid) {
        return laid.of(laid.parts().stream().map(this::whole).toList());
    }

    /** A part of a cloth that is whole no longer: its patches are as large as their scraps again. */
    private Pieced whole(Pieced part) {
        return HandTree.replaced(part, leaf -> {
            ScrapPatch patch = (ScrapPatch) leaf;
            return heap.natural(patch.scrap(), patch.turned());
        });
    }

    /** The part with this scrap turned by a quarter; empty where one of its fabrics has a nap. */
    public Optional<LaidOut> turned(LaidOut laid, int scrap) {
        int part = laid.partOf(scrap);
        return part < 0 || heap.isWhole(laid) || !heap.turnable(laid.parts().get(part))
                ? Optional.empty()
                : Optional.of(
                        laid.with(part, HandTree.quarterTurned(laid.parts().get(part))));
    }

    /** The whole cloth as a plan, checked like any other. */
    public Plan plan(LaidOut laid) {
        return PatchworkPlans.byHand(HandTree.grown(laid.parts().get(0), heap.seam()), heap.wished(), heap.heap());
    }

    /** A planned cloth of scraps on the table; empty where a piece is not in the heap or gives two patches. */
    public Optional<LaidOut> laidOut(Plan plan) {
        Map<String, ScrapPatch> cut = new LinkedHashMap<>();
        for (PieceCut one : plan.cuts()) {
            int scrap = heap.heap().indexOf(one.piece().id());
            for (CutTree.Kept kept : one.tree().kept()) {
                cut.put(kept.patch(), new ScrapPatch(scrap, kept.turned(), 1, 1));
            }
        }
        long scraps = cut.values().stream().map(ScrapPatch::scrap).distinct().count();
        if (scraps < cut.size() || cut.values().stream().anyMatch(patch -> patch.scrap() < 0)) {
            return Optional.empty();
        }
        Map<String, Laid> laid = new LinkedHashMap<>();
        plan.cloth().laid().forEach(one -> laid.put(one.patch().place().id(), one));
        Pieced tree = plan.cloth().work().fold(new Taken(cut, laid));
        return heap.isCloth(tree) ? Optional.of(new LaidOut(List.of(tree), java.util.Set.of())) : Optional.empty();
    }

    /** Reads a sewn cloth as a tree of nets. */
    private final class Taken implements Assembly.Fold<Pieced> {
        private final Map<String, ScrapPatch> cut;
        private final Map<String, Laid> laid;

        Taken(Map<String, ScrapPatch> cut, Map<String, Laid> laid) {
            this.cut = cut;
            this.laid = laid;
        }

        @Override
        public Pieced patch(Patch patch) {
            ScrapPatch from =
                    java.util.Objects.requireNonNull(cut.get(patch.place().id()));
            Laid at = java.util.Objects.requireNonNull(laid.get(patch.place().id()));
            return new ScrapPatch(
                    from.scrap(),
                    from.turned(),
                    heap.heap().marks(at.cut().width(), Rounding.UP) - heap.seam(),
                    heap.heap().marks(at.cut().height(), Rounding.UP) - heap.seam());
        }

        @Override
        public Pieced seam(Seam seam, Pieced first, Pieced second) {
            return new Joint(seam.join() == Join.BESIDE, first, second);
        }
    }
}
