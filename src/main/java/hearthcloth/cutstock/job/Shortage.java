package hearthcloth.cutstock.job;

import java.util.List;

/**
 * Something of which there is too little.
 *
 * @param demands the ids of the demands that are short together
 * @param fabrics what they could be cut from
 * @param width the bars' width, or the block's
 * @param missingLength at least this length of that width is missing
 */
public record Shortage(List<Integer> demands, FabricSets fabrics, long width, long missingLength) {

    public Shortage {
        demands = List.copyOf(demands);
    }
}
