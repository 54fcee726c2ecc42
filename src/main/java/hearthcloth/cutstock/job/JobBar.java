package hearthcloth.cutstock.job;

import java.util.List;

/**
 * A bar of one width that may be joined end to end from parts of that width.
 *
 * @param length as cut, leeway included: the parts' cut lengths less one join's loss for each join
 * @param oneFabric whether all its parts must be of the same fabric
 * @param mostJoins the most joins it may have
 * @param leastPart the shortest part, as cut, a joined bar may have
 * @param forbidden where no join may lie, as positions along the bar (see {@link CutJoinJob})
 */
public record JobBar(
        int id,
        long width,
        long length,
        FabricSets fabrics,
        boolean oneFabric,
        int mostJoins,
        long leastPart,
        BarTurn turn,
        List<Span> forbidden)
        implements CutDemand {

    public JobBar {
        if (width <= 0 || length <= 0 || mostJoins < 0 || leastPart < 0) {
            throw new IllegalArgumentException("bar " + id + " is " + width + " x " + length + ", most joins "
                    + mostJoins + ", least part " + leastPart);
        }
        forbidden = List.copyOf(forbidden);
    }
}
