package hearthcloth.plan.patchwork;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.cutstock.piecing.ScrapCutting;
import hearthcloth.cutstock.piecing.tree.ScrapCut;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How each piece is cut for a cloth of scraps, in the order of the patches' names. */
final class ScrapCuts {

    private final MarkedHeap heap;
    private final ScrapCutting cutting;

    /** A patch as it lies on its piece. */
    private record Wanted(Laid laid, boolean turned) {

        Size lies() {
            return turned ? laid.cut().turned() : laid.cut();
        }
    }

    private ScrapCuts(MarkedHeap heap) {
        this.heap = heap;
        long keep = heap.terms(true).keepShort();
        this.cutting = new ScrapCutting(keep, keep);
    }

    /**
     * The cuts.
     *
     * @param leaves from which scrap each patch of the cloth comes, in the order of its patches
     * @throws IllegalStateException where the patches of a piece cannot be cut, an error of the search
     */
    static List<PieceCut> of(Cloth cloth, List<ScrapPatch> leaves, MarkedHeap heap) {
        Map<Piece, List<Wanted>> wanted = new LinkedHashMap<>();
        List<Laid> laid = cloth.laid();
        for (int i = 0; i < laid.size(); i++) {
            ScrapPatch leaf = leaves.get(i);
            wanted.computeIfAbsent(heap.pieces().get(leaf.scrap()), key -> new ArrayList<>())
                    .add(new Wanted(laid.get(i), leaf.turned()));
        }
        ScrapCuts cuts = new ScrapCuts(heap);
        List<PieceCut> all = new ArrayList<>();
        inSewingOrder(wanted).forEach((piece, patches) -> all.add(cuts.cut(piece, patches)));
        return all;
    }

    private static Map<Piece, List<Wanted>> inSewingOrder(Map<Piece, List<Wanted>> wanted) {
        Map<Piece, List<Wanted>> sorted = new LinkedHashMap<>();
        wanted.entrySet().stream()
                .sorted(java.util.Comparator.comparing(
                        entry -> FirstName.of(entry.getValue().get(0).laid())))
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }

    /** A place in sewing order. */
    private record FirstName(int task, int number) implements Comparable<FirstName> {

        static FirstName of(Laid laid) {
            var place = (hearthcloth.cloth.Place.Free) laid.patch().place();
            return new FirstName(place.task(), place.number());
        }

        @Override
        public int compareTo(FirstName other) {
            return task == other.task ? Integer.compare(number, other.number) : Integer.compare(task, other.task);
        }
    }

    private PieceCut cut(Piece piece, List<Wanted> patches) {
        Rect whole = Rect.at(Length.ZERO, Length.ZERO, piece.size());
        List<ScrapCutting.Extent> extents =
                patches.stream().map(patch -> extent(patch.lies())).toList();
        ScrapCut way = cutting.of(extent(piece.size()), extents)
                .orElseThrow(() -> new IllegalStateException("piece " + piece.id() + " does not hold its patches"))
                .cut();
        return new PieceCut(piece, tree(way, whole, patches));
    }

    private ScrapCutting.Extent extent(Size size) {
        return new ScrapCutting.Extent(
                heap.marks(size.width(), Rounding.DOWN), heap.marks(size.height(), Rounding.DOWN));
    }

    private CutTree tree(ScrapCut way, Rect at, List<Wanted> patches) {
        if (way instanceof ScrapCut.Cut cut) {
            Length line = heap.mark().times(cut.at());
            Rect first = cut.upright()
                    ? Rect.at(at.x(), at.y(), new Size(line, at.height()))
                    : Rect.at(at.x(), at.y(), new Size(at.width(), line));
            Rect second = cut.upright()
                    ? Rect.at(at.x().plus(line), at.y(), new Size(at.width().minus(line), at.height()))
                    : Rect.at(
                            at.x(),
                            at.y().plus(line),
                            new Size(at.width(), at.height().minus(line)));
            Length where = cut.upright() ? second.x() : second.y();
            return CutTree.parted(
                    at, cut.upright(), where, tree(cut.first(), first, patches), tree(cut.second(), second, patches));
        }
        return way instanceof ScrapCut.Whole whole ? trimmed(at, patches.get(whole.patch())) : new CutTree.Left(at);
    }

    private static CutTree kept(Rect at, Wanted patch) {
        return new CutTree.Kept(at, patch.laid().patch().place().id(), patch.turned());
    }

    /** A patch that reaches the piece's own edge is parted from what is less than a mark beyond it. */
    private static CutTree trimmed(Rect at, Wanted patch) {
        Rect part = Rect.at(at.x(), at.y(), patch.lies());
        CutTree tree = kept(part, patch);
        if (part.height().isLessThan(at.height())) {
            Rect row = Rect.at(at.x(), at.y(), new Size(part.width(), at.height()));
            Rect rest = Rect.at(
                    at.x(), part.bottom(), new Size(part.width(), at.bottom().minus(part.bottom())));
            tree = CutTree.parted(row, false, part.bottom(), tree, new CutTree.Left(rest));
        }
        if (part.width().isLessThan(at.width())) {
            Rect rest = Rect.at(part.right(), at.y(), new Size(at.right().minus(part.right()), at.height()));
            tree = CutTree.parted(at, true, part.right(), tree, new CutTree.Left(rest));
        }
        return tree;
    }
}
