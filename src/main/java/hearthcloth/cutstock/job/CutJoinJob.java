package hearthcloth.cutstock.job;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is to be cut from what. All lengths are whole numbers of one unit, up to about 10^12.
 *
 * <p>The position of a bar's j-th join is the sum of its first j parts' cut lengths, less (j - 1) losses, less the
 * offset.
 *
 * @param joinLoss the length each join costs
 * @param joinOffset how far before the end of the first part a join lies
 * @param leastOffcut a leftover with a side below this is a sliver and counts as lost
 */
public record CutJoinJob(
        List<StockPiece> stock,
        List<JobBlock> blocks,
        List<JobBar> bars,
        List<NeighbourBars> neighbours,
        long joinLoss,
        long joinOffset,
        long leastOffcut) {

    public CutJoinJob {
        stock = List.copyOf(stock);
        blocks = List.copyOf(blocks);
        bars = List.copyOf(bars);
        neighbours = List.copyOf(neighbours);
        if (joinLoss < 0 || leastOffcut < 0) {
            throw new IllegalArgumentException("join loss " + joinLoss + ", least offcut " + leastOffcut);
        }
        requireDistinct("stock piece", stock.stream().map(StockPiece::id));
        requireDistinct("demand", Stream.concat(blocks.stream(), bars.stream()).map(CutDemand::id));
        Set<Integer> known = new LinkedHashSet<>();
        bars.forEach(bar -> known.add(bar.id()));
        for (NeighbourBars pair : neighbours) {
            if (!known.contains(pair.first()) || !known.contains(pair.second())) {
                throw new IllegalArgumentException("neighbours name an unknown bar: " + pair);
            }
        }
    }

    private static void requireDistinct(String what, Stream<Integer> ids) {
        Set<Integer> seen = new LinkedHashSet<>();
        ids.forEach(id -> {
            if (!seen.add(id)) {
                throw new IllegalArgumentException(what + " " + id + " occurs twice");
            }
        });
    }
}
