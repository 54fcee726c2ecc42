package hearthcloth.plan.patchwork.byhand;

import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.piecing.tree.TrimLimits;
import hearthcloth.cutstock.piecing.tree.Trimming;
import hearthcloth.measure.Size;
import hearthcloth.plan.patchwork.MarkedHeap;
import java.util.Optional;

/**
 * The heap beside the table and the size the cloth is to have.
 *
 * @param heap the pieces a patch can be cut from
 * @param wished finished
 */
public record HandHeap(MarkedHeap heap, Size wished) {

    long seam() {
        return heap.allowances().seam();
    }

    long netWidth() {
        return heap.netMarks(wished.width());
    }

    long netHeight() {
        return heap.netMarks(wished.height());
    }

    /** How many scraps there are. */
    public int size() {
        return heap.scraps().size();
    }

    /** The whole of a scrap as a patch, turned or not, net. */
    ScrapPatch natural(int scrap, boolean turned) {
        Scrap one = heap.scraps().get(scrap);
        long width = one.width() - seam();
        long height = one.height() - seam();
        return turned ? new ScrapPatch(scrap, true, height, width) : new ScrapPatch(scrap, false, width, height);
    }

    boolean turnable(Pieced tree) {
        return tree.patches().allMatch(patch -> heap.scraps().get(patch.scrap()).turnable());
    }

    /** A patch may be trimmed until it would show too little. */
    TrimLimits limits() {
        long least = heap.leastNet();
        return new TrimLimits() {
            @Override
            public long offWidth(ScrapPatch patch) {
                return patch.width() - least;
            }

            @Override
            public long offHeight(ScrapPatch patch) {
                return patch.height() - least;
            }
        };
    }

    Trimming.Extent extent(Pieced tree) {
        return Trimming.extent(tree, limits());
    }

    /** A part as it would be cut if nothing more were sewn to it; empty where a patch would be too small. */
    public Optional<Pieced> trimmed(Pieced part) {
        Trimming.Extent extent = extent(part);
        return Trimming.to(part, extent.width(), extent.height(), limits());
    }

    /** Whether all that lies there is one cloth of the wished size. */
    public boolean isWhole(LaidOut laid) {
        return laid.parts().size() == 1 && isCloth(laid.parts().get(0));
    }

    boolean isCloth(Pieced tree) {
        return HandTree.width(tree) == netWidth() && HandTree.height(tree) == netHeight();
    }
}
