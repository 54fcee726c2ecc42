package hearthcloth.cutstock.job;

import java.util.List;


/**
 * Something there is too little of.
 *
 * @param demands the ids of the demands that go short together
 * @param fabrics what they could be cut from
 * @param width the bars' width, or the block's
 * @param missingLength at least this much length of that width is missing
 */
public record Shortage(List<Integer> demands, FabricSets fabrics, long width, long missingLength) {

    public Shortage {
        demands = List.copyOf(demands);
    }
}
