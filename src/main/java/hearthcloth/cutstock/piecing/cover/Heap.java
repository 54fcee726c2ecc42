package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.parameter.PiecingParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/**
 * All scraps by their net sizes, and how they are searched.
 *
 * @param all as a stock, of any size
 * @param parameters the values of all stages of the search
 */
public record Heap(Stock all, PiecingParameters parameters) {

    int size() {
        return all.size();
    }

    long area(int scrap) {
        return (long) all.width(scrap) * all.height(scrap);
    }

    long area(int[] scraps) {
        return Arrays.stream(scraps).mapToLong(this::area).sum();
    }

    /** The area that is lost where a tree's patches are cut. */
    public long lost(Pieced tree) {
        return all.lost(tree);
    }

    /** The same tree with other numbers. */
    static Pieced renumbered(Pieced tree, IntUnaryOperator number) {
        if (tree instanceof Joint joint) {
            return new Joint(joint.beside(), renumbered(joint.first(), number), renumbered(joint.second(), number));
        }
        ScrapPatch patch = (ScrapPatch) tree;
        return new ScrapPatch(number.applyAsInt(patch.scrap()), patch.turned(), patch.width(), patch.height());
    }
}
