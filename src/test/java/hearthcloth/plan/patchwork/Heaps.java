package hearthcloth.plan.patchwork;

import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Small heaps in eighths of an inch: ¼ + ½ in felled (2 + 4), hem ½ in (4), and a patch shows 1¼ in (10) at least, for which
 * it is cut 10 + 2 · 4 = 18.
 */
final class Heaps {

    static final Fabric WHITE = fabric("White", 0xffffff, Fabric.Nap.ANY);
    static final Fabric GREY = fabric("Grey", 0x777777, Fabric.Nap.ANY);
    static final Fabric BLACK = fabric("Black", 0x000000, Fabric.Nap.LENGTHWISE);

    private Heaps() {}

    static Fabric fabric(String name, int rgb, Fabric.Nap nap) {
        return new Fabric(name, Colour.of(rgb), Fabric.Faces.SAME, nap);
    }

    static Wish wish(Optional<Size> size) {
        PiecingRules rules = new PiecingRules(Length.inches(5, 4), Length.inches(1), 4);
        Wish.Preferences preferences = new Wish.Preferences(List.of(), 2, 1, Ruler.EIGHTHS);
        Wish.Shape open = new Wish.Shape(Optional.empty(), List.of(), Optional.empty(), Optional.empty());
        return new Wish(new Wish.Target(size, false), open, Making.inches(), rules, preferences);
    }

    static Size eighths(long width, long height) {
        return new Size(Length.inches(width, 8), Length.inches(height, 8));
    }

    static Piece piece(int row, Fabric fabric, long width, long height) {
        return new Piece(String.valueOf(row), fabric, eighths(width, height), Piece.Washed.UNKNOWN, row);
    }

    static MarkedHeap heap(Optional<Size> size, Piece... pieces) {
        List<Piece> all = List.of(pieces);
        return MarkedHeap.of(all, new Stash(all).fabrics(), wish(size));
    }

    /** So many of each fabric, all of one size. */
    static MarkedHeap alike(Optional<Size> size, int each, long width, long height) {
        List<Piece> pieces = new ArrayList<>();
        for (Fabric fabric : List.of(WHITE, GREY, BLACK)) {
            for (int i = 0; i < each; i++) {
                pieces.add(piece(pieces.size() + 2, fabric, width, height));
            }
        }
        return heap(size, pieces.toArray(Piece[]::new));
    }

    /** Width and height net of a tree, in eighths: what is cut less a seam of 6, side by side or one below the other. */
    static long[] net(Pieced tree) {
        if (tree instanceof Joint joint) {
            long[] first = net(joint.first());
            long[] second = net(joint.second());
            return joint.beside()
                    ? new long[] {first[0] + second[0], first[1]}
                    : new long[] {first[0], first[1] + second[1]};
        }
        var patch = (hearthcloth.cutstock.piecing.tree.ScrapPatch) tree;
        return new long[] {patch.width() - 6, patch.height() - 6};
    }

    /** A heap as it comes: areas spread as a log-normal about 36 square inches, proportions up to 1 : 6, in eighths of an inch. */
    static Stash wild(int count, long seed) {
        Random chance = new Random(seed);
        List<Piece> pieces = new ArrayList<>();
        while (pieces.size() < count) {
            double area = Math.exp(Math.log(36 * 64) + 0.8 * chance.nextGaussian());
            double longer = Math.exp(Math.abs(0.7 * chance.nextGaussian()));
            long width = Math.round(Math.sqrt(area * longer));
            long height = Math.round(Math.sqrt(area / longer));
            if (longer <= 6 && height >= 18 && width <= 36 * 8) {
                pieces.add(piece(pieces.size() + 2, List.of(WHITE, GREY, BLACK).get(chance.nextInt(3)), width, height));
            }
        }
        return new Stash(pieces);
    }
}
