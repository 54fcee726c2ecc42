package hearthcloth.plan.patchwork.byhand;

import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Scraps that can change places on a table without changing any patch's size. */
public record Swaps(HandHeap heap, LaidOut laid) {

    /** What could lie where a scrap lies, what trims least first. */
    public List<Swap> of(int scrap, int most) {
        List<Swap> swaps = new ArrayList<>();
        Optional<ScrapPatch> here = patch(scrap);
        for (int other = 0; here.isPresent() && other < heap.size(); other++) {
            if (other != scrap && !laid.locked().contains(other)) {
                swap(here.get(), other).ifPresent(swaps::add);
            }
        }
        swaps.sort(Comparator.comparingLong(Swap::trimmed).thenComparingInt(Swap::other));
        return swaps.subList(0, Math.min(most, swaps.size()));
    }

    private Optional<Swap> swap(ScrapPatch here, int other) {
        Optional<ScrapPatch> there = patch(other);
        Optional<ScrapPatch> comes = lying(other, here);
        if (comes.isEmpty()
                || (there.isPresent() && lying(here.scrap(), there.get()).isEmpty())) {
            return Optional.empty();
        }
        long more = there.isPresent() ? 0 : area(other) - area(here.scrap());
        return Optional.of(new Swap(here.scrap(), other, more));
    }

    /** The table after an exchange. */
    public LaidOut swapped(Swap swap) {
        List<Pieced> parts = new ArrayList<>();
        for (Pieced part : laid.parts()) {
            parts.add(HandTree.replaced(part, leaf -> {
                ScrapPatch patch = (ScrapPatch) leaf;
                return patch.scrap() == swap.scrap()
                        ? lying(swap.other(), patch).orElse(patch)
                        : patch.scrap() == swap.other()
                                ? lying(swap.scrap(), patch).orElse(patch)
                                : patch;
            }));
        }
        return laid.of(parts);
    }

    /** Where a scrap lies; only scraps of one patch change places. */
    private Optional<ScrapPatch> patch(int scrap) {
        List<ScrapPatch> patches = laid.parts().stream()
                .flatMap(Pieced::patches)
                .filter(patch -> patch.scrap() == scrap)
                .toList();
        return patches.size() == 1 ? Optional.of(patches.get(0)) : Optional.empty();
    }

    /** A scrap cut for another's place, as it lies in the heap where that is possible; empty where it is too small. */
    private Optional<ScrapPatch> lying(int scrap, ScrapPatch place) {
        for (boolean turned :
                heap.heap().scraps().get(scrap).turnable() ? new boolean[] {false, true} : new boolean[] {false}) {
            ScrapPatch whole = heap.natural(scrap, turned);
            if (whole.width() >= place.width() && whole.height() >= place.height()) {
                return Optional.of(new ScrapPatch(scrap, turned, place.width(), place.height()));
            }
        }
        return Optional.empty();
    }

    private long area(int scrap) {
        ScrapPatch whole = heap.natural(scrap, false);
        return whole.width() * whole.height();
    }
}
