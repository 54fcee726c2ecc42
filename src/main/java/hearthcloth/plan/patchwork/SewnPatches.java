package hearthcloth.plan.patchwork;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Edges;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts the allowances back into a tree of net sizes: what the search found becomes a cloth of exactly the wished size. The
 * left or upper half of every seam wraps, so that seams lie where the search reckoned them. What the wished size is less
 * than whole marks, the patches at the right and lower rim are less.
 */
final class SewnPatches {

    private final MarkedHeap heap;
    private final SeamKind kind;
    private final List<ScrapPatch> leaves = new ArrayList<>();

    private SewnPatches(MarkedHeap heap) {
        this.heap = heap;
        this.kind = heap.making().seam();
    }

    /** The cloth of this finished size. */
    static Assembly of(Pieced tree, Size finished, MarkedHeap heap) {
        Size net = new Size(heap.net(finished.width()), heap.net(finished.height()));
        return new SewnPatches(heap)
                .sewn(tree, net, Edges.all(heap.making().hem().allowance()));
    }

    private Assembly sewn(Pieced tree, Size net, Edges closed) {
        if (tree instanceof ScrapPatch patch) {
            leaves.add(patch);
            Fabric fabric = heap.pieces().get(patch.scrap()).fabric();
            return new Patch(new Place.Free(leaves.size()), fabric.name(), shown(net, closed), Design.showing(fabric));
        }
        Joint joint = (Joint) tree;
        Join join = joint.beside() ? Join.BESIDE : Join.BELOW;
        Length across = heap.mark().times(joint.beside() ? netWidth(joint.first()) : netHeight(joint.first()));
        Size first = join.size(across, join.edge(net));
        Size second = join.size(join.across(net).minus(across), join.edge(net));
        Side facing = join.facing(Half.FIRST);
        return Seam.of(
                join,
                Half.FIRST,
                sewn(joint.first(), first, closed.with(facing, kind.allowance(true))),
                sewn(joint.second(), second, closed.with(facing.opposite(), kind.allowance(false))));
    }

    private Size shown(Size net, Edges closed) {
        return new Size(
                net.width().plus(kind.loss()).minus(closed.left()).minus(closed.right()),
                net.height().plus(kind.loss()).minus(closed.top()).minus(closed.bottom()));
    }

    private long netWidth(Pieced tree) {
        if (tree instanceof Joint joint) {
            return netWidth(joint.first()) + (joint.beside() ? netWidth(joint.second()) : 0);
        }
        return ((ScrapPatch) tree).width() - heap.allowances().seam();
    }

    private long netHeight(Pieced tree) {
        if (tree instanceof Joint joint) {
            return netHeight(joint.first()) + (joint.beside() ? 0 : netHeight(joint.second()));
        }
        return ((ScrapPatch) tree).height() - heap.allowances().seam();
    }
}
