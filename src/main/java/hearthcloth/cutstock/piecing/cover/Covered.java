package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.BitSet;

/**
 * A rectangle that is covered.
 *
 * @param tree its patches at their net sizes
 * @param width its net width
 * @param height its net height
 * @param lost the area lost where the patches are cut
 */
public record Covered(Pieced tree, int width, int height, long lost) {

    /** The scraps it takes. */
    public BitSet scraps() {
        BitSet set = new BitSet();
        collect(tree, set);
        return set;
    }

    static void collect(Pieced tree, BitSet set) {
        if (tree instanceof Joint joint) {
            collect(joint.first(), set);
            collect(joint.second(), set);
        } else {
            set.set(((ScrapPatch) tree).scrap());
        }
    }
}
