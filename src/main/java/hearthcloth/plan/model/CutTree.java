package hearthcloth.plan.model;

import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;

/**
 * How one piece of fabric is divided by straight cuts from edge to edge. A leaf is a patch to keep or a leftover; a
 * node is one cut. Which patch lies where, the order of cuts and the offcuts are all read off this tree. Places are on
 * the piece: x across its width, y along its length, from its top left. Immutable.
 */
public sealed interface CutTree {

    Rect at();

    /** A rectangle cut out for the patch with this id; {@code turned} where the patch lies on its side on the piece. */
    record Kept(Rect at, String patch, boolean turned) implements CutTree {}

    /** A leftover. */
    record Left(Rect at) implements CutTree {}

    /**
     * One straight cut from edge to edge.
     *
     * @param upright true for a cut that runs along the length (x is constant), false for one across (y is constant)
     * @param line the place of the cut on the piece
     */
    record Parted(Rect at, boolean upright, Length line, CutTree first, CutTree second) implements CutTree {

        public Parted {
            Rect one = first.at();
            Rect other = second.at();
            boolean meet = upright
                    ? one.x().equals(at.x())
                            && one.right().equals(line)
                            && other.x().equals(line)
                            && other.right().equals(at.right())
                            && spansHeight(at, one)
                            && spansHeight(at, other)
                    : one.y().equals(at.y())
                            && one.bottom().equals(line)
                            && other.y().equals(line)
                            && other.bottom().equals(at.bottom())
                            && spansWidth(at, one)
                            && spansWidth(at, other);
            if (!meet) {
                throw new IllegalArgumentException("the cut at " + line + " does not part " + at);
            }
        }

        private static boolean spansHeight(Rect whole, Rect part) {
            return part.y().equals(whole.y()) && part.height().equals(whole.height());
        }

        private static boolean spansWidth(Rect whole, Rect part) {
            return part.x().equals(whole.x()) && part.width().equals(whole.width());
        }
    }

    static CutTree parted(Rect at, boolean upright, Length line, CutTree first, CutTree second) {
        return new Parted(at, upright, line, first, second);
    }

    /** The cuts in the order they are made: every cut before those inside its halves. */
    default List<Parted> cuts() {
        List<Parted> out = new ArrayList<>();
        walk(this, node -> {
            if (node instanceof Parted cut) {
                out.add(cut);
            }
        });
        return List.copyOf(out);
    }

    default List<Kept> kept() {
        List<Kept> out = new ArrayList<>();
        walk(this, node -> {
            if (node instanceof Kept kept) {
                out.add(kept);
            }
        });
        return List.copyOf(out);
    }

    /** The leftovers, largest first. */
    default List<Rect> left() {
        List<Rect> out = new ArrayList<>();
        walk(this, node -> {
            if (node instanceof Left left) {
                out.add(left.at());
            }
        });
        out.sort(java.util.Comparator.comparingDouble((Rect rect) -> rect.size().areaMm2())
                .reversed());
        return List.copyOf(out);
    }

    private static void walk(CutTree tree, java.util.function.Consumer<CutTree> visitor) {
        visitor.accept(tree);
        if (tree instanceof Parted cut) {
            walk(cut.first(), visitor);
            walk(cut.second(), visitor);
        }
    }

    /** Whether a leftover can be used again: both sides are at least {@code least}. */
    static boolean isReusable(Size left, Length least) {
        return !left.width().isLessThan(least) && !left.height().isLessThan(least);
    }
}
