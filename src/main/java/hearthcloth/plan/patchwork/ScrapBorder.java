package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.piecing.FreePiecing;
import hearthcloth.cutstock.piecing.PiecedCloth;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.PiecingPlan;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.WishedCloth;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Scraps round something that is there: four strips of scraps, each sewn to the next side with the clock. */
final class ScrapBorder {

    private final MarkedHeap heap;
    private final Pieced middle;
    private final MarkedHeap rest;
    private final List<Integer> free;

    ScrapBorder(MarkedHeap heap, Pieced middle) {
        this.heap = heap;
        this.middle = middle;
        Set<Integer> used = new LinkedHashSet<>();
        middle.patches().forEach(leaf -> used.add(leaf.scrap()));
        this.free = IntStream.range(0, heap.pieces().size())
                .filter(scrap -> !used.contains(scrap))
                .boxed()
                .toList();
        this.rest = heap.only(free);
    }

    /** Scraps round one piece that lies as it is; turned only where it may be and that suits the cloth better. */
    static Optional<Bordered> around(MarkedHeap heap, int piece, Size size, boolean offcuts, Budget budget, long seed) {
        if (piece < 0) {
            return Optional.empty();
        }
        Scrap scrap = heap.scraps().get(piece);
        boolean turned = scrap.turnable()
                && (scrap.width() > scrap.height()) == size.width().isLessThan(size.height());
        ScrapPatch middle = turned
                ? new ScrapPatch(piece, true, scrap.height(), scrap.width())
                : new ScrapPatch(piece, false, scrap.width(), scrap.height());
        long seam = heap.allowances().seam();
        return new ScrapBorder(heap, middle)
                .around(
                        new WishedCloth(heap.netMarks(size.width()), heap.netMarks(size.height())),
                        new WishedCloth(middle.width() - seam, middle.height() - seam),
                        offcuts,
                        budget,
                        seed);
    }

    /** A bordered middle, and how many patches lie before it in the order of leaves. */
    record Bordered(Pieced tree, int before) {}

    /**
     * The whole.
     *
     * @param net the net size of the whole
     * @param within the net size of the middle
     */
    Optional<Bordered> around(WishedCloth net, WishedCloth within, boolean offcuts, Budget budget, long seed) {
        if (rest.pieces().isEmpty()) {
            return Optional.empty();
        }
        long left = (net.width() - within.width()) / 2;
        long right = net.width() - within.width() - left;
        long top = (net.height() - within.height()) / 2;
        long bottom = net.height() - within.height() - top;
        if (Math.min(left, top) < heap.leastNet()) {
            return Optional.empty();
        }
        List<WishedCloth> strips = List.of(
                heap.ofNet(right, within.height()),
                heap.ofNet(within.width() + right, bottom),
                heap.ofNet(left, within.height() + bottom),
                heap.ofNet(net.width(), top));
        PiecingJob job = new PiecingJob(strips, rest.scraps(), heap.allowances(), heap.terms(offcuts));
        PiecingPlan plan = new FreePiecing(job).search(budget::spent, seed, better -> {});
        return plan.figures().full() ? Optional.of(bordered(plan, seed)) : Optional.empty();
    }

    private Bordered bordered(PiecingPlan plan, long seed) {
        FreeCloths cloths = new FreeCloths(rest, seed);
        List<Pieced> strips = new ArrayList<>();
        for (PiecedCloth strip : plan.cloths()) {
            strips.add(renumbered(cloths.arranged(strip.tree()).tree()));
        }
        Pieced work = new Joint(true, middle, strips.get(0));
        work = new Joint(false, work, strips.get(1));
        work = new Joint(true, strips.get(2), work);
        work = new Joint(false, strips.get(3), work);
        int before = strips.get(2).patches().toList().size()
                + strips.get(3).patches().toList().size();
        return new Bordered(work, before);
    }

    /** The tree with the scraps' numbers in the whole heap. */
    private Pieced renumbered(Pieced tree) {
        if (tree instanceof Joint joint) {
            return new Joint(joint.beside(), renumbered(joint.first()), renumbered(joint.second()));
        }
        ScrapPatch patch = (ScrapPatch) tree;
        return new ScrapPatch(free.get(patch.scrap()), patch.turned(), patch.width(), patch.height());
    }
}
