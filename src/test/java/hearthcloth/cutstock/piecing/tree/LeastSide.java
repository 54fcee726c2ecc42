package hearthcloth.cutstock.piecing.tree;

/**
 * Every patch may be trimmed down to one least side.
 *
 * @param least net
 */
public record LeastSide(long least) implements TrimLimits {

    @Override
    public long offWidth(ScrapPatch patch) {
        return patch.width() - least;
    }

    @Override
    public long offHeight(ScrapPatch patch) {
        return patch.height() - least;
    }
}
