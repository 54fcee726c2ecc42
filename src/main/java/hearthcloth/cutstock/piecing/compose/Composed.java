package hearthcloth.cutstock.piecing.compose;

import hearthcloth.cutstock.piecing.tree.Pieced;
import java.util.List;

/**
 * A cloth arranged.
 *
 * @param tree at cut sizes; its size, its patches' sizes and what is lost are as they were
 * @param crossings where seams may end nearer each other than the clearance; proven that there are none where this is empty
 * @param alike how many pairs of patches of one fabric lie side by side
 */
public record Composed(Pieced tree, List<Crossing> crossings, int alike) {

    public Composed {
        crossings = List.copyOf(crossings);
    }
}
